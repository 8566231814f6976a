using Hoopwright.Sources;

namespace Hoopwright.Inside.Air;

/// <summary>
/// How much air passes through open sides, doors and vents, by its own warmth and by the wind. The two add as the heads that drive them.
/// The form and the coefficients are those measured with tracer gas in film houses, which give much less than the rule of thumb for wind that blows
/// square through: that one is the upper end.
/// </summary>
internal sealed class AirExchange
{
    internal static readonly Formula Rule = new(
        "Q", "Cd·√(2·g·(ΔT/T)·F² + (ΣA/2)²·Cw·u²), F = ∫√|z - zn| dA over the openings above the level zn at which as much goes in as out", "m³/s",
        new Citation("Boulard and Baille (1995) and Kittas, Boulard and others (1997), form as documented publicly", "sides, and roof with sides", Standing.FromMemory));

    internal static readonly Formula Through = new(
        "Q", "Cv·A·u, Cv 0.5 to 0.6 square on and 0.25 to 0.35 aslant, A the smaller of where it goes in and out", "m³/s",
        new Citation("Principles of Sustainable Energy (2011)", "equation 9.14; aslant from memory", Standing.Published));

    /// <summary>Cd, discharge coefficient: about 0.6 for an opening with sharp edges, from memory.</summary>
    internal const double Discharge = 0.6;

    /// <summary>Cw, wind coefficient: 0.07 to 0.10 by tracer gas, from memory; the middle.</summary>
    internal const double WindCoefficient = 0.09;

    internal const double SquareOn = 0.5, Aslant = 0.3, GravityMps2 = 9.80665;

    // Air of one temperature still passes: gusts, and damp air rises in dry. As if by this difference, K, from memory; it also keeps the balance to one solution.
    private const double StillK = 0.3;

    private const int StripsOfOpening = 8;
    private readonly (double Facing, double AreaM2)[] _walls;

    internal AirExchange(IEnumerable<AirOpening> openings, OpenWide wide)
        : this([.. openings.Select(opening => (opening.Gap(wide), opening.Facing.Radians)).Select(gap => (gap.Item1.WidthM, gap.Item1.LowM, gap.Item1.HighM, gap.Radians))])
    {
    }

    /// <param name="gaps">Width, lowest and highest point in m, and where each faces in radians from north.</param>
    internal AirExchange(IReadOnlyList<(double WidthM, double LowM, double HighM, double FacingRad)> gaps)
    {
        AreaM2 = gaps.Sum(gap => gap.WidthM * (gap.HighM - gap.LowM));
        StackM25 = StackOf(gaps);
        _walls = [.. gaps.GroupBy(gap => Math.Round(gap.FacingRad, 6)).Select(wall => (wall.Key, wall.Sum(gap => gap.WidthM * (gap.HighM - gap.LowM)))).Where(wall => wall.Item2 > 0)];
    }

    /// <summary>ΣA, m².</summary>
    internal double AreaM2 { get; }

    /// <summary>F, m^2.5.</summary>
    internal double StackM25 { get; }

    /// <summary>Q, m³/s.</summary>
    /// <param name="insideK">Air inside, K.</param>
    /// <param name="outsideK">Air outside, K.</param>
    /// <param name="windMps">u, wind at the openings, m/s.</param>
    internal double M3PerS(double insideK, double outsideK, double windMps) => WithSlope(insideK, outsideK, windMps).M3PerS;

    /// <summary>Q, and by how much it grows with a kelvin inside.</summary>
    internal (double M3PerS, double PerK) WithSlope(double insideK, double outsideK, double windMps)
    {
        if (AreaM2 <= 0) return (0, 0);
        double warmer = insideK - outsideK, difference = Math.Sqrt((warmer * warmer) + (StillK * StillK)), stack = 2 * GravityMps2 / insideK * StackM25 * StackM25;
        double wind = AreaM2 * AreaM2 / 4 * WindCoefficient * windMps * windMps, flow = Discharge * Math.Sqrt((stack * difference) + wind);
        return (flow, Discharge * Discharge * stack * ((warmer / difference) - (difference / insideK)) / (2 * flow));
    }

    /// <summary>Air that wind from a direction blows through, by the rule of thumb, m³/s; 0 where nothing is open on two sides.</summary>
    /// <param name="windMps">u, m/s.</param>
    /// <param name="fromRad">Where it comes from, radians from north.</param>
    internal double ThroughM3PerS(double windMps, double fromRad)
    {
        double into = 0, outOf = 0, square = 0;
        foreach ((double facing, double area) in _walls)
        {
            double cosine = Math.Cos(fromRad - facing);
            if (cosine > 0) (into, square) = (into + area, square + (area * cosine));
            else outOf += area;
        }
        if (into == 0 || outOf == 0) return 0;
        // From aslant at 45° to square on in a straight line with the cosine.
        double part = Math.Clamp(((square / into) - Math.Sqrt(0.5)) / (1 - Math.Sqrt(0.5)), 0, 1);
        return (Aslant + (part * (SquareOn - Aslant))) * Math.Min(into, outOf) * windMps;
    }

    /// <summary>F: by halving to the level at which as much goes in below as out above.</summary>
    private static double StackOf(IReadOnlyList<(double WidthM, double LowM, double HighM, double FacingRad)> gaps)
    {
        var strips = new List<(double HeightM, double AreaM2)>();
        foreach (var gap in gaps)
        {
            double step = (gap.HighM - gap.LowM) / StripsOfOpening;
            for (int strip = 0; strip < StripsOfOpening; strip++) strips.Add((gap.LowM + ((strip + 0.5) * step), gap.WidthM * step));
        }
        if (strips.Count == 0) return 0;
        double low = strips.Min(strip => strip.HeightM), high = strips.Max(strip => strip.HeightM);
        for (int halving = 0; halving < 60; halving++)
        {
            double level = (low + high) / 2;
            if (Flow(level, above: true) > Flow(level, above: false)) low = level;
            else high = level;
        }
        return Math.Min(Flow(low, above: true), Flow(high, above: false));

        double Flow(double level, bool above)
        {
            double flow = 0;
            foreach ((double height, double area) in strips)
            {
                double head = above ? height - level : level - height;
                if (head > 0) flow += area * Math.Sqrt(head);
            }
            return flow;
        }
    }
}
