using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;

namespace Hoopwright.Strength.Loads;

/// <summary>Which doors and sides stand open.</summary>
/// <param name="Code">Its part of the name of a case.</param>
/// <param name="Words">In words.</param>
/// <param name="Twin">Code of the state seen from behind.</param>
/// <param name="FrontDoors">True when the front doors are open.</param>
/// <param name="BackDoors">True when the back doors are open.</param>
/// <param name="LeftUp">True when the left side is open.</param>
/// <param name="RightUp">True when the right side is open.</param>
internal sealed record OpenState(string Code, string Words, string Twin, bool FrontDoors, bool BackDoors, bool LeftUp, bool RightUp)
{
    public bool IsShut => !FrontDoors && !BackDoors && !LeftUp && !RightUp;

    /// <summary>The states that the doors and sides of a tunnel make possible, shut first.</summary>
    public static ImmutableArray<OpenState> Of(Tunnel tunnel)
    {
        bool front = DoorsM2(tunnel.Front) > 0, back = DoorsM2(tunnel.Back) > 0;
        bool left = tunnel.Left.Kind != SideKind.Fixed, right = tunnel.Right.Kind != SideKind.Fixed;
        var states = ImmutableArray.CreateBuilder<OpenState>();
        states.Add(new("shut", "shut", "shut", false, false, false, false));
        if (front) states.Add(new("front-open", "front doors open", "front-open", true, false, false, false));
        if (back) states.Add(new("back-open", "back doors open", "back-open", false, true, false, false));
        if (front && back) states.Add(new("doors-open", "all doors open", "doors-open", true, true, false, false));
        if (left) states.Add(new("left-up", "left side open", "right-up", false, false, true, false));
        if (right) states.Add(new("right-up", "right side open", "left-up", false, false, false, true));
        if (left && right) states.Add(new("sides-up", "both sides open", "sides-up", false, false, true, true));
        return states.ToImmutable();
    }

    /// <summary>The class of enclosure for wind on one wall.</summary>
    public EnclosureClass Class(Tunnel tunnel, WindFrom from)
    {
        var walls = Walls(tunnel);
        double roofM2 = tunnel.Bow.FilmLine.Length.Metres * tunnel.Length.Metres;
        return Enclosure.Of(walls[from], [.. walls.Where(wall => wall.Key != from).Select(wall => wall.Value)],
            Math.Max(0, roofM2 - walls[WindFrom.Left].GrossM2 - walls[WindFrom.Right].GrossM2));
    }

    /// <summary>
    /// The wall that is open at least <see cref="EnWind.LeastDominant"/> times as far as all others together, with how many times; null where
    /// none is, or nothing is open.
    /// </summary>
    public (WindFrom Face, double TimesOthers)? Dominant(Tunnel tunnel)
    {
        var walls = Walls(tunnel);
        (WindFrom face, WallOpening most) = walls.MaxBy(wall => wall.Value.OpenM2);
        double othersM2 = walls.Where(wall => wall.Key != face).Sum(wall => wall.Value.OpenM2);
        return most.OpenM2 > 0 && most.OpenM2 >= EnWind.LeastDominant * othersM2 ? (face, most.OpenM2 / othersM2) : null;
    }

    // Each wall by the wind that meets it.
    private ImmutableSortedDictionary<WindFrom, WallOpening> Walls(Tunnel tunnel)
    {
        double endM2 = tunnel.Bow.FilmLine.AreaAbove(Quantities.Length.Zero).SquareMetres;
        return ImmutableSortedDictionary.CreateRange(new KeyValuePair<WindFrom, WallOpening>[]
        {
            new(WindFrom.Left, Side(tunnel.Left, LeftUp)), new(WindFrom.Right, Side(tunnel.Right, RightUp)),
            new(WindFrom.Front, End(tunnel.Front, FrontDoors)), new(WindFrom.Back, End(tunnel.Back, BackDoors)),
        });

        WallOpening End(EndWall end, bool open) =>
            end.Closing == EndClosing.Open ? new(endM2, endM2) : new(open ? DoorsM2(end) : 0, endM2);

        // A fixed side has no opening; its lowest tenth stands for the wall, of which nothing is open.
        WallOpening Side(SideWall side, bool open)
        {
            double lengthM = tunnel.Length.Metres, highM = Math.Max(side.ArcToHip.Metres, Math.Max(tunnel.Bow.SideHeight.Metres, 0.1 * tunnel.Bow.FilmLine.Length.Metres));
            double openM = side.ArcToHip.Metres - (side.HipBoardDepth.Metres / 2) - side.BaseboardHeight.Metres;
            return new(open ? Math.Max(0, openM) * lengthM : 0, highM * lengthM);
        }
    }

    private static double DoorsM2(EndWall end) => end.Doors.Sum(door => door.ClearWidth.Metres * (door.ClearHeight + door.VentHeight).Metres);
}

/// <summary>Where the wind comes from.</summary>
internal enum WindFrom
{
    /// <summary>From the left.</summary>
    Left,

    /// <summary>From the right.</summary>
    Right,

    /// <summary>From the front, along the tunnel.</summary>
    Front,

    /// <summary>From the back, along the tunnel.</summary>
    Back,
}
