using System.Collections.Immutable;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>Shares the length out into bays.</summary>
internal static class StationPlanner
{
    /// <summary>Distances of the bows from the first.</summary>
    /// <param name="length">Middle of first bow to middle of last.</param>
    /// <param name="spacing">The widest bay allowed; above 0.</param>
    /// <param name="rule">Equal bays or a shorter last one.</param>
    public static ImmutableArray<Length> Marks(Length length, Length spacing, BayRule rule)
    {
        // A length that is a whole number of bays but for rounding in the last bits must not gain a bay.
        int bays = Math.Max(1, (int)Math.Ceiling((length / spacing) - Tolerances.WholeNumber));
        var marks = ImmutableArray.CreateBuilder<Length>(bays + 1);
        for (int bay = 0; bay < bays; bay++)
        {
            marks.Add(rule switch
            {
                BayRule.Equal => length * bay / bays,
                BayRule.LastShort => spacing * bay,
            });
        }
        marks.Add(length);
        return marks.MoveToImmutable();
    }
}
