using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Strength.Loads;

/// <summary>A point of a profile.</summary>
/// <param name="Distance">Distance along the film line of the bow from the left ground line.</param>
/// <param name="Value">The load there.</param>
public readonly record struct ProfilePoint(Length Distance, Pressure Value);

/// <summary>
/// A load along the film line of a bow (<see cref="Layout.BowShape.FilmLine"/>) from its left foot: straight between its points,
/// a jump where two points have one distance, and nothing beyond the first and last point.
/// </summary>
/// <param name="Points">Points in order along the film line; none for no load at all.</param>
public sealed record LoadProfile(ImmutableArray<ProfilePoint> Points)
{
    // Distances as near as this are one place: a thousandth of a micrometre.
    private const double SameM = 1e-9;

    /// <summary>No load.</summary>
    public static LoadProfile None { get; } = new([]);

    /// <summary>True when there is no load anywhere.</summary>
    public bool IsNone => Points.All(point => point.Value.Pascals == 0);

    /// <summary>The load a distance along the film line; at a jump, what comes after it.</summary>
    public Pressure At(Length distance) => Pressure.FromPascals(AtPa(distance.Metres, after: true));

    /// <summary>The load just before a distance along the film line: differs from <see cref="At"/> at a jump only.</summary>
    public Pressure Before(Length distance) => Pressure.FromPascals(AtPa(distance.Metres, after: false));

    /// <summary>The greatest load either way, without its sign.</summary>
    public Pressure Greatest => Pressure.FromPascals(Points.IsEmpty ? 0 : Points.Max(point => Math.Abs(point.Value.Pascals)));

    /// <summary>The same profile times a number.</summary>
    public LoadProfile Times(Ratio times) => new([.. Points.Select(point => point with { Value = point.Value * times.Value })]);

    /// <summary>The same profile seen from behind: left is right.</summary>
    /// <param name="whole">Length of the film line.</param>
    public LoadProfile Mirrored(Length whole) => new([.. Points.Reverse().Select(point => point with { Distance = whole - point.Distance })]);

    /// <summary>The load in Pa, before or after a jump; before the first point and after the last there is none but at the last itself.</summary>
    internal double AtPa(double distanceM, bool after)
    {
        for (int i = 1; i < Points.Length; i++)
        {
            double fromM = Points[i - 1].Distance.Metres, toM = Points[i].Distance.Metres;
            if (fromM == toM || distanceM < fromM - SameM || distanceM > toM + SameM) continue;
            // At a point that two stretches share, the one asked for: also where its distance was worked out in another way and differs in the last digits.
            if (after ? distanceM >= toM - SameM && i < Points.Length - 1 : distanceM <= fromM + SameM) continue;
            double from = Points[i - 1].Value.Pascals, to = Points[i].Value.Pascals;
            return from + ((to - from) * Math.Clamp((distanceM - fromM) / (toM - fromM), 0, 1));
        }
        return 0;
    }

    /// <summary>A profile of values in Pa at distances in m, without points that lie on the line between their neighbours.</summary>
    internal static LoadProfile Of(IReadOnlyList<(double SM, double Pa)> points)
    {
        var kept = new List<(double SM, double Pa)>();
        foreach ((double sM, double pa) in points)
        {
            if (kept.Count > 0 && kept[^1] == (sM, pa)) continue;
            while (kept.Count >= 2 && IsBetween(kept[^2], kept[^1], (sM, pa))) kept.RemoveAt(kept.Count - 1);
            kept.Add((sM, pa));
        }
        return kept.All(point => point.Pa == 0) ? None : new([.. kept.Select(point => new ProfilePoint(Length.FromMetres(point.SM), Pressure.FromPascals(point.Pa)))]);
    }

    // On a jump only the first and last of its points count.
    private static bool IsBetween((double SM, double Pa) a, (double SM, double Pa) b, (double SM, double Pa) c)
    {
        if (c.SM == a.SM) return true;
        double onLine = a.Pa + ((c.Pa - a.Pa) * (b.SM - a.SM) / (c.SM - a.SM));
        return b.SM > a.SM && b.SM < c.SM && Math.Abs(onLine - b.Pa) <= 1e-12 * (Math.Abs(a.Pa) + Math.Abs(c.Pa));
    }
}
