using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>Something that already lies in the barn.</summary>
public sealed record StockOnHand : PlanSection
{
    /// <summary>The item's name in the takeoff.</summary>
    [Description("The item's name in the takeoff.")]
    public string? Item { get; init; }

    /// <summary>Its size as the takeoff writes it.</summary>
    [Description("Its size as the takeoff writes it.")]
    public string? Size { get; init; }

    /// <summary>Length of each piece, for boards, tubes, channel and film.</summary>
    [Description("Length of each piece, for boards, tubes, channel and film.")]
    public Written<Length>? Length { get; init; }

    /// <summary>Width, for film.</summary>
    [Description("Width, for film.")]
    public Written<Length>? Width { get; init; }

    /// <summary>How many.</summary>
    [Description("How many.")]
    public int? Count { get; init; }
}
