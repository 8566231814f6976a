using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Sources;
using Hoopwright.Strength.Film;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Strength.Parts;

/// <summary>
/// The roof film under the worst suction: lifted off the bows it is a free arc that only its channels hold. At the lower end the greatest
/// suction lies all over one layer, held against where it stretches for good; at the upper end the mean suction lies over all layers,
/// held against where it tears.
/// </summary>
internal static class FilmPart
{
    internal static readonly Formula FreeArc = new("T", "p·R; R of the arc as long as the film over the chord between its channels", "N/m", LoadSources.Membrane);

    /// <summary>The line of the film; null where no combination sucks at it.</summary>
    internal static PartStrength? Of(Tunnel tunnel, TunnelLoads loads, ImmutableArray<LoadCombination> combinations)
    {
        (LoadCombination? Combination, double GreatestPa, double MeanPa) worst = (null, 0, 0);
        double wholeM = tunnel.Bow.FilmLine.Length.Metres;
        foreach (LoadCombination each in combinations)
        {
            (double greatestPa, double meanPa) = Suction(each, loads, wholeM);
            if (greatestPa > worst.GreatestPa)
                worst = (each, greatestPa, Math.Max(0, meanPa));
        }
        if (worst.Combination is not { } combination) return null;
        double radiusM = RadiusM(tunnel), thicknessM = FilmOf.ThicknessM(tunnel), layerM = thicknessM / (tunnel.Plan.Cover.Layers ?? LayoutDefaults.FilmLayers.Value);
        FilmCheck weak = FilmCheck.Of(FilmTension.HoopNPerM(worst.GreatestPa, radiusM), layerM, FilmStrength.Yield, FreeArc);
        double strong = FilmTension.HoopNPerM(worst.MeanPa, radiusM) / thicknessM / FilmStrength.ThreeLayer.MostPa;
        return new PartStrength
        {
            Kind = PartKind.Film,
            Code = "film",
            Words = "roof film lifted by wind",
            Where = "between its channels, over a bow",
            AtWeakest = PartStrength.Shown(weak.Utilisation),
            AtStrongest = PartStrength.Shown(strong),
            Governs = weak.Governs,
            LoadCode = combination.Code,
            LoadWords = combination.Words,
            Checks = [weak],
        };
    }

    /// <summary>Radius of a circular arc of a length over a chord, m; a half circle's where the film is longer than that.</summary>
    internal static double ArcRadiusM(double arcM, double chordM)
    {
        // sin φ/φ = chord/arc, with φ half the angle of the arc: falls steadily from 1 to 0.
        double low = 1e-6, high = Math.PI;
        for (int round = 0; round < 80; round++)
        {
            double middle = (low + high) / 2;
            (low, high) = Math.Sin(middle) / middle > chordM / arcM ? (middle, high) : (low, middle);
        }
        return arcM / (low + high);
    }

    private static double RadiusM(Tunnel tunnel)
    {
        double wholeM = tunnel.Bow.FilmLine.Length.Metres, fromM = tunnel.Left.ArcToHip.Metres, toM = wholeM - tunnel.Right.ArcToHip.Metres;
        Geometry.PlanePoint left = tunnel.Bow.FilmLine.PointAt(Quantities.Length.FromMetres(fromM)), right = tunnel.Bow.FilmLine.PointAt(Quantities.Length.FromMetres(toM));
        return ArcRadiusM(toM - fromM, double.Hypot((right.Across - left.Across).Metres, (right.Up - left.Up).Metres));
    }

    // Greatest suction anywhere, and the mean over the film line, at the places along the tunnel that get most.
    private static (double GreatestPa, double MeanPa) Suction(LoadCombination combination, TunnelLoads loads, double wholeM)
    {
        double greatestPa = 0, meanPa = 0;
        foreach (CombinationTerm term in combination.Terms)
        {
            foreach (SurfaceLoad surface in loads.Case(term.CaseCode).AtSite()?.Surfaces ?? [])
            {
                double times = term.Factor.Value * (surface.ByLength.IsEmpty ? 1 : surface.ByLength.Max(point => point.Factor.Value));
                greatestPa += times * Math.Max(0, surface.Normal.Points.Select(point => -point.Value.Pascals).DefaultIfEmpty(0).Max());
                double sum = 0;
                for (int at = 1; at < surface.Normal.Points.Length; at++)
                {
                    (ProfilePoint one, ProfilePoint next) = (surface.Normal.Points[at - 1], surface.Normal.Points[at]);
                    sum -= (one.Value.Pascals + next.Value.Pascals) / 2 * (next.Distance - one.Distance).Metres;
                }
                meanPa += times * sum / wholeM;
            }
        }
        return (greatestPa, meanPa);
    }
}
