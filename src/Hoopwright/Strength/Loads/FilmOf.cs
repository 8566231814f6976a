using Hoopwright.Layout;
using Hoopwright.Quantities;

namespace Hoopwright.Strength.Loads;

/// <summary>The film of a tunnel: weight, stiffness, pull.</summary>
internal static class FilmOf
{
    /// <summary>Thickness of all layers, m.</summary>
    public static double ThicknessM(Tunnel tunnel) =>
        (tunnel.Plan.Cover.Thickness?.Value ?? LayoutDefaults.FilmThickness.Value).Metres * (tunnel.Plan.Cover.Layers ?? LayoutDefaults.FilmLayers.Value);

    /// <summary>Weight, Pa over the surface.</summary>
    public static double WeightPa(Tunnel tunnel) => ThicknessM(tunnel) * LoadDefaults.FilmKgM3 * LoadDefaults.FreeFall;

    /// <summary>Radius R = T/p to which the film bulges between two bows under a pressure, m.</summary>
    public static double BulgeRadiusM(Tunnel tunnel, double pressurePa) =>
        FilmTension.ElasticNPerM(LoadDefaults.FilmYoungPa * ThicknessM(tunnel), pressurePa, WidestBayM(tunnel)) / pressurePa;

    /// <summary>Pull on the end bows of film that a pressure bulges between the bows.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="greatestPa">The greatest pressure of the case at the site; null where the plan gives none: then 500 Pa.</param>
    public static EndFilmPull PullUnder(Tunnel tunnel, double? greatestPa) => new(Length.FromMetres(BulgeRadiusM(tunnel, greatestPa ?? 500)), ForcePerLength.Zero);

    /// <summary>Pull of film that is held and cools, N for a metre.</summary>
    public static double CoolingNPerM(Tunnel tunnel, double cooledK) =>
        FilmTension.CoolingPa(LoadDefaults.FilmYoungPa, LoadDefaults.FilmPerK, Math.Max(0, cooledK), LoadDefaults.FilmPoisson) * ThicknessM(tunnel);

    /// <summary>The widest bay, middle of bow to middle of bow, m.</summary>
    public static double WidestBayM(Tunnel tunnel) =>
        tunnel.Stations.Zip(tunnel.Stations.Skip(1), (one, next) => (next.Along - one.Along).Metres).Max();
}
