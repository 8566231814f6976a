using Hoopwright.Quantities;

namespace Hoopwright.Strength.Loads;

/// <summary>
/// How hard the roof film pulls lengthwise on each end bow, for a length of the bow, always towards the middle of the tunnel. On
/// the bows between, the pulls of the two sides are equal and go against each other.
/// </summary>
/// <param name="BulgeRadius">
/// Pull for a pressure square to the film: T = p·R, with R the radius to which the film bulges between two bows, at the greatest
/// pressure of the case at the site. Film is not linear: at a lower pressure R is greater, at a higher one smaller (R goes with
/// p^(-1/3)).
/// </param>
/// <param name="Steady">Pull that is there without any pressure.</param>
public sealed record EndFilmPull(Length BulgeRadius, ForcePerLength Steady)
{
    /// <summary>Pull where the film is pressed or sucked.</summary>
    /// <param name="normal">Pressure square to the film, either way.</param>
    public ForcePerLength Under(Pressure normal) =>
        Steady + ForcePerLength.FromNewtonsPerMetre(Math.Abs(normal.Pascals) * BulgeRadius.Metres);
}
