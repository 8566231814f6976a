using System.ComponentModel;

namespace Hoopwright.Plans;

/// <summary>The two long sides.</summary>
public sealed record Sides : PlanSection
{
    /// <summary>The left side as seen entering by the front.</summary>
    [Description("The left side as seen entering by the front.")]
    public Side Left { get; init; } = new();

    /// <summary>The right side; leave out when it is like the left.</summary>
    [Description("The right side; leave out when it is like the left.")]
    public Side? Right { get; init; }
}
