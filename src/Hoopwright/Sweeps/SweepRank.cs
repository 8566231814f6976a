using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Strength;

namespace Hoopwright.Sweeps;

/// <summary>
/// The order of designs: by cost among those that stand the entered loads, then by cost among the marginal ones, then the
/// rest by what they stand, then those that cannot be built.
/// </summary>
public static class SweepRank
{
    /// <summary>Designs in that order; equal ones by their number, so that the order in which they were worked out does not show.</summary>
    public static ImmutableArray<SweptDesign> Order(IEnumerable<SweptDesign> designs) =>
    [
        .. designs.OrderBy(Group)
            .ThenBy(design => CostDecides(design) ? design.Cost ?? Money.Zero : Money.Zero)
            .ThenByDescending(design => design.StormSnow ?? Pressure.Zero)
            .ThenByDescending(design => design.StormGust ?? Speed.Zero)
            .ThenBy(design => design.Cost ?? Money.Zero)
            .ThenBy(design => design.Number),
    ];

    private static bool CostDecides(SweptDesign design) => Group(design) < 2;

    private static int Group(SweptDesign design) => design.Verdict switch
    {
        StrengthVerdict.Stands => 0,
        StrengthVerdict.Marginal => 1,
        StrengthVerdict.DoesNotStand or StrengthVerdict.NothingEntered => 2,
        null => 3,
    };
}
