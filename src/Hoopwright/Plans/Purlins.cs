using System.ComponentModel;

namespace Hoopwright.Plans;

/// <summary>Lengthwise tubes.</summary>
public sealed record Purlins : PlanSection
{
    /// <summary>How many in all, the ridge purlin included; odd.</summary>
    [Description("How many in all, the ridge purlin included; odd.")]
    public int? Count { get; init; }

    /// <summary>Their tube.</summary>
    [Description("Their tube.")]
    public Tube Tube { get; init; } = new();
}
