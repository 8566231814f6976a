using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A straight crosswise tie.</summary>
public sealed record Tie : PlanSection
{
    /// <summary>Height of the tie above the ground line.</summary>
    [Description("Height of the tie above the ground line.")]
    public Written<Length>? Height { get; init; }

    /// <summary>A tie on every so many bows; 1 is every bow. End bows have none.</summary>
    [Description("A tie on every so many bows; 1 is every bow. End bows have none.")]
    public int? Every { get; init; }

    /// <summary>Its tube.</summary>
    [Description("Its tube.")]
    public Tube Tube { get; init; } = new();
}
