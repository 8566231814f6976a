using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Strength.Parts;

/// <summary>The wind that presses or sucks hardest at an end.</summary>
/// <param name="Combination">The combination.</param>
/// <param name="PressurePa">Its pressure inwards; negative for suction.</param>
internal sealed record EndWind(LoadCombination Combination, double PressurePa)
{
    /// <summary>The worst of some combinations; null where none presses or sucks.</summary>
    internal static EndWind? Of(EndWall end, TunnelLoads loads, ImmutableArray<LoadCombination> combinations)
    {
        EndWind? worst = null;
        foreach (LoadCombination each in combinations)
        {
            double pressurePa = each.Terms.Sum(term => term.Factor.Value * (loads.Case(term.CaseCode).AtSite()?.Ends.Where(load => load.IsFront == end.IsFront).Sum(load => load.Inwards.Pascals) ?? 0));
            if (Math.Abs(pressurePa) > Math.Abs(worst?.PressurePa ?? 0))
                worst = new EndWind(each, pressurePa);
        }
        return worst;
    }
}
