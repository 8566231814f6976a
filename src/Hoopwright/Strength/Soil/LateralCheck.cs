using System.Collections.Immutable;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Soil;

/// <summary>A post pushed sideways in its soil.</summary>
internal sealed record LateralCheck : ICheck
{
    private readonly PostInGround _post;
    private readonly double _forceN, _heightM, _lateralPaPerM;

    private LateralCheck(PostInGround post, double forceN, double heightM, double lateralPaPerM) =>
        (_post, _forceN, _heightM, _lateralPaPerM) = (post, forceN, heightM, lateralPaPerM);

    /// <inheritdoc/>
    public required double Utilisation { get; init; }

    /// <summary>What holds the post at the ground.</summary>
    internal required PostHold Hold { get; init; }

    /// <summary>True when the allowable pressure was doubled.</summary>
    internal required bool IsDoubled { get; init; }

    /// <summary>Embedment, from the ground.</summary>
    internal double EmbedmentM => _post.EmbedmentM;

    /// <summary>Depth counted, below the frost line.</summary>
    internal double CountedDepthM => _post.CountedDepthM;

    /// <summary>Embedment that the load needs, from the ground. Searched for when it is asked for: most checks are only compared with each other.</summary>
    internal double NeededEmbedmentM => NeededM() is > 0 and var neededM ? neededM + _post.FrostDepthM : 0;

    /// <summary>Load at its height that the embedment allows.</summary>
    internal required double AllowedForceN { get; init; }

    /// <summary>The allowable lateral pressure that was used: at a third of the counted depth, or at its foot for a held post.</summary>
    internal required double PressurePa { get; init; }

    /// <summary>Meets a post with the load on it.</summary>
    /// <param name="soil">Soil.</param>
    /// <param name="post">Post.</param>
    /// <param name="forceN">P, horizontal, under allowable-stress load combinations; 0 or more.</param>
    /// <param name="heightM">h, from the ground to the load; moment over force where the analysis gives both.</param>
    /// <param name="hold">What holds the post at the ground.</param>
    /// <param name="isDoubled">True only for isolated poles that may move 1/2 in at the ground under short-term load.</param>
    internal static LateralCheck Of(SoilValues soil, PostInGround post, double forceN, double heightM, PostHold hold, bool isDoubled)
    {
        double lateralPaPerM = soil.LateralPaPerM * (isDoubled ? 2 : 1);
        double depthM = post.CountedDepthM;
        (double allowedN, double pressurePa) = hold switch
        {
            PostHold.Free => (
                LateralPost.FreeLoadN(depthM, heightM + post.FrostDepthM, post.WidthM, lateralPaPerM),
                LateralPost.PressurePa(lateralPaPerM, Math.Min(depthM, LateralPost.DeepestPressureM) / 3)),
            PostHold.RigidFloor => (
                heightM > 0 ? LateralPost.HeldMomentNm(depthM, post.WidthM, lateralPaPerM) / heightM : double.PositiveInfinity,
                LateralPost.PressurePa(lateralPaPerM, depthM)),
        };
        return new LateralCheck(post, forceN, heightM, lateralPaPerM)
        {
            Utilisation = forceN <= 0 ? 0 : forceN / allowedN,
            Hold = hold,
            IsDoubled = isDoubled,
            AllowedForceN = allowedN,
            PressurePa = pressurePa,
        };
    }

    private double NeededM() => Hold switch
    {
        PostHold.Free => LateralPost.FreeDepthM(_forceN, _heightM + _post.FrostDepthM, _post.WidthM, _lateralPaPerM),
        PostHold.RigidFloor => LateralPost.HeldDepthM(_forceN * _heightM, _post.WidthM, _lateralPaPerM),
    };

    /// <inheritdoc/>
    public string Governs => Hold switch
    {
        PostHold.Free => "soil beside the post",
        PostHold.RigidFloor => "soil beside the post, held at the floor",
    };

    /// <inheritdoc/>
    public ImmutableArray<WorkedValue> Worked =>
    [
        new("d", CountedDepthM, "m", "depth counted, below the frost line"),
        new("S", PressurePa, "Pa", IsDoubled ? "allowable lateral pressure, doubled" : "allowable lateral pressure"),
        new("P", AllowedForceN, "N", "load that the depth allows"),
        new("d needed", NeededEmbedmentM, "m", "embedment that the load needs"),
    ];

    /// <inheritdoc/>
    public ImmutableArray<Formula> Formulas
    {
        get
        {
            var formulas = ImmutableArray.CreateBuilder<Formula>();
            formulas.AddRange(Hold switch
            {
                PostHold.Free => [LateralPost.FreeDepth, LateralPost.FreeLoad],
                PostHold.RigidFloor => (Formula[])[LateralPost.HeldDepth, LateralPost.HeldMoment],
            });
            if (IsDoubled) formulas.Add(LateralPost.Doubled);
            if (CountedDepthM < EmbedmentM) formulas.Add(LateralPost.FrostLeftOut);
            return formulas.ToImmutable();
        }
    }
}
