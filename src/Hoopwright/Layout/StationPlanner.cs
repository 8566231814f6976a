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

    /// <summary>
    /// The marks as the bows stand: a mark that was not measured is off as its measured neighbours are, evenly between them. The last
    /// bow stands as far back as the longest that was measured along a side or to its own mark, so that nothing is cut too short.
    /// </summary>
    /// <param name="planned">Marks by the plan.</param>
    /// <param name="built">What was measured.</param>
    public static ImmutableArray<Length> Measured(ImmutableArray<Length> planned, BuiltSizes built)
    {
        Length?[] off = [.. planned.Select((mark, index) => index == 0 ? Length.Zero : built.Of(MeasureNames.BowMark(index + 1)) - mark)];
        Length?[] along = [built.Of(MeasureNames.Square("left")) - planned[^1], built.Of(MeasureNames.Square("right")) - planned[^1], off[^1]];
        if (along.Max() is { } longest) off[^1] = longest;
        Length[] all = BuiltBows.Between(off);
        return [.. planned.Select((mark, index) => mark + all[index])];
    }
}
