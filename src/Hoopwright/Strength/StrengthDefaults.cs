using Hoopwright.Plans;

namespace Hoopwright.Strength;

/// <summary>What is taken for strength where the plan is silent.</summary>
internal static class StrengthDefaults
{
    /// <summary>Feet as stiff as post and soil are, where posts are driven; free to lean on boards.</summary>
    public static Usual<LegBase> LegBaseOf(AnchorKind anchor) => new(
        anchor switch { AnchorKind.Posts => LegBase.Spring, AnchorKind.Boards => LegBase.Pinned },
        "How a leg is held at the ground; spring: as stiffly as the post is in its soil.", Models.FootRange.SubgradeSource);
}
