using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Strength.Models;

namespace Hoopwright.Strength.Parts;

/// <summary>Finds the greatest of what feet put on their posts.</summary>
internal static class FootPeaks
{
    /// <summary>Those of the bows between the ends, then those of the end bows.</summary>
    internal static ImmutableArray<FootLoads> Of(Tunnel tunnel, ImmutableArray<FootLoad> feet)
    {
        int first = tunnel.Stations[0].Number, last = tunnel.Stations[^1].Number;
        return [.. feet.GroupBy(foot => foot.Bow == first || foot.Bow == last).OrderBy(group => group.Key).Select(group => Of(group.Key, [.. group]))];
    }

    private static FootLoads Of(bool onEnds, FootLoad[] feet)
    {
        FootLoad[] carried = [.. feet.Where(foot => !foot.Buckles)];
        return new FootLoads(
            onEnds, Force(carried, foot => foot.PullN), Force(carried, foot => -foot.PullN), Force(carried, foot => Math.Abs(foot.AcrossN)),
            Most(carried, foot => Math.Abs(foot.TurningNm)) is { } turned ? new FootMoment(Moment.FromNewtonMetres(Math.Abs(turned.TurningNm)), turned.Bow, turned.Right, turned.Case.Code, turned.Case.Words) : null,
            [.. feet.Where(foot => foot.Buckles).Select(foot => foot.Case.Words).Distinct()]);
    }

    private static FootForce? Force(FootLoad[] feet, Func<FootLoad, double> sizeN) => Most(feet, sizeN) is { } foot
        ? new FootForce(Quantities.Force.FromNewtons(sizeN(foot)), foot.Bow, foot.Right, foot.Case.Code, foot.Case.Words)
        : null;

    private static FootLoad? Most(FootLoad[] feet, Func<FootLoad, double> size) =>
        feet.Where(foot => size(foot) > 0).MaxBy(foot => Ties.Key(size(foot)));
}
