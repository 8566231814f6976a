using Hoopwright.Quantities;

namespace Hoopwright.AsBuilt;

/// <summary>How to put right what is out of tolerance. Common practice, no source.</summary>
internal sealed class Remedies(SiteMeasurements measurements, Squaring? squaring)
{
    private readonly UnitSystem units = measurements.Planned.Units;

    public Deviation Of(Measurement measurement) =>
        measurement is { IsOut: true, Off: { } off } ? new(measurement, PutRight(measurement.Of, off), OrElse(measurement.Of.Kind)) : new(measurement, null, null);

    private string PutRight(Measurable of, Length off)
    {
        string by = TapeText.Of(off.Abs(), units);
        bool over = off > Length.Zero;
        return of.Kind switch
        {
            MeasurableKind.BowSpan => $"Move the right post {by} to the {(over ? "left" : "right")}; the left one stands on its string.",
            MeasurableKind.BowMark => $"Move both of its posts {by} towards the {(over ? "front" : "back")} end.",
            MeasurableKind.BowLength => FormattableString.Invariant($"Nothing to move: the bow is {by} {(over ? "longer" : "shorter")} than planned. Measure it again, and the bows beside it."),
            MeasurableKind.BowHeight => FormattableString.Invariant($"Look whether both legs of bow {of.Number} sit {(over ? "fully home in" : "as deep as planned in")} their posts: it stands {by} {(over ? "high" : "low")}."),
            MeasurableKind.SquareSide => $"Move the string of one end by {by} {(of.About is "left" or "right" ? (over ? "inwards along the side" : "outwards along the side") : (over ? "inwards across" : "outwards across"))}, and measure the diagonals again.",
            MeasurableKind.Diagonal => Square(),
            MeasurableKind.PostDepth => over ? $"Nothing to move: it stands {by} deeper; see that its top still takes what it carries." : $"It stands {by} short of its depth: drive or set it deeper before anything is fastened to it.",
            MeasurableKind.PostHeight => $"Nothing to move: cut this post {by} {(over ? "longer" : "shorter")} than the plan says.",
            MeasurableKind.Place => $"Move it {by} to the {(over ? "left" : "right")}.",
            MeasurableKind.DoorWidth => $"The opening is {by} too {(over ? "wide: fur a jamb out" : "narrow: move a post or thin a jamb")} by as much.",
            MeasurableKind.DoorHeight => $"Move the header {by} {(over ? "down" : "up")}.",
            MeasurableKind.HoleDepth => over ? $"The hole is {by} deeper: fill and tamp it, or order the concrete for it." : $"Dig {by} deeper before the post is set.",
            MeasurableKind.HoleDiameter => over ? $"The hole is {by} wider: order the concrete for it." : $"Widen the hole by {by}.",
            MeasurableKind.HipHeight => $"Move the board {by} {(over ? "down" : "up")}.",
        };
    }

    private string Square()
    {
        if (squaring is null) return "Measure all four sides and both diagonals; then it can be said which corner to move which way.";
        Length still = measurements.Tolerances.Frame / 2;
        string[] moves = [.. squaring.Corners.Where(corner => corner.Move > still).Select(corner => $"{corner.Name} {Way(corner)}")];
        return moves.Length == 0 ? "Measure again: sides and diagonals do not go together." : $"Hold the {squaring.Held} string and move {string.Join("; ", moves)}.";
    }

    /// <summary>"1/2" to the left and 3/4" to the back".</summary>
    internal string Way(SquareCorner corner)
    {
        string across = $"{TapeText.Of(corner.MoveRight.Abs(), units)} to the {(corner.MoveRight > Length.Zero ? "right" : "left")}";
        string along = $"{TapeText.Of(corner.MoveBack.Abs(), units)} to the {(corner.MoveBack > Length.Zero ? "back" : "front")}";
        return (IsSome(corner.MoveRight), IsSome(corner.MoveBack)) switch
        {
            (true, true) => $"{across} and {along}",
            (true, false) => across,
            (false, true) => along,
            (false, false) => "not at all",
        };

        bool IsSome(Length move) => TapeText.RoundToMark(move.Abs(), units) > Length.Zero;
    }

    private static string OrElse(MeasurableKind kind) => kind switch
    {
        MeasurableKind.BowSpan => "If it stays: the strength is worked out for the widest bow, and end posts, end film and end boards of an end bow follow it.",
        MeasurableKind.BowMark or MeasurableKind.SquareSide => "If it stays: bays, boards, purlins, channel and the length of the film follow it.",
        MeasurableKind.BowLength or MeasurableKind.BowHeight => "If it stays: film is cut for the longest bow, and posts and channel of an end for its own bow.",
        MeasurableKind.Diagonal => "If it stays: film is pulled askew and wrinkles; nothing is cut differently for it.",
        MeasurableKind.PostDepth => "If it stays: uplift and side pressure are checked at this depth, and a post still to be cut follows it.",
        MeasurableKind.PostHeight or MeasurableKind.Place => "If it stays: the post and the boards beside it follow it.",
        MeasurableKind.DoorWidth or MeasurableKind.DoorHeight => "If it stays: header, jambs, leaves and their film follow it.",
        MeasurableKind.HoleDepth or MeasurableKind.HoleDiameter => "If it stays: the concrete, and a post that cannot go as deep, follow it.",
        MeasurableKind.HipHeight => "If it stays: roof film, curtain and channel follow it.",
    };
}
