using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>Diagonal corner braces.</summary>
public sealed record Braces : PlanSection
{
    /// <summary>How many corners are braced: 0, 2 or 4.</summary>
    [Description("How many corners are braced: 0, 2 or 4.")]
    public int? Corners { get; init; }

    /// <summary>How many bays a brace reaches over.</summary>
    [Description("How many bays a brace reaches over.")]
    public int? Bays { get; init; }

    /// <summary>Height on the end bow where the brace is fixed.</summary>
    [Description("Height on the end bow where the brace is fixed.")]
    public Written<Length>? TopHeight { get; init; }

    /// <summary>Their tube.</summary>
    [Description("Their tube.")]
    public Tube Tube { get; init; } = new();
}
