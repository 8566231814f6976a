using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>
/// The ground as an even slope. The datum is the highest of the four corners, so that no ground stands over it.
/// </summary>
internal sealed record GroundSurface
{
    private readonly double fallAcross;
    private readonly double fallAlong;
    private readonly double highestM;
    private readonly Length span;

    public GroundSurface(Ratio fallAcross, Ratio fallAlong, PostTopLine postTops, Length span, Length length)
    {
        this.fallAcross = fallAcross.Value;
        this.fallAlong = fallAlong.Value;
        this.span = span;
        PostTops = postTops;
        highestM = Math.Max(0, -this.fallAcross * span.Metres) + Math.Max(0, -this.fallAlong * length.Metres);
    }

    public PostTopLine PostTops { get; }

    /// <summary>Height of the ground over the datum; never above 0.</summary>
    public Length At(Length across, Length along) =>
        Length.FromMetres(-(fallAcross * across.Metres) - (fallAlong * along.Metres) - highestM);

    /// <summary>Height of a bow's ground line over the datum: level from side to side, at the higher side.</summary>
    public Length BaseAt(Length along) => PostTops switch
    {
        PostTopLine.Level => Length.Zero,
        PostTopLine.FollowGround => Length.Max(At(Length.Zero, along), At(span, along)),
    };
}
