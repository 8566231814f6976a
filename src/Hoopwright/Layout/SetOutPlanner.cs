using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>Strings, marks, diagonals and batter boards.</summary>
internal static class SetOutPlanner
{
    public static SetOut SetOut(LayoutDraft draft, EndWall front, EndWall back)
    {
        Length across = draft.Span, along = draft.Length;
        return new SetOut
        {
            Across = across,
            Along = along,
            Diagonal = Hypotenuse(across, along),
            Triangle = Triangle(across, along, draft.Units),
            BatterBoards = BatterBoards(draft),
            SideMarks = [.. draft.Stations.Select(station => new RunningMark(FormattableString.Invariant($"bow {station.Number}"), station.Along))],
            FrontMarks = EndMarks(front),
            BackMarks = EndMarks(back),
            GroundFall = -Corners(draft).Min(corner => draft.Ground.At(corner.X, corner.Y)),
        };
    }

    /// <summary>The largest 3-4-5 triangle of whole feet or half metres that fits between the strings.</summary>
    /// <param name="across">String to string across.</param>
    /// <param name="along">String to string along.</param>
    /// <param name="units">Whether the legs are whole feet or half metres times 3, 4 and 5.</param>
    public static SquareTriangle Triangle(Length across, Length along, UnitSystem units)
    {
        Length step = units switch { UnitSystem.UsCustomary => Length.FromFeet(1), UnitSystem.Metric => Length.FromMetres(0.5) };
        double times = Math.Floor((Length.Min(across / 3, along / 4) / step) + Tolerances.WholeNumber);
        double otherTimes = Math.Floor((Length.Min(across / 4, along / 3) / step) + Tolerances.WholeNumber);
        if (times < 1 && otherTimes < 1) return new SquareTriangle(across, along, Hypotenuse(across, along));
        return times >= otherTimes
            ? new SquareTriangle(step * (3 * times), step * (4 * times), step * (5 * times))
            : new SquareTriangle(step * (4 * otherTimes), step * (3 * otherTimes), step * (5 * otherTimes));
    }

    private static Length Hypotenuse(Length across, Length along) =>
        Length.FromMetres(Math.Sqrt((across.Metres * across.Metres) + (along.Metres * along.Metres)));

    private static ImmutableArray<TunnelPoint> Corners(LayoutDraft draft) =>
    [
        new(Length.Zero, Length.Zero, Length.Zero), new(draft.Span, Length.Zero, Length.Zero),
        new(Length.Zero, draft.Length, Length.Zero), new(draft.Span, draft.Length, Length.Zero),
    ];

    private static ImmutableArray<RunningMark> EndMarks(EndWall end) =>
        [.. end.Posts.Select(post => new RunningMark(post.MemberId, post.Centre))];

    private static ImmutableArray<BatterBoard> BatterBoards(LayoutDraft draft)
    {
        Site site = draft.Plan.Site;
        Length usual = LayoutDefaults.BatterBoardOffset.ValueIn(draft.Units);
        Length half = LayoutDefaults.BatterBoardHalf.ValueIn(draft.Units);
        Length front = Room("front", "site.roomFront", site.RoomFront), back = Room("back", "site.roomBack", site.RoomBack);
        Length left = Room("left", "site.roomLeft", site.RoomLeft), right = Room("right", "site.roomRight", site.RoomRight);
        var boards = ImmutableArray.CreateBuilder<BatterBoard>(8);
        foreach (bool atLeft in (ReadOnlySpan<bool>)[true, false])
        {
            foreach (bool atFront in (ReadOnlySpan<bool>)[true, false])
            {
                string corner = $"{(atFront ? "front" : "back")}-{GroundPlanner.SideName(atLeft)}";
                Length x = atLeft ? Length.Zero : draft.Span, y = atFront ? Length.Zero : draft.Length;
                Length beyondY = atFront ? -front : draft.Length + back, beyondX = atLeft ? -left : draft.Span + right;
                boards.Add(new BatterBoard($"batter-{corner}-for-side-string", Point(x - half, beyondY), Point(x + half, beyondY), Point(x, beyondY)));
                boards.Add(new BatterBoard($"batter-{corner}-for-end-string", Point(beyondX, y - half), Point(beyondX, y + half), Point(beyondX, y)));
            }
        }
        return boards.MoveToImmutable();

        TunnelPoint Point(Length x, Length y) => new(x, y, draft.Ground.At(x, y));

        Length Room(string where, string path, Written<Length>? room)
        {
            if (room is not { } given || given.Value >= usual) return usual;
            if (given.Value < half)
            {
                draft.Warn("site.room-for-strings", path, $"There is little room {(where is "left" or "right" ? $"on the {where}" : $"at the {where}")} for batter boards; digging may disturb them.",
                    given.Text, $"{draft.Tape(half)} to {draft.Tape(half * 2)}");
            }
            return given.Value;
        }
    }
}
