using Hoopwright.Quantities;

namespace Hoopwright.Inside.Air;

/// <summary>A side, a door or a vent that opens, or an end that is never closed.</summary>
/// <param name="Name">"left side", "front-door-1", "front-door-1, vent".</param>
/// <param name="Facing">Where it faces, clockwise from north.</param>
/// <param name="Width">Width of the opening.</param>
/// <param name="Low">Lowest point when wide open, over the ground line.</param>
/// <param name="High">Highest point when wide open.</param>
/// <param name="OpensFromAbove">True for a curtain that is let down: half open, its upper half is free.</param>
/// <param name="NeverShut">True for an end without a wall.</param>
/// <param name="OpensByWidth">True for doors, which half open have half their width free.</param>
public sealed record AirOpening(string Name, Angle Facing, Length Width, Length Low, Length High, bool OpensFromAbove = false, bool NeverShut = false, bool OpensByWidth = false)
{
    /// <summary>Area free to the air.</summary>
    /// <param name="wide">How far it is open.</param>
    public Area Free(OpenWide wide) => Area.FromSquareMetres(Width.Metres * (High - Low).Metres * Share(wide));

    internal double Share(OpenWide wide) => NeverShut ? 1 : wide switch { OpenWide.Shut => 0, OpenWide.Half => 0.5, OpenWide.Full => 1 };

    /// <summary>Width and heights free to the air, m.</summary>
    internal (double WidthM, double LowM, double HighM) Gap(OpenWide wide)
    {
        double share = Share(wide), low = Low.Metres, high = High.Metres;
        if (OpensByWidth || share is 0 or 1) return (Width.Metres * (OpensByWidth ? share : Math.Ceiling(share)), low, high);
        return OpensFromAbove ? (Width.Metres, high - (share * (high - low)), high) : (Width.Metres, low, low + (share * (high - low)));
    }
}
