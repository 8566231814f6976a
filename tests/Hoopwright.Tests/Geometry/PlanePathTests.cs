using CsCheck;
using Hoopwright.Geometry;
using Hoopwright.Quantities;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Geometry;

public sealed class PlanePathTests
{
    private const string Handbook = "Bronstein and Semendjajew, Taschenbuch der Mathematik, circle segment and sector; formulas from memory";

    [Fact]
    public void An_arc_has_length_chord_and_area_of_the_handbook()
    {
        Gen.Select(Gen.Double[0.5, 30], Gen.Double[0.05, 3.1]).Sample((radiusM, sweepRad) =>
        {
            // Symmetric about the upright, walked from left to right over the top.
            var arc = new ArcSegment(new PlanePoint(Length.Zero, Length.Zero), Length.FromMetres(radiusM),
                Angle.FromRadians((Math.PI / 2) + (sweepRad / 2)), Angle.FromRadians(-sweepRad));
            PlanePath path = PlanePath.Of(arc);
            Published.Check(Handbook, "arc length rα", radiusM * sweepRad, path.Length.Metres, 1e-9, "double arithmetic");
            Published.Check(Handbook, "chord 2r sin(α/2)", 2 * radiusM * Math.Sin(sweepRad / 2), arc.Chord.Metres, 1e-9, "double arithmetic");
            double segmentM2 = radiusM * radiusM / 2 * (sweepRad - Math.Sin(sweepRad));
            Published.Check(Handbook, "segment area r²(α − sin α)/2", segmentM2, path.AreaAbove(arc.Start.Up).SquareMetres, 1e-9 * radiusM * radiusM, "double arithmetic");
        });
    }

    [Fact]
    public void A_path_moved_in_loses_the_turned_angle_times_the_distance()
    {
        // Steiner's formula for parallel curves of convex figures.
        Gen.Select(Gen.Double[2, 9], Gen.Double[0.01, 0.5]).Sample((radiusM, inM) =>
        {
            PlanePath path = PlanePath.Of(
                new LineSegment(At(0, 0), At(0, 1)),
                new ArcSegment(At(radiusM, 1), Length.FromMetres(radiusM), Angle.FromDegrees(180), Angle.FromDegrees(-180)),
                new LineSegment(At(2 * radiusM, 1), At(2 * radiusM, 0)));
            PlanePath? moved = path.Offset(Length.FromMetres(inM), PathSide.Right);
            Assert.NotNull(moved);
            Assert.Equal(path.Length.Metres - (Math.PI * inM), moved.Length.Metres, 1e-9);
        });
    }

    [Fact]
    public void A_part_and_its_rest_make_the_whole()
    {
        PlanePath path = PlanePath.Of(new LineSegment(At(0, 0), At(0, 2)), new ArcSegment(At(3, 2), Length.FromMetres(3), Angle.FromDegrees(180), Angle.FromDegrees(-90)));
        Gen.Double[0.01, 0.99].Sample(part =>
        {
            Length at = path.Length * part;
            Assert.Equal(path.Length.Metres, path.Between(Length.Zero, at)!.Length.Metres + path.Between(at, path.Length)!.Length.Metres, 1e-9);
        });
    }

    private static PlanePoint At(double acrossM, double upM) => new(Length.FromMetres(acrossM), Length.FromMetres(upM));
}
