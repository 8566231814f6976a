using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cutting;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Cuts;

/// <summary>Deals the pieces out to the bars of a cutting plan and numbers them.</summary>
internal static class BarDealer
{
    /// <summary>
    /// The bars in the order they are cut. Pieces that are given the same room are dealt longest first, and those of one length in the order of
    /// the takeoff. Bars whose pieces differ by a mark of the tape are cut in different ways.
    /// </summary>
    public static ImmutableArray<CutBar> Bars(
        string letter, CutChoice choice, ImmutableArray<StockOffer> offers, SawRules saw,
        ImmutableArray<CutNeed> single, ImmutableArray<CutNeed> runs, ImmutableArray<JointLayout> layouts)
    {
        var bars = ImmutableArray.CreateBuilder<CutBar>(choice.Plan.Bars);
        int number = 0, pattern = 0;
        foreach (var alike in Dealt(choice, offers, saw, Slots(single, runs, layouts)).GroupBy(bar => (bar.Offer, string.Join(' ', bar.Slots.Select(slot => JointLayout.GrainsOf(slot.Length))))))
        {
            pattern++;
            foreach ((StockOffer offer, ImmutableArray<Slot> slots) in alike)
            {
                ImmutableArray<CutBarPiece> pieces =
                [
                    .. slots.Select(slot => new CutBarPiece
                    {
                        Number = FormattableString.Invariant($"{letter}{++number}"),
                        MemberId = slot.Piece.MemberId,
                        Label = slot.Parts == 1 ? slot.Piece.Label : FormattableString.Invariant($"{slot.Piece.Label}, {slot.Part} of {slot.Parts}"),
                        Place = slot.Piece.Place,
                        Length = slot.Length,
                        From = Length.Zero,
                        Part = slot.Part,
                        Parts = slot.Parts,
                    }),
                ];
                bars.Add(Bar(bars.Count + 1, pattern, offer.Length, offer.OnHand, pieces, saw));
            }
        }
        return bars.ToImmutable();
    }

    /// <summary>A stock piece and the marks on it.</summary>
    /// <param name="number">Its number on the sheet.</param>
    /// <param name="pattern">The pattern it is cut by.</param>
    /// <param name="stock">Its length.</param>
    /// <param name="onHand">True when it lies in the barn.</param>
    /// <param name="pieces">Its pieces in cutting order, at least one; where they start is not looked at.</param>
    /// <param name="saw">The rules of the saw.</param>
    public static CutBar Bar(int number, int pattern, Length stock, bool onHand, ImmutableArray<CutBarPiece> pieces, SawRules saw)
    {
        Length from = saw.Trim;
        var marked = ImmutableArray.CreateBuilder<CutBarPiece>(pieces.Length);
        foreach (CutBarPiece piece in pieces)
        {
            marked.Add(piece with { From = from });
            from += piece.Length + saw.Kerf;
        }
        // The last piece may end with the bar, or so near to it that the saw takes the rest.
        Length ends = marked[^1].To, last = Length.Min(saw.Kerf, stock - ends), leftover = stock - ends - last;
        return new CutBar
        {
            Number = number,
            Pattern = pattern,
            Stock = stock,
            OnHand = onHand,
            Trim = saw.Trim,
            Pieces = marked.MoveToImmutable(),
            KerfLost = (saw.Kerf * (pieces.Length - 1)) + last,
            Leftover = leftover,
            LeftoverUseful = leftover > Length.Zero && leftover >= saw.UsefulLeftover,
        };
    }

    /// <summary>The different ways of cutting, in the order of the bars.</summary>
    public static ImmutableArray<CutSheetPattern> Patterns(ImmutableArray<CutBar> bars) =>
    [
        .. bars.GroupBy(bar => bar.Pattern).Select(group => new CutSheetPattern(group.Key, [.. group])),
    ];

    /// <summary>Lengths that are equal on the tape together, longest first.</summary>
    public static ImmutableArray<SawStop> Stops(ImmutableArray<CutBar> bars, UnitSystem units) =>
    [
        .. bars.SelectMany(bar => bar.Pieces).GroupBy(piece => JointLayout.GrainsOf(TapeText.RoundForMember(piece.Length, units))).OrderByDescending(group => group.Key)
            .Select(group => new SawStop(group.First().Length, [.. group.Select(piece => piece.Number)])),
    ];

    private static IEnumerable<Slot> Slots(ImmutableArray<CutNeed> single, ImmutableArray<CutNeed> runs, ImmutableArray<JointLayout> layouts)
    {
        foreach (CutNeed need in single) yield return new Slot(need.Piece, need.Piece.Exact, need.Piece.Length, 1, 1);
        foreach ((CutNeed run, JointLayout layout) in runs.Zip(layouts))
        {
            // Joints stand where they are whichever tape is used; what the tape makes of the run is in its last piece.
            int last = layout.Pieces.Length - 1;
            for (int part = 0; part <= last; part++)
                yield return new Slot(run.Piece, layout.Pieces[part], layout.Pieces[part] + (part == last ? run.Piece.Length - run.Piece.Exact : Length.Zero), part + 1, last + 1);
        }
    }

    private static IEnumerable<(StockOffer Offer, ImmutableArray<Slot> Slots)> Dealt(CutChoice choice, ImmutableArray<StockOffer> offers, SawRules saw, IEnumerable<Slot> slots)
    {
        Dictionary<long, Queue<Slot>> waiting = slots.GroupBy(slot => JointLayout.GrainsOf(choice.Rooms.Of(slot.Exact)))
            .ToDictionary(group => group.Key, group => new Queue<Slot>(group.OrderByDescending(slot => JointLayout.GrainsOf(slot.Length))));
        foreach (CutPattern cut in choice.Plan.Patterns)
        {
            StockOffer offer = offers[int.Parse(cut.StockId, CultureInfo.InvariantCulture)];
            for (int time = 0; time < cut.Times; time++)
            {
                Slot[] dealt = [.. cut.Pieces.Select(id => waiting[long.Parse(id, CultureInfo.InvariantCulture)].Dequeue())];
                // The exact pieces fit. Where marks of the tape would run over the end of the bar, its pieces are not rounded.
                double endsM = saw.Trim.Metres + dealt.Sum(slot => slot.Length.Metres) + (saw.Kerf.Metres * (dealt.Length - 1));
                if (endsM > offer.Length.Metres) dealt = [.. dealt.Select(slot => slot with { Length = slot.Exact })];
                yield return (offer, [.. dealt.OrderByDescending(slot => JointLayout.GrainsOf(slot.Length))]);
            }
        }
    }

    private sealed record Slot(PieceNeed Piece, Length Exact, Length Length, int Part, int Parts);
}
