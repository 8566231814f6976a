using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Loads;

/// <summary>
/// Snow that slides and drifts into the gap between two tunnels and leans on their sides. The neighbour is taken to be a tunnel
/// like this one. The amounts are those of ASCE 7; that the heap presses on a side as loose grains do is a model of ours.
/// </summary>
internal static class SnowGap
{
    /// <summary>Level pressure of a heap of snow as a part of its own weight above. From memory of soil at rest; snow was not measured.</summary>
    internal const double AtRest = 0.5;

    /// <summary>Drifts reach from one structure to the next over this far: 20 ft.</summary>
    internal const double DriftReachM = 6.096;

    // Above this slope snow in the gap still slides on; it fills up to where the film gets flatter.
    private const double FullDeg = 45;

    private static readonly Formula Filled = new(
        "d", "pg/γ + 2·0.4·pf·W/(γ·gap) + hd·(20 ft - gap)/20 ft, at most up to where the film is flatter than 45°", "m", LoadSources.OwnModel);

    private static readonly Formula Side = new("p", "0.5·γ·(d - z) square to the film below the top of the heap, γ·(d - z) on what lies under it", "Pa", LoadSources.OwnModel);

    public static IEnumerable<LoadCase> Of(Tunnel tunnel, LoadSite site, LoadCase balanced)
    {
        // The depth is not straight in the ground snow, so without a value there is none.
        if (site.SnowPa is not { } groundPa || groundPa <= 0) yield break;
        foreach (bool left in (bool[])[true, false])
        {
            if ((left ? tunnel.Plan.Site.NeighbourLeft : tunnel.Plan.Site.NeighbourRight) is not { } gap) continue;
            FilmLine line = left ? site.Line : site.Behind;
            double gapM = Math.Max(gap.Value.Metres, 0.1), depthM = DepthM(site, line, gapM, groundPa);
            double weight = AsceSnow.WeightNPerM3(groundPa), topM = line.AtHeightM(depthM);
            LoadProfile onLeft = line.Profile(place => place.SM <= topM ? AtRest * weight * Math.Max(0, depthM - place.ZM) / groundPa : 0, topM);
            LoadProfile above = line.Profile(place => place.SM <= topM ? weight * Math.Max(0, depthM - place.ZM) / groundPa : 0, topM);
            var whole = Length.FromMetres(line.LengthM);
            string side = left ? "left" : "right";
            LoadCase roof = SnowCases.Case("snow-gap-" + side, $"Snow on the roof, and the gap to the next tunnel on the {side} filled", balanced.Surfaces.Select(surface => surface.PlanGravity),
                [.. balanced.Coefficients, LoadSite.Value(AsceSnow.Weight, weight, "weight of the snow"), LoadSite.Value(Filled, depthM, "depth in the gap"), LoadSite.Value(Side, AtRest, "at rest")],
                "A model of this program; the neighbour is taken to be alike, and to drop its snow here.", "snow-gap-" + (left ? "right" : "left"));
            yield return roof with
            {
                Surfaces =
                [
                    .. roof.Surfaces,
                    new SurfaceLoad { Normal = left ? onLeft : onLeft.Mirrored(whole), PlanGravity = left ? above : above.Mirrored(whole) },
                ],
            };
        }
    }

    /// <summary>How deep the gap is filled, m.</summary>
    internal static double DepthM(LoadSite site, FilmLine line, double gapM, double groundPa)
    {
        double weight = AsceSnow.WeightNPerM3(groundPa), halfM = (line.EndM - line.StartM) / 2;
        double flatPa = groundPa * (site.IsAsce ? SnowCases.FlatFactor(site) : EnSnow.Even * EnSnow.Ce(site.Roof));
        double drift = site.DriftM(halfM * 2, groundPa, 1) * Math.Max(0, (DriftReachM - gapM) / DriftReachM);
        double deep = (groundPa / weight) + (2 * AsceSnow.SlidingNPerM(flatPa, halfM) / (weight * gapM)) + drift;
        return Math.Min(deep, line.Points.First(place => place.SlopeDeg <= FullDeg || place.SM >= line.Crown.SM).ZM);
    }
}
