namespace Hoopwright.Strength.Soil;

/// <summary>How a post is held against being pulled out.</summary>
internal abstract record Anchorage
{
    /// <summary>Weight of the post, what it carries of the frame not counted.</summary>
    internal double PostWeightN { get; init; }

    /// <summary>How deep the ground freezes: soil above is not counted, and may lift the post.</summary>
    internal double FrostDepthM { get; init; }

    /// <summary>One answer for each way of anchoring.</summary>
    internal abstract T Match<T>(Func<DrivenPost, T> driven, Func<ConcretePlug, T> plug, Func<BuriedCollar, T> collar);
}

/// <summary>A bare post, driven or backfilled with the soil.</summary>
/// <param name="DiameterM">Diameter of the post.</param>
/// <param name="EmbedmentM">Depth of its foot.</param>
internal sealed record DrivenPost(double DiameterM, double EmbedmentM) : Anchorage
{
    /// <inheritdoc/>
    internal override T Match<T>(Func<DrivenPost, T> driven, Func<ConcretePlug, T> plug, Func<BuriedCollar, T> collar) => driven(this);
}

/// <summary>Concrete that fills a hole from its foot up to the ground.</summary>
/// <param name="DiameterM">Diameter of the hole.</param>
/// <param name="DepthM">Depth of the hole.</param>
/// <param name="ConcreteWeightN">Weight of the concrete.</param>
internal sealed record ConcretePlug(double DiameterM, double DepthM, double ConcreteWeightN) : Anchorage
{
    /// <inheritdoc/>
    internal override T Match<T>(Func<DrivenPost, T> driven, Func<ConcretePlug, T> plug, Func<BuriedCollar, T> collar) => plug(this);
}

/// <summary>A concrete collar at the foot, with soil put back above it.</summary>
/// <param name="DiameterM">Diameter of the collar.</param>
/// <param name="CoverM">Depth of soil above the collar.</param>
/// <param name="ConcreteWeightN">Weight of the concrete.</param>
internal sealed record BuriedCollar(double DiameterM, double CoverM, double ConcreteWeightN) : Anchorage
{
    /// <inheritdoc/>
    internal override T Match<T>(Func<DrivenPost, T> driven, Func<ConcretePlug, T> plug, Func<BuriedCollar, T> collar) => collar(this);
}
