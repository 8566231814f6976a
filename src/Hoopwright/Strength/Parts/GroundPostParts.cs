using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Strength.Models;
using Hoopwright.Strength.Posts;
using Hoopwright.Strength.Steel;

namespace Hoopwright.Strength.Parts;

/// <summary>The ground posts under the worst feet, those in concrete and bare ones apart.</summary>
internal static class GroundPostParts
{
    private const string NothingPresumed = "nothing is presumed of such soil; a test on site has to say";

    /// <summary>Two lines, uplift and sideways, for each kind of post there is.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="ground">Its ground.</param>
    /// <param name="feet">Feet as stiff as they were taken.</param>
    /// <param name="method">At which level their loads are.</param>
    /// <param name="steel">The steel of the posts; null where they are not of steel.</param>
    /// <param name="softFeet">The softest that they may be: these turn the posts least.</param>
    internal static IEnumerable<PartStrength> Of(Tunnel tunnel, SiteGround ground, ImmutableArray<FootLoad> feet, ImmutableArray<FootLoad> softFeet, DesignMethod method, SteelGrade? steel)
    {
        foreach (bool inConcrete in new[] { true, false })
        {
            if (tunnel.GroundPosts.Where(post => post.InConcrete == inConcrete).MinBy(post => DepthM(tunnel, post)) is not { } post) continue;
            (FootLoad[] taken, FootLoad[] soft) = (Under(tunnel, feet, inConcrete), Under(tunnel, softFeet, inConcrete));
            if (taken.Length == 0) continue;
            yield return Uplift(tunnel, post, ground, taken, soft);
            yield return Sideways(tunnel, post, ground, taken, soft);
            if (steel is not null && tunnel.Members.First(member => member.Id == post.MemberId) is { Section: Layout.TubeSection { Material: TubeMaterial.GalvanizedSteel } tube } member)
                yield return Bent(tunnel, post, member, new BowSteel(tube, steel), ground, taken, soft, method);
        }
    }

    private static PartStrength Uplift(Tunnel tunnel, GroundPost post, SiteGround ground, FootLoad[] taken, FootLoad[] soft)
    {
        FootLoad worst = taken.MaxBy(foot => foot.Buckles ? double.PositiveInfinity : Ties.Key(foot.PullN))!;
        GroundPostCheck check = Check(tunnel, post, ground.Weak, worst);
        double best = new[] { taken, soft }.Min(feet => feet.Max(foot => foot.Buckles ? double.PositiveInfinity : Check(tunnel, post, ground.Strong, foot).Uplift.UtilisationAtBest));
        return Line(post, "uplift", "pulled upwards", worst, worst.Buckles ? double.PositiveInfinity : check.Uplift.Utilisation, best, check.Uplift.UpTo(Check(tunnel, post, ground.Strong, worst).Uplift));
    }

    private static PartStrength Sideways(Tunnel tunnel, GroundPost post, SiteGround ground, FootLoad[] taken, FootLoad[] soft)
    {
        // Where nothing counts at the lower end, the foot that is worst at the upper end is named.
        FootLoad worst = taken.MaxBy(foot => (Ties.Key(Use(foot, ground.Weak)), Ties.Key(Use(foot, ground.Strong))))!;
        double best = new[] { taken, soft }.Min(feet => feet.Max(foot => Use(foot, ground.Strong)));
        return Line(post, "sideways", "pushed and turned sideways", worst, Use(worst, ground.Weak), best, Check(tunnel, post, ground.Weak, worst).Lateral);

        double Use(FootLoad foot, GroundAt at) => foot.Buckles ? double.PositiveInfinity : Check(tunnel, post, at, foot).Lateral?.Utilisation ?? double.PositiveInfinity;
    }

    private static PartStrength Bent(Tunnel tunnel, GroundPost post, Member member, BowSteel steel, SiteGround ground, FootLoad[] taken, FootLoad[] soft, DesignMethod method)
    {
        BowSteel weak = steel with { Grade = steel.Grade.WithYield(steel.Grade.LeastYieldPa) }, strong = steel with { Grade = steel.Grade.WithYield(steel.Grade.MostYieldPa) };
        FootLoad worst = taken.MaxBy(foot => Ties.Key(Use(foot, weak, ground.Weak)))!;
        double best = new[] { taken, soft }.Min(feet => feet.Max(foot => Use(foot, strong, ground.Strong)));
        return Line(post, "bending", "bent at the ground and below", worst, Use(worst, weak, ground.Weak), best, Check(worst, weak, ground.Weak));

        double Use(FootLoad foot, BowSteel tube, GroundAt at) => foot.Buckles ? double.PositiveInfinity : Check(foot, tube, at).Utilisation;
        GroundPostBending Check(FootLoad foot, BowSteel tube, GroundAt at) =>
            GroundPostBending.Of(tube, member.CutLength.Metres, GroundPostCheck.InGround(tunnel, member, post.Embedment, at), at, method, foot);
    }

    private static PartStrength Line(GroundPost post, string code, string words, FootLoad worst, double weakest, double strongest, ICheck? check) => new()
    {
        Kind = PartKind.GroundPost,
        Code = (post.InConcrete ? "post-concrete-" : "post-bare-") + code,
        Words = (post.InConcrete ? "ground posts in concrete, " : "bare ground posts, ") + words,
        Where = FormattableString.Invariant($"bow {worst.Bow}, {(worst.Right ? "right" : "left")} foot, on the shallowest such post, {post.MemberId}"),
        AtWeakest = PartStrength.Shown(weakest),
        AtStrongest = PartStrength.Shown(strongest),
        Governs = worst.Buckles ? "the bow buckles before it carries the loads" : check?.Governs ?? NothingPresumed,
        LoadCode = worst.Case.Code,
        LoadWords = worst.Case.Words,
        Checks = check is null || worst.Buckles ? [] : [check],
    };

    private static GroundPostCheck Check(Tunnel tunnel, GroundPost post, GroundAt ground, FootLoad foot) =>
        GroundPostCheck.Of(tunnel, post, ground, foot.PullN, foot.AcrossN, foot.TurningNm);

    // Bows that were tried stand for all alike, so their feet come on every kind of post that an inner bow stands on; a kind that only
    // end bows stand on gets the feet of the end bows, and those of inner bows where there are no others.
    private static FootLoad[] Under(Tunnel tunnel, ImmutableArray<FootLoad> feet, bool inConcrete)
    {
        int last = tunnel.Stations[^1].Number, first = tunnel.Stations[0].Number;
        bool IsEnd(int bow) => bow == first || bow == last;
        bool endsOnly = tunnel.GroundPosts.Where(post => post.InConcrete == inConcrete).All(post => IsEnd(post.Bow));
        FootLoad[] those = [.. feet.Where(foot => IsEnd(foot.Bow) == endsOnly)];
        return those.Length > 0 ? those : [.. feet];
    }

    private static double DepthM(Tunnel tunnel, GroundPost post) =>
        tunnel.Holes.FirstOrDefault(hole => hole.PostId == post.MemberId)?.Depth.Metres ?? post.Embedment.Metres;
}
