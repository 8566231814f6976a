using Hoopwright.Quantities;

namespace Hoopwright.Strength;

/// <summary>How the bows stand one combination at the site.</summary>
/// <param name="Code">Name of the combination.</param>
/// <param name="Words">In words.</param>
/// <param name="Utilisation">Demand over strength where it is greatest; null when a bow buckles before it carries the loads.</param>
/// <param name="Bow">Number of the bow.</param>
/// <param name="Across">Where, from the left ground line.</param>
/// <param name="Up">Where, over the ground line.</param>
/// <param name="Governs">What governs, in words.</param>
/// <param name="BucklingFactor">Multiple of the loads at which that bow buckles in its plane; null without compression.</param>
public sealed record CombinationStrength(string Code, string Words, Ratio? Utilisation, int Bow, Length Across, Length Up, string Governs, Ratio? BucklingFactor);
