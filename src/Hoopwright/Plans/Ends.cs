using System.ComponentModel;

namespace Hoopwright.Plans;

/// <summary>The two end walls.</summary>
public sealed record Ends : PlanSection
{
    /// <summary>The front end, by which one enters.</summary>
    [Description("The front end, by which one enters.")]
    public End Front { get; init; } = new();

    /// <summary>The back end; leave out when it is like the front.</summary>
    [Description("The back end; leave out when it is like the front.")]
    public End? Back { get; init; }
}
