using CsCheck;
using Hoopwright.AsBuilt;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Testing;
using static Hoopwright.Tests.AsBuilt.SiteBookSamples;

namespace Hoopwright.Tests.AsBuilt;

public sealed class SquaringTests
{
    private const string CayleyMenger = "Cayley-Menger determinant of four points in a plane, and least-squares adjustment with condition equations, any handbook of surveying, from memory";

    private static readonly (int From, int To)[] Lines = [(0, 1), (2, 3), (0, 2), (1, 3), (0, 3), (1, 2)];

    [Fact]
    public void Lengths_without_error_give_the_corners_back_and_leave_nothing()
    {
        // Two 3-4-5 triangles.
        (double XM, double YM)[] corners = CornerFit.Corners([3, 3, 4, 4, 5, 5])!;
        Assert.Equal([(0.0, 0.0), (3, 0), (0, 4), (3, 4)], corners, (one, other) => Math.Abs(one.Item1 - other.Item1) + Math.Abs(one.Item2 - other.Item2) < 1e-12);
        Assert.All(CornerFit.ResidualsM([3, 3, 4, 4, 5, 5], corners), left => Assert.Equal(0, left, 1e-12));
    }

    [Fact]
    public void What_is_left_over_is_what_adjusting_by_the_condition_of_four_points_in_a_plane_leaves() =>
        Gen.Select(Gen.Double[4, 12], Gen.Double[8, 60], Gen.Double[-0.3, 0.3], Gen.Double[-0.02, 0.02].Array[6]).Sample((across, along, skew, noise) =>
        {
            double[] lengthsM = LengthsOf([(0, 0), (across, 0), (skew, along), (across + (skew / 2), along + (skew / 3))]);
            for (int line = 0; line < 6; line++) lengthsM[line] += noise[line];
            (double XM, double YM)[] corners = CornerFit.Corners(lengthsM)!;
            double[] left = CornerFit.ResidualsM(lengthsM, corners), by = ByCondition(lengthsM);
            for (int line = 0; line < 6; line++)
                Published.Check(CayleyMenger, "what is left of a length, m", by[line], left[line], 1e-6, "both iterate until they stand; the determinant is differentiated numerically");
            return true;
        }, iter: 200);

    [Fact]
    public void A_rhombus_is_told_which_corners_to_move_which_way()
    {
        // 26 by 72 ft, the back end 3 in to the right: by Pythagoras the diagonals differ, the sides are a hair too long.
        double sideIn = Math.Sqrt((864 * 864) + 9), longIn = Math.Sqrt((315 * 315) + (864 * 864)), shortIn = Math.Sqrt((309 * 309) + (864 * 864));
        Squaring square = Squared(312, 312, sideIn, sideIn, longIn, shortIn);
        Assert.False(square.IsSquare);
        Assert.True(square.Worst < Length.FromInches(0.1));
        // Turning the short ends takes 312 in · 3 in ÷ 864 in of two corners; pushing the back end over would take 3 in.
        Assert.Equal("left", square.Held);
        Assert.Equal([0, -1.08, 0, -1.08], square.Corners.Select(corner => Math.Round(corner.MoveBack.Inches, 2) + 0.0), (one, other) => Math.Abs(one - other) < 0.1);
        Assert.Equal([0, 0, 0, 0], square.Corners.Select(corner => corner.MoveRight.Inches), (one, other) => Math.Abs(one - other) < 0.1);
    }

    [Fact]
    public void A_square_one_is_left_alone_and_a_misread_diagonal_shows_in_what_is_left_over()
    {
        double diagonalIn = Math.Sqrt((312 * 312) + (864 * 864));
        Assert.True(Squared(312, 312, 864, 864, diagonalIn, diagonalIn).IsSquare);
        Squaring misread = Squared(312, 312, 864, 864, diagonalIn + 6, diagonalIn);
        Assert.True(misread.Worst > Length.FromInches(1), "A diagonal misread by 6 in does not go together with the rest.");
        Assert.False(misread.IsSquare);
    }

