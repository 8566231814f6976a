using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.AsBuilt;

/// <summary>How square the string rectangle stands, and which corners to move to make it so.</summary>
public sealed record Squaring
{
    /// <summary>How the corners are found.</summary>
    public static Formula Rule => CornerFit.Adjusted;

    /// <summary>The corners, front left, front right, back left, back right; x across and y along from where front left stands.</summary>
    public required ImmutableArray<SquareCorner> Corners { get; init; }

    /// <summary>What the fit leaves of each length that was measured.</summary>
    public required ImmutableArray<SquareResidual> Residuals { get; init; }

    /// <summary>The largest of them without its sign.</summary>
    public Length Worst => Residuals.Max(residual => residual.Left.Abs());

    /// <summary>Difference of the two measured diagonals.</summary>
    public required Length DiagonalsDiffer { get; init; }

    /// <summary>True when diagonals and sides are within their tolerances.</summary>
    public required bool IsSquare { get; init; }

    /// <summary>The side that stays where it is while the other corners are moved.</summary>
    public required string Held { get; init; }

    /// <summary>Squares the rectangle; null until all six lengths are measured.</summary>
    /// <param name="measurements">What was measured.</param>
    public static Squaring? Of(SiteMeasurements measurements)
    {
        ArgumentNullException.ThrowIfNull(measurements);
        string[] names = [.. SetOutNames];
        Measurement?[] six = [.. names.Select(measurements.Of)];
        if (six.Any(each => each?.Value is null)) return null;
        double[] lengthsM = [.. six.Select(each => each!.Value!.Value.Metres)];
        if (CornerFit.Corners(lengthsM) is not { } corners) return null;
        double[] leftM = CornerFit.ResidualsM(lengthsM, corners);
        Length differ = Length.FromMetres(Math.Abs(lengthsM[4] - lengthsM[5]));
        SetOut set = measurements.Planned.SetOut;
        (string held, (double XM, double YM)[] to) = Target(corners, set.Across.Metres, set.Along.Metres, measurements.Tolerances.Frame.Metres / 2);
        string[] where = ["front left", "front right", "back left", "back right"];
        return new Squaring
        {
            Corners = [.. where.Select((name, index) => new SquareCorner(name, Length.FromMetres(corners[index].XM), Length.FromMetres(corners[index].YM),
                Length.FromMetres(to[index].XM - corners[index].XM), Length.FromMetres(to[index].YM - corners[index].YM)))],
            Residuals = [.. names.Select((name, index) => new SquareResidual(name, Length.FromMetres(leftM[index])))],
            DiagonalsDiffer = differ,
            IsSquare = differ <= measurements.Tolerances.Diagonals && six.Take(4).All(each => !each!.IsOut),
            Held = held,
        };
    }

    /// <summary>Names of the six lengths: front, back, left, right, the diagonals.</summary>
    internal static ImmutableArray<string> SetOutNames { get; } =
    [
        MeasureNames.Square("front"), MeasureNames.Square("back"), MeasureNames.Square("left"), MeasureNames.Square("right"),
        MeasureNames.DiagonalFromFrontLeft, MeasureNames.DiagonalFromFrontRight,
    ];

    /// <summary>
    /// The planned rectangle laid on one side of what stands: on the side that leaves fewest corners to move, and of those the least way.
    /// The corner at the side's beginning stays; the other keeps its direction.
    /// </summary>
    private static (string Held, (double XM, double YM)[] Corners) Target((double XM, double YM)[] corners, double acrossM, double alongM, double stillM)
    {
        (string Side, int At, int Other, bool Across)[] sides = [("front", 0, 1, true), ("back", 2, 3, true), ("left", 0, 2, false), ("right", 1, 3, false)];
        return sides.Select(side =>
        {
            double xM = corners[side.Other].XM - corners[side.At].XM, yM = corners[side.Other].YM - corners[side.At].YM;
            double sizeM = Math.Sqrt((xM * xM) + (yM * yM));
            // Unit steps across and along, square to each other.
            (double X, double Y) across = side.Across ? (xM / sizeM, yM / sizeM) : (yM / sizeM, -xM / sizeM), along = (-across.Y, across.X);
            (double XM, double YM) zero = Step(corners[side.At], across, along, side.At is 1 or 3 ? -acrossM : 0, side.At is 2 or 3 ? -alongM : 0);
            (double XM, double YM)[] to = [zero, Step(zero, across, along, acrossM, 0), Step(zero, across, along, 0, alongM), Step(zero, across, along, acrossM, alongM)];
            double[] moves = [.. to.Zip(corners, (one, other) => Math.Sqrt(((one.XM - other.XM) * (one.XM - other.XM)) + ((one.YM - other.YM) * (one.YM - other.YM))))];
            return (side.Side, To: to, Count: moves.Count(move => move > stillM), Way: Math.Round(moves.Sum(), 6));
        }).OrderBy(each => each.Count).ThenBy(each => each.Way).Select(each => (each.Side, each.To)).First();
    }

    private static (double XM, double YM) Step((double XM, double YM) from, (double X, double Y) across, (double X, double Y) along, double acrossM, double alongM) =>
        (from.XM + (across.X * acrossM) + (along.X * alongM), from.YM + (across.Y * acrossM) + (along.Y * alongM));
}
