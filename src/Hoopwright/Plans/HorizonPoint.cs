using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>How high the land stands over the level in one direction.</summary>
public sealed record HorizonPoint : PlanSection
{
    /// <summary>The direction: S, NW, or degrees clockwise from north.</summary>
    [Description("The direction: S, NW, or degrees clockwise from north.")]
    public Written<Angle>? Direction { get; init; }

    /// <summary>Angle of the skyline over the level there.</summary>
    [Description("Angle of the skyline over the level there.")]
    public Written<Angle>? Rises { get; init; }
}