    [Fact]
    public void The_report_names_the_corner_to_move()
    {
        double sideIn = Math.Sqrt((864 * 864) + 9), longIn = Math.Sqrt((315 * 315) + (864 * 864)), shortIn = Math.Sqrt((309 * 309) + (864 * 864));
        PlannedTunnel planned = Measured(312, 312, sideIn, sideIn, longIn, shortIn);
        Deviation diagonal = planned.AsBuilt!.Deviations.First(each => each.Measurement.Of.Name == MeasureNames.DiagonalFromFrontLeft);
        Assert.Equal("Hold the left string. Move front right 1-1/8\" to the front. Move back right 1-1/16\" to the front.", diagonal.PutRightText);
    }

    private static Squaring Squared(params double[] inches) => Measured(inches).AsBuilt!.Squaring!;

    private static PlannedTunnel Measured(params double[] inches) => TunnelWorks.Plan(
        new Plans.PlanReading(With(SamplePlans.Example("gothic-26ft"), [.. Squaring.SetOutNames.Zip(inches, (name, each) => (name, Tape(each)))]), false, []), depth: WorkDepth.Layout);

    private static string Tape(double inches) => (Math.Round(inches * 16) / 16).ToString("0.####", System.Globalization.CultureInfo.InvariantCulture) + " in";

    private static double[] LengthsOf((double X, double Y)[] corners) =>
        [.. Lines.Select(line => Math.Sqrt(Math.Pow(corners[line.To].X - corners[line.From].X, 2) + Math.Pow(corners[line.To].Y - corners[line.From].Y, 2)))];

    /// <summary>
    /// The six lengths of four points in a plane make their Cayley-Menger determinant nought. Corrections v are the least that do:
    /// v = Aᵀ·k for the gradient A of the determinant, found anew until the corrected lengths meet it.
    /// </summary>
    private static double[] ByCondition(double[] lengthsM)
    {
        double[] corrected = [.. lengthsM];
        for (int step = 0; step < 60; step++)
        {
            double[] gradient = [.. Enumerable.Range(0, 6).Select(line => (Determinant(Moved(corrected, line, 1e-6)) - Determinant(Moved(corrected, line, -1e-6))) / 2e-6)];
            // The condition drawn straight at the corrected lengths, with corrections counted from the measured ones.
            double miss = Determinant(corrected) + gradient.Zip(lengthsM.Zip(corrected, (one, other) => one - other), (slope, back) => slope * back).Sum();
            double times = -miss / gradient.Sum(slope => slope * slope);
            corrected = [.. lengthsM.Zip(gradient, (length, slope) => length + (times * slope))];
        }
        return [.. lengthsM.Zip(corrected, (measured, computed) => measured - computed)];
    }

    private static double[] Moved(double[] lengthsM, int line, double by) => [.. lengthsM.Select((length, index) => index == line ? length + by : length)];

    private static double Determinant(double[] lengthsM)
    {
        var a = new double[5, 5];
        for (int i = 1; i < 5; i++) (a[0, i], a[i, 0]) = (1, 1);
        // In units of the tunnel, so that the determinant is of the size of one.
        double unit = lengthsM.Average();
        for (int line = 0; line < 6; line++)
        {
            double square = lengthsM[line] * lengthsM[line] / (unit * unit);
            (a[Lines[line].From + 1, Lines[line].To + 1], a[Lines[line].To + 1, Lines[line].From + 1]) = (square, square);
        }
        double product = 1;
        for (int column = 0; column < 5; column++)
        {
            int pivot = Enumerable.Range(column, 5 - column).MaxBy(row => Math.Abs(a[row, column]));
            if (pivot != column) product = -product;
            for (int k = 0; k < 5; k++) (a[column, k], a[pivot, k]) = (a[pivot, k], a[column, k]);
            product *= a[column, column];
            if (a[column, column] == 0) return 0;
            for (int row = column + 1; row < 5; row++)
            {
                double times = a[row, column] / a[column, column];
                for (int k = column; k < 5; k++) a[row, k] -= times * a[column, k];
            }
        }
        return product;
    }
}
