using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;

namespace Hoopwright.AsBuilt;

/// <summary>How to put right what is out of tolerance. Common practice, no source.</summary>
internal sealed class Remedies(SiteMeasurements measurements, Squaring? squaring)
{
    private readonly UnitSystem units = measurements.Planned.Units;

    public Deviation Of(Measurement measurement) =>
        measurement is { IsOut: true, Off: { } off } ? new(measurement, PutRight(measurement.Of, off), Phrase.Of(OrElse(measurement.Of.Kind))) : new(measurement, [], null);

    private ImmutableArray<Phrase> PutRight(Measurable of, Length off)
    {
        bool over = off > Length.Zero;
        return of.Kind switch
        {
            MeasurableKind.BowSpan => Say(over ? "Move the right post {0} to the left; the left one stands on its string." : "Move the right post {0} to the right; the left one stands on its string."),
            MeasurableKind.BowMark => Say(over ? "Move both of its posts {0} towards the front end." : "Move both of its posts {0} towards the back end."),
            MeasurableKind.BowLength => Say(over
                ? "Nothing to move: the bow is {0} longer than planned. Measure it again, and the bows beside it."
                : "Nothing to move: the bow is {0} shorter than planned. Measure it again, and the bows beside it."),
            MeasurableKind.BowHeight => Say(over
                ? "It stands {0} high: look whether both of its legs sit fully home in their posts."
                : "It stands {0} low: look whether both of its legs sit only as deep as planned in their posts."),
            MeasurableKind.SquareSide => Say((of.About is "left" or "right", over) switch
            {
                (true, true) => "Move the string of one end by {0} inwards along the side, and measure the diagonals again.",
                (true, false) => "Move the string of one end by {0} outwards along the side, and measure the diagonals again.",
                (false, true) => "Move the string of one side by {0} inwards, and measure the diagonals again.",
                (false, false) => "Move the string of one side by {0} outwards, and measure the diagonals again.",
            }),
            MeasurableKind.Diagonal => Square(),
            MeasurableKind.PostDepth => Say(over ? "Nothing to move: it stands {0} deeper; see that its top still takes what it carries." : "It stands {0} short of its depth: drive or set it deeper before anything is fastened to it."),
            MeasurableKind.PostHeight => Say(over ? "Nothing to move: cut this post {0} longer than the plan says." : "Nothing to move: cut this post {0} shorter than the plan says."),
            MeasurableKind.Place => Say(over ? "Move it {0} to the left." : "Move it {0} to the right."),
            MeasurableKind.DoorWidth => Say(over ? "The opening is {0} too wide: fur a jamb out by as much." : "The opening is {0} too narrow: move a post or thin a jamb by as much."),
            MeasurableKind.DoorHeight => Say(over ? "Move the header {0} down." : "Move the header {0} up."),
            MeasurableKind.HoleDepth => Say(over ? "The hole is {0} deeper: fill and tamp it, or order the concrete for it." : "Dig {0} deeper before the post is set."),
            MeasurableKind.HoleDiameter => Say(over ? "The hole is {0} wider: order the concrete for it." : "Widen the hole by {0}."),
            MeasurableKind.HipHeight => Say(over ? "Move the board {0} down." : "Move the board {0} up."),
        };

        ImmutableArray<Phrase> Say(string pattern) => [Phrase.Of(pattern, TapeText.Of(off.Abs(), units))];
    }

    private ImmutableArray<Phrase> Square()
    {
        if (squaring is null) return [Phrase.Of("Measure all four sides and both diagonals; then it can be said which corner to move which way.")];
        Length still = measurements.Tolerances.Frame / 2;
        Phrase[] moves = [.. squaring.Corners.Where(corner => corner.Move > still).Select(Move)];
        return moves.Length == 0 ? [Phrase.Of("Measure again: sides and diagonals do not go together.")] : [Phrase.Of($"Hold the {squaring.Held} string."), .. moves];
    }

    /// <summary>"Move front right 1/2" to the left and 3/4" to the back."</summary>
    internal Phrase Move(SquareCorner corner)
    {
        string across = corner.MoveRight > Length.Zero ? "{1} to the right" : "{1} to the left";
        string along = corner.MoveBack > Length.Zero ? "to the back" : "to the front";
        string right = TapeText.Of(corner.MoveRight.Abs(), units), back = TapeText.Of(corner.MoveBack.Abs(), units);
        return (IsSome(corner.MoveRight), IsSome(corner.MoveBack)) switch
        {
            (true, true) => Phrase.Of($"Move {{0}} {across} and {{2}} {along}.", corner.Name, right, back),
            (true, false) => Phrase.Of($"Move {{0}} {across}.", corner.Name, right),
            (false, true) => Phrase.Of($"Move {{0}} {{1}} {along}.", corner.Name, back),
            (false, false) => Phrase.Of("Leave {0} where it stands.", corner.Name),
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
