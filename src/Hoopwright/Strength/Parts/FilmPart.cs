using Hoopwright.Cover.Pull;
using Hoopwright.Layout;
using Hoopwright.Sources;
using Hoopwright.Strength.Film;

namespace Hoopwright.Strength.Parts;

/// <summary>
/// The roof film lifted off the bows. At the lower end the greatest suction lies all over one layer, held against where it stretches for
/// good; at the upper end the mean suction lies over all layers, held against where it tears.
/// </summary>
internal static class FilmPart
{
    internal static readonly Formula FreeArc = new("T", "p·R; R of the arc as long as the film over the chord between its channels", "N/m", FilmMaterial.Membrane);

    /// <summary>The line of the film.</summary>
    internal static PartStrength Of(Tunnel tunnel, FilmLift lift)
    {
        double thicknessM = RoofFilm.ThicknessM(tunnel), layerM = thicknessM / (tunnel.Plan.Cover.Layers ?? LayoutDefaults.FilmLayers.Value);
        FilmCheck weak = FilmCheck.Of(FilmTension.HoopNPerM(lift.GreatestPa, lift.RadiusM), layerM, FilmStrength.Yield, FreeArc);
        double strong = FilmTension.HoopNPerM(lift.MeanPa, lift.RadiusM) / thicknessM / FilmStrength.ThreeLayer.MostPa;
        return new PartStrength
        {
            Kind = PartKind.Film,
            Code = "film",
            Words = "roof film lifted by wind",
            Where = "between its channels, over a bow",
            AtWeakest = PartStrength.Shown(weak.Utilisation),
            AtStrongest = PartStrength.Shown(strong),
            Governs = weak.Governs,
            LoadCode = lift.Combination.Code,
            LoadWords = lift.Combination.Words,
            Checks = [weak],
        };
    }
}
