using System.ComponentModel;

namespace Hoopwright.Plans;

/// <summary>A tool of which there are only so many.</summary>
public sealed record BuildTool : PlanSection
{
    /// <summary>The tool, as the steps name it, such as cordless drill.</summary>
    [Description("The tool, as the steps name it, such as cordless drill.")]
    public string? Name { get; init; }

    /// <summary>How many there are.</summary>
    [Description("How many there are.")]
    public int? Count { get; init; }
}
