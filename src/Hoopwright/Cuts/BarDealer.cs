using System.Collections.Immutable;
using Hoopwright.Cutting;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Cuts;

/// <summary>Deals the pieces out to the bars of a cutting plan and numbers them.</summary>
internal static class BarDealer
{
    /// <summary>The bars in the order they are cut. Pieces of one length are dealt in the order of the takeoff.</summary>
    public static ImmutableArray<CutBar> Bars(
        string letter, CutPlan plan, ImmutableArray<StockOffer> offers, SawRules saw,
        ImmutableArray<CutNeed> single, ImmutableArray<CutNeed> runs, ImmutableArray<JointLayout> layouts)
    {
        Dictionary<long, Queue<Slot>> waiting = [];
        foreach (CutNeed need in single) Wait(new Slot(need.Piece, need.Piece.Length, 1, 1));
        foreach ((CutNeed run, JointLayout layout) in runs.Zip(layouts))
        {
            for (int part = 0; part < layout.Pieces.Length; part++) Wait(new Slot(run.Piece, layout.Pieces[part], part + 1, layout.Pieces.Length));
        }

        var bars = ImmutableArray.CreateBuilder<CutBar>(plan.Bars);
        int number = 0;
        for (int pattern = 0; pattern < plan.Patterns.Length; pattern++)
        {
            CutPattern cut = plan.Patterns[pattern];
            StockOffer offer = offers[int.Parse(cut.StockId, System.Globalization.CultureInfo.InvariantCulture)];
            for (int time = 0; time < cut.Times; time++)
            {
                Length from = saw.Trim;
                var pieces = ImmutableArray.CreateBuilder<CutBarPiece>(cut.Pieces.Length);
                foreach (string id in cut.Pieces)
                {
                    Slot slot = waiting[long.Parse(id, System.Globalization.CultureInfo.InvariantCulture)].Dequeue();
                    pieces.Add(new CutBarPiece
                    {
                        Number = FormattableString.Invariant($"{letter}{++number}"),
                        MemberId = slot.Piece.MemberId,
                        Label = slot.Parts == 1 ? slot.Piece.Label : FormattableString.Invariant($"{slot.Piece.Label} {slot.Part}/{slot.Parts}"),
                        Place = slot.Piece.Place,
                        Length = slot.Length,
                        From = from,
                        Part = slot.Part,
                        Parts = slot.Parts,
                    });
                    from += slot.Length + saw.Kerf;
                }
                bars.Add(new CutBar
                {
                    Number = bars.Count + 1,
                    Pattern = pattern + 1,
                    Stock = offer.Length,
                    OnHand = offer.OnHand,
                    Trim = saw.Trim,
                    Pieces = pieces.MoveToImmutable(),
                    KerfLost = cut.KerfLost,
                    Leftover = cut.Leftover,
                    LeftoverUseful = cut.Leftover > Length.Zero && cut.Leftover >= saw.UsefulLeftover,
                });
            }
        }
        return bars.ToImmutable();

        void Wait(Slot slot)
        {
            long grains = JointLayout.GrainsOf(slot.Length);
            if (!waiting.TryGetValue(grains, out Queue<Slot>? queue)) waiting.Add(grains, queue = new Queue<Slot>());
            queue.Enqueue(slot);
        }
    }

    /// <summary>The different ways of cutting, in the order of the bars.</summary>
    public static ImmutableArray<CutSheetPattern> Patterns(ImmutableArray<CutBar> bars) =>
    [
        .. bars.GroupBy(bar => bar.Pattern).Select(group => new CutSheetPattern(group.Key, [.. group])),
    ];

    /// <summary>Equal lengths together, longest first.</summary>
    public static ImmutableArray<SawStop> Stops(ImmutableArray<CutBar> bars) =>
    [
        .. bars.SelectMany(bar => bar.Pieces).GroupBy(piece => JointLayout.GrainsOf(piece.Length)).OrderByDescending(group => group.Key)
            .Select(group => new SawStop(group.First().Length, [.. group.Select(piece => piece.Number)])),
    ];

    private sealed record Slot(PieceNeed Piece, Length Length, int Part, int Parts);
}
