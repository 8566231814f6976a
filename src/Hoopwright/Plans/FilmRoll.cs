using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A roll of film.</summary>
public sealed record FilmRoll : PlanSection
{
    /// <summary>Unfolded width.</summary>
    [Description("Unfolded width.")]
    public Written<Length>? Width { get; init; }

    /// <summary>Length of the roll.</summary>
    [Description("Length of the roll.")]
    public Written<Length>? Length { get; init; }

    /// <summary>Price of the roll.</summary>
    [Description("Price of the roll.")]
    public Written<Money>? Price { get; init; }

    /// <summary>How many can be had; leave out for any number.</summary>
    [Description("How many can be had; leave out for any number.")]
    public int? Limit { get; init; }
}
