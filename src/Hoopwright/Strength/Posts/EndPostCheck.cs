using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Strength.Soil;
using Hoopwright.Strength.Wood;

namespace Hoopwright.Strength.Posts;

/// <summary>A wood post of an end wall with wind on its part of the wall.</summary>
/// <param name="PostId">The member.</param>
/// <param name="WidthM">Width of wall that it carries.</param>
/// <param name="HeightM">From the ground to the bow.</param>
/// <param name="TopN">Force that it puts on the end bow.</param>
/// <param name="FootN">Force that it puts on the ground.</param>
/// <param name="Wood">Against bending and shear; null where no values are held for the wood.</param>
/// <param name="Foot">Against being pushed through the soil; null where nothing is presumed of it.</param>
internal sealed record EndPostCheck(string PostId, double WidthM, double HeightM, double TopN, double FootN, WoodCheck? Wood, LateralCheck? Foot)
{
    /// <summary>Checks every post of an end. Doors count as shut: a jamb post carries half of its door.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="end">The end; one that is not framed has no posts.</param>
    /// <param name="pressurePa">Wind on the wall under allowable-stress combinations, either way.</param>
    /// <param name="wood">The wood; the end's posts are all of one size.</param>
    /// <param name="ground">The ground.</param>
    internal static ImmutableArray<EndPostCheck> Of(Tunnel tunnel, EndWall end, double pressurePa, EndPostWood wood, GroundAt ground)
    {
        var checks = ImmutableArray.CreateBuilder<EndPostCheck>(end.Posts.Length);
        for (int index = 0; index < end.Posts.Length; index++)
        {
            double leftM = index == 0 ? 0 : end.Posts[index - 1].Centre.Metres;
            double rightM = index == end.Posts.Length - 1 ? tunnel.Span.Metres : end.Posts[index + 1].Centre.Metres;
            checks.Add(Of(tunnel, end.Posts[index], (rightM - leftM) / 2, Math.Abs(pressurePa), wood, ground));
        }
        return checks.MoveToImmutable();
    }

    private static EndPostCheck Of(Tunnel tunnel, EndPost post, double widthM, double pressurePa, EndPostWood wood, GroundAt ground)
    {
        double heightM = Math.Max(0, post.TopPoint.Metres - post.Ground.Metres);
        // Held at the ground and at the bow, evenly pushed. Where the bow slopes away the wall beside the post is lower, so this is on the
        // strong side.
        double reactionN = pressurePa * widthM * heightM / 2;
        Member member = tunnel.Members.First(each => each.Id == post.MemberId);
        PostInGround inGround = GroundPostCheck.InGround(tunnel, member, post.Embedment, ground);
        // In the middle of its height, or below the ground where the soil turns its push back.
        double lateralPaPerM = (ground.Values?.LateralPaPerM ?? 0) * (ground.IsDoubled ? 2 : 1);
        double momentNm = Math.Max(reactionN * heightM / 4, BuriedMoment.GreatestNm(reactionN, 0, lateralPaPerM, inGround));
        WoodCheck? bent = member.Section.Match(_ => null, board => Bent(board, heightM, momentNm, reactionN, wood));
        LateralCheck? foot = ground.Values is { } soil ? GroundPostCheck.Sideways(soil, inGround, ground.IsDoubled, reactionN, momentNm: 0) : null;
        return new EndPostCheck(post.MemberId, widthM, heightM, reactionN, reactionN, bent, foot);
    }

    private static WoodCheck? Bent(BoardSection board, double heightM, double momentNm, double shearN, EndPostWood wood)
    {
        var section = new WoodSection(board.Thickness.Metres, board.Depth.Metres);
        if (WoodTable.Find(wood.Species, wood.Grade, section) is not { } values) return null;
        // It stands with its deeper side to the wind.
        return WoodCheck.Of(AdjustedWood.Of(values, section, wood.Conditions), new WoodMember(heightM, heightM, heightM, BeamLoad.Uniform), new WoodForces(0, momentNm, EdgewiseShearN: shearN));
    }
}
