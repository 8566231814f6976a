using Hoopwright.Layout;
using Hoopwright.Sources;
using Hoopwright.Strength.Soil;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Posts;

/// <summary>A ground post under what the foot of its bow puts on it.</summary>
/// <param name="PostId">The member.</param>
/// <param name="Uplift">Against being pulled out.</param>
/// <param name="Lateral">Against being pushed over; null where nothing is presumed of the soil.</param>
internal sealed record GroundPostCheck(string PostId, UpliftCheck Uplift, LateralCheck? Lateral)
{
    /// <summary>Plain concrete, 145 lb/ft³.</summary>
    internal const double ConcreteNPerM3 = 145 * PcfNPerM3;

    /// <summary>Where that stands.</summary>
    internal static readonly Citation ConcreteSource = Register.SoilMechanics.At("plain concrete, 145 lb/ft³");

    /// <summary>The highest a load is taken over the ground: a moment with next to no force is a force so far up.</summary>
    private const double HighestM = 100;

    /// <summary>The greater use of the two.</summary>
    internal double Utilisation => Math.Max(Uplift.Utilisation, Lateral?.Utilisation ?? double.PositiveInfinity);

    /// <summary>Meets a post with the load on it, under allowable-stress combinations.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="post">The post.</param>
    /// <param name="ground">The ground.</param>
    /// <param name="pullN">Pull upwards on the post; pushes downwards are negative and hold it down.</param>
    /// <param name="acrossN">Force across at the ground, either way.</param>
    /// <param name="turningNm">Moment at the ground, either way.</param>
    internal static GroundPostCheck Of(Tunnel tunnel, GroundPost post, GroundAt ground, double pullN, double acrossN, double turningNm)
    {
        Member member = tunnel.Members.First(each => each.Id == post.MemberId);
        SoilValues? soil = ground.Values;
        return new GroundPostCheck(
            post.MemberId,
            Pulled(tunnel, member, post.Embedment, ground, pullN),
            soil is null ? null : Sideways(soil, InGround(tunnel, member, post.Embedment, ground), ground.IsDoubled, Math.Abs(acrossN), Math.Abs(turningNm)));
    }

    /// <summary>A post pulled upwards.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="post">Its member.</param>
    /// <param name="embedment">How deep it stands.</param>
    /// <param name="ground">The ground.</param>
    /// <param name="pullN">The pull; 0 or less where it is pressed down.</param>
    internal static UpliftCheck Pulled(Tunnel tunnel, Member post, Quantities.Length embedment, GroundAt ground, double pullN)
    {
        PostOutline outline = PostOutline.Of(post.Section);
        Anchorage anchorage = tunnel.Holes.FirstOrDefault(each => each.PostId == post.Id) is not { } hole
            ? new DrivenPost(outline.RubbingM, embedment.Metres)
            : new ConcretePlug(hole.Diameter.Metres, hole.Depth.Metres, hole.Volume.CubicMetres * ConcreteNPerM3);
        return UpliftCheck.Of(ground.Values, anchorage with { PostWeightN = outline.WeightNPerM * post.CutLength.Metres, FrostDepthM = ground.FrostDepthM }, pullN);
    }

    /// <summary>How a post stands in the ground: as its concrete does where it has some.</summary>
    internal static PostInGround InGround(Tunnel tunnel, Member post, Quantities.Length embedment, GroundAt ground) =>
        tunnel.Holes.FirstOrDefault(each => each.PostId == post.Id) is { } hole
            ? new PostInGround(hole.Depth.Metres, hole.Diameter.Metres, ground.FrostDepthM)
            : new PostInGround(embedment.Metres, PostOutline.Of(post.Section).WidthM, ground.FrostDepthM);

    /// <summary>A post pushed by a force and a moment at the ground, whichever way they go.</summary>
    internal static LateralCheck Sideways(SoilValues soil, PostInGround post, bool isDoubled, double forceN, double momentNm)
    {
        double pushN = Math.Max(forceN, momentNm / HighestM);
        return LateralCheck.Of(soil, post, pushN, pushN > 0 ? momentNm / pushN : 0, PostHold.Free, isDoubled);
    }
}
