using Hoopwright.Frames;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Models;

/// <summary>How the feet of the bows are taken, with the weakest and the stiffest that they may be.</summary>
/// <param name="Least">The weaker end.</param>
/// <param name="Taken">As the plan says, or as taken.</param>
/// <param name="Most">The stiffer end.</param>
/// <param name="Words">In words.</param>
internal sealed record FootRange(PlanarFoot Least, PlanarFoot Taken, PlanarFoot Most, string Words)
{
    /// <summary>Turning stiffness of a foot that a post holds: a long post turns as a beam on soil, a short stiff one as a whole.</summary>
    internal static readonly Formula PostStiffness = new(
        "k", "the lesser of 2·β·E·I with β = (ks·b/(4·E·I))^(1/4), and ks·b·L³/3", "N·m/rad",
        new Citation("Hetényi, Beams on Elastic Foundation, University of Michigan Press, 1946", "semi-infinite beam, end held in place", Standing.FromMemory));

    /// <summary>How stiff soil is against a post: 5 to 10 MN/m³ and more for loose sand and soft clay.</summary>
    internal static readonly Citation SubgradeSource = new("Bowles, Foundation Analysis and Design, 5th ed., McGraw-Hill, 1996", "table 9-1, loose sand and soft clay", Standing.FromMemory);

    /// <summary>How stiff soil is taken against a post, Pa for a metre of movement.</summary>
    internal const double TakenPaPerM = 10e6;

    private const double SoftPaPerM = 5e6;

    /// <summary>The feet of a tunnel.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="stated">As the plan says, or as taken.</param>
    /// <param name="given">True when the plan says it.</param>
    internal static FootRange Of(Tunnel tunnel, LegBase stated, bool given)
    {
        PlanarFoot taken = stated switch
        {
            LegBase.Pinned => PlanarFoot.Hinge,
            LegBase.Fixed => PlanarFoot.BuiltIn,
            LegBase.Spring => Spring(tunnel, TakenPaPerM),
        };
        string words = stated switch
        {
            LegBase.Pinned => "free to lean at the ground",
            LegBase.Fixed => "held upright at the ground",
            LegBase.Spring => "held at the ground as stiffly as post and soil are",
        };
        // Feet that the plan states free or fixed are what they are; how stiff soil is, nobody knows well.
        return stated == LegBase.Spring
            ? new FootRange(Spring(tunnel, SoftPaPerM), taken, given ? taken : PlanarFoot.BuiltIn, words)
            : new FootRange(taken, taken, taken, words);
    }

    private static PlanarFoot Spring(Tunnel tunnel, double subgradePaPerM)
    {
        if (tunnel.GroundPosts.IsEmpty) return PlanarFoot.Hinge;
        GroundPost post = tunnel.GroundPosts.MinBy(each => each.Embedment) ?? tunnel.GroundPosts[0];
        double lengthM = post.Embedment.Metres;
        (double widthM, double eiNm2) = tunnel.Members.FirstOrDefault(member => member.Id == post.MemberId)?.Section.Match(
            tube => (tube.Outside.Metres, FrameMaterial.Steel.YoungPa * TubeWeights.SecondM4(tube)), _ => (0, 0)) ?? (0, 0);
        return lengthM <= 0 || eiNm2 <= 0 ? PlanarFoot.Hinge : new PlanarFoot(PostTurnNmPerRad(subgradePaPerM, widthM, eiNm2, lengthM));
    }

    /// <summary>Turning stiffness of a post at the ground, by <see cref="PostStiffness"/>.</summary>
    /// <param name="subgradePaPerM">ks of the soil.</param>
    /// <param name="widthM">b of the post.</param>
    /// <param name="eiNm2">E·I of the post.</param>
    /// <param name="lengthM">L, how deep it stands.</param>
    internal static double PostTurnNmPerRad(double subgradePaPerM, double widthM, double eiNm2, double lengthM)
    {
        double perM = subgradePaPerM * widthM, beta = Math.Pow(perM / (4 * eiNm2), 0.25);
        return Math.Min(2 * beta * eiNm2, perM * lengthM * lengthM * lengthM / 3);
    }
}
