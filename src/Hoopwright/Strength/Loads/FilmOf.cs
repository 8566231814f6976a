using Hoopwright.Cover.Pull;
using Hoopwright.Frames;
using Hoopwright.Layout;
using Hoopwright.Quantities;

namespace Hoopwright.Strength.Loads;

/// <summary>The film of a tunnel as a load: its weight, and its pull under a pressure.</summary>
internal static class FilmOf
{
    /// <summary>Weight, Pa over the surface.</summary>
    public static double WeightPa(Tunnel tunnel) => RoofFilm.ThicknessM(tunnel) * FilmMaterial.KgM3 * FrameWeights.GravityMps2;

    /// <summary>Radius R = T/p to which the film bulges between two bows under a pressure, m.</summary>
    public static double BulgeRadiusM(Tunnel tunnel, double pressurePa) =>
        FilmTension.ElasticNPerM(FilmMaterial.YoungPa * RoofFilm.ThicknessM(tunnel), pressurePa, RoofFilm.WidestBayM(tunnel)) / pressurePa;

    /// <summary>Pull on the end bows of film that a pressure bulges between the bows.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="greatestPa">The greatest pressure of the case at the site; null where the plan gives none: then 500 Pa.</param>
    public static EndFilmPull PullUnder(Tunnel tunnel, double? greatestPa) => new(Length.FromMetres(BulgeRadiusM(tunnel, greatestPa ?? 500)), ForcePerLength.Zero);
}
