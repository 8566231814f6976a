using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Strength;

namespace Hoopwright.Sweeps;

/// <summary>The order of changes: those with which a tunnel that did not stand now stands, the cheapest first; then by what they gain for the money; then those that gain nothing; last those that cannot be built.</summary>
public static class ChangeRank
{
    /// <summary>Changes in that order; equal ones as they were found.</summary>
    /// <param name="changes">The changes, worked out.</param>
    /// <param name="before">The verdict on the plan as it was.</param>
    public static ImmutableArray<ChangedDesign> Order(IEnumerable<ChangedDesign> changes, StrengthVerdict before) =>
    [
        .. changes.OrderBy(each => Group(each, before))
            .ThenBy(each => Group(each, before) == 0 ? each.MoreCost ?? Money.Zero : Money.Zero)
            .ThenByDescending(each => Group(each, before) == 1 ? Math.Round(PerMoney(each), 9) : 0)
            .ThenBy(each => each.MoreCost ?? Money.Zero)
            .ThenBy(each => each.Design.Number),
    ];

    private static int Group(ChangedDesign each, StrengthVerdict before) => each switch
    {
        { Design.Verdict: null } => 3,
        { Design.Verdict: StrengthVerdict.Stands } when before is StrengthVerdict.DoesNotStand or StrengthVerdict.Marginal => 0,
        { Helps: true } => 1,
        _ => 2,
    };

    // What costs next to nothing, or less than before, is counted as one unit of money: it comes first by what it gains.
    private static double PerMoney(ChangedDesign each) => each.Gain / (double)Math.Max(1, each.MoreCost?.Amount ?? 1);
}
