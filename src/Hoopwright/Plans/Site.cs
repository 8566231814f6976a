using System.Collections.Immutable;
using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>Where the tunnel stands.</summary>
public sealed record Site : PlanSection
{
    /// <summary>The place in words.</summary>
    [Description("The place in words.")]
    public string? Place { get; init; }

    /// <summary>The compass direction one looks when walking out by the front end: S, NW, or degrees clockwise from north.</summary>
    [Description("The compass direction one looks when walking out by the front end: S, NW, or degrees clockwise from north.")]
    public Written<Angle>? FrontFaces { get; init; }

    /// <summary>How much the ground falls from the front end to the back end, for instance 1 %. Negative when it rises.</summary>
    [Description("How much the ground falls from the front end to the back end, for instance 1 %. Negative when it rises.")]
    public Written<Ratio>? FallAlong { get; init; }

    /// <summary>How much the ground falls from the left side to the right side. Negative when it rises.</summary>
    [Description("How much the ground falls from the left side to the right side. Negative when it rises.")]
    public Written<Ratio>? FallAcross { get; init; }

    /// <summary>Whether post tops stand to one level line or follow the fall of the ground along the length.</summary>
    [Description("Whether post tops stand to one level line or follow the fall of the ground along the length.")]
    public PostTopLine? PostTops { get; init; }

    /// <summary>Clear room in front of the front end for strings and batter boards.</summary>
    [Description("Clear room in front of the front end for strings and batter boards.")]
    public Written<Length>? RoomFront { get; init; }

    /// <summary>Clear room behind the back end.</summary>
    [Description("Clear room behind the back end.")]
    public Written<Length>? RoomBack { get; init; }

    /// <summary>Clear room beside the left side.</summary>
    [Description("Clear room beside the left side.")]
    public Written<Length>? RoomLeft { get; init; }

    /// <summary>Clear room beside the right side.</summary>
    [Description("Clear room beside the right side.")]
    public Written<Length>? RoomRight { get; init; }

    /// <summary>Ground snow load from the official map or the building office.</summary>
    [Description("Ground snow load from the official map or the building office.")]
    public Written<Pressure>? GroundSnow { get; init; }

    /// <summary>Design wind speed from the official map or the building office: a 3-second gust for ASCE 7, a 10-minute mean for EN 1991.</summary>
    [Description("Design wind speed from the official map or the building office: a 3-second gust for ASCE 7, a 10-minute mean for EN 1991.")]
    public Written<Speed>? Wind { get; init; }

    /// <summary>Depth to which the ground freezes, from the building office.</summary>
    [Description("Depth to which the ground freezes, from the building office.")]
    public Written<Length>? FrostDepth { get; init; }

    /// <summary>The soil in words: sand, loam, clay, gravel.</summary>
    [Description("The soil in words: sand, loam, clay, gravel.")]
    public string? Soil { get; init; }

    /// <summary>Class of the soil by the table of the building code; mud, peat and loose fill are soft.</summary>
    [Description("Class of the soil by the table of the building code; mud, peat and loose fill are soft.")]
    public SoilClass? SoilClass { get; init; }

    /// <summary>Height of the place above the sea.</summary>
    [Description("Height of the place above the sea.")]
    public Written<Length>? Elevation { get; init; }

    /// <summary>How far north of the equator the place is, such as 42.9°; negative south of it.</summary>
    [Description("How far north of the equator the place is, such as 42.9°; negative south of it.")]
    public Written<Angle>? Latitude { get; init; }

    /// <summary>How far east of Greenwich the place is; negative west of it, such as -78.7° in North America.</summary>
    [Description("How far east of Greenwich the place is; negative west of it, such as -78.7° in North America.")]
    public Written<Angle>? Longitude { get; init; }

    /// <summary>Clear distance from the left foot to the next tunnel on the left; leave out when none is near.</summary>
    [Description("Clear distance from the left foot to the next tunnel on the left; leave out when none is near.")]
    public Written<Length>? NeighbourLeft { get; init; }

    /// <summary>Clear distance from the right foot to the next tunnel on the right; leave out when none is near.</summary>
    [Description("Clear distance from the right foot to the next tunnel on the right; leave out when none is near.")]
    public Written<Length>? NeighbourRight { get; init; }

    /// <summary>Trees, hedges and buildings that shade the tunnel.</summary>
    [Description("Trees, hedges and buildings that shade the tunnel.")]
    public ImmutableArray<Obstacle> Obstacles { get; init; } = [];

    /// <summary>How high hills stand over the level, direction by direction; between two of them the skyline runs straight.</summary>
    [Description("How high hills stand over the level, direction by direction; between two of them the skyline runs straight.")]
    public ImmutableArray<HorizonPoint> Horizon { get; init; } = [];

    /// <summary>True when the land is farmed to organic rules, which bar some treated lumber.</summary>
    [Description("True when the land is farmed to organic rules, which bar some treated lumber.")]
    public bool? Organic { get; init; }
}
