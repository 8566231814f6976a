using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>Saw and leftovers.</summary>
public sealed record CutRules : PlanSection
{
    /// <summary>Width of the saw cut.</summary>
    [Description("Width of the saw cut.")]
    public Written<Length>? Kerf { get; init; }

    /// <summary>Cut off the end of every stock piece before use.</summary>
    [Description("Cut off the end of every stock piece before use.")]
    public Written<Length>? EndTrim { get; init; }

    /// <summary>The shortest leftover worth keeping.</summary>
    [Description("The shortest leftover worth keeping.")]
    public Written<Length>? UsefulLeftover { get; init; }
}
