using System.Collections.Immutable;
using Hoopwright.Inside.Light;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Inside.Air;

/// <summary>Everything of a tunnel that lets air through.</summary>
internal static class Openings
{
    /// <summary>The openings: sides, then the front end, then the back end.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="heading">How it lies.</param>
    /// <param name="doorsToo">Whether doors stand open for air.</param>
    internal static ImmutableArray<AirOpening> Of(Tunnel tunnel, Heading heading, bool doorsToo)
    {
        var found = ImmutableArray.CreateBuilder<AirOpening>();
        foreach (SideWall side in tunnel.Sides)
        {
            if (side.Kind == SideKind.Fixed) continue;
            // Rolled up or let down, the curtain leaves free what is between the baseboard and the hip board.
            Length high = side.HipHeight - (side.HipBoardDepth / 2);
            if (high > side.BaseboardHeight)
                found.Add(new(side.Name + " side", Facing(side.IsLeft ? heading.LeftFacesDeg : heading.RightFacesDeg), tunnel.Length, side.BaseboardHeight, high, OpensFromAbove: side.Kind == SideKind.Drop));
        }
        foreach (EndWall end in tunnel.Ends)
        {
            Angle facing = Facing(end.IsFront ? heading.FrontFacesDeg : heading.FrontFacesDeg + 180);
            if (end.Closing == EndClosing.Open)
            {
                // As a rectangle of the span with the area of the end.
                double high = tunnel.Bow.FilmLine.AreaAbove(Length.Zero).SquareMetres / tunnel.Span.Metres;
                found.Add(new(end.Name + " end", facing, tunnel.Span, Length.Zero, Length.FromMetres(high), NeverShut: true));
                continue;
            }
            foreach (DoorOpening door in end.Doors)
            {
                if (doorsToo) found.Add(new(door.Id, facing, door.ClearWidth, Length.Zero, door.ClearHeight, OpensByWidth: true));
                if (door.VentHeight > Length.Zero) found.Add(new(door.Id + ", vent", facing, door.RoughWidth, door.HeaderTop, door.HeaderTop + door.VentHeight));
            }
        }
        return found.ToImmutable();
    }

    private static Angle Facing(double degrees) => Angle.FromDegrees(Sun.GeocentricSun.Wrapped(degrees));
}
