using System.Collections.Immutable;
using System.Runtime.InteropServices;
using System.Text;
using Hoopwright.Cutting;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Cuts;

/// <summary>Plans the cut list of one item and size.</summary>
internal sealed class SheetPlanner(
    ImmutableArray<MaterialLine> lines, StockOffers offers, SawRules saw, CutEffort effort,
    ImmutableArray<Diagnostic>.Builder found, TakeoffDraft joints, CutMemory? memory)
{
    private const double SameLengthM = 1e-7;

    public CutSheet Sheet(string letter)
    {
        ImmutableArray<CutNeed> needs = [.. lines.SelectMany(line => line.Pieces.Select(piece => new CutNeed(piece, line)))];
        ImmutableArray<CutNeed> runs = [.. needs.Where(need => need.Piece.Joining is not null)];
        ImmutableArray<CutNeed> whole = [.. needs.Where(need => need.Piece.Joining is null)];
        Length longest = offers.Offers.Where(offer => !offer.OnHand).Max(offer => offer.Length) - saw.Trim;
        ImmutableArray<CutNeed> tooLong = [.. whole.Where(need => need.Piece.Exact.Metres > longest.Metres + SameLengthM && !OnHandServes(need))];
        WarnOfLength(tooLong, longest);

        ImmutableArray<CutNeed> single = [.. whole.Except(tooLong)];
        CutChoice choice = Best(single, runs);
        if (!choice.Plan.Found)
        {
            // Bought stock is unlimited and every piece fits, so only a length or a rule that is no length at all leads here.
            found.AddRange(choice.Plan.Diagnostics);
            return Made(letter, choice, [], [], [.. needs.Select(need => need.Piece)]);
        }
        ImmutableArray<JointLayout> layouts = Staggering.Of(runs, choice.Layouts);
        ImmutableArray<CutBar> bars = BarDealer.Bars(letter, choice, offers.Offers, saw, single, runs, layouts);
        ImmutableArray<RunJoint> placed = JointsOf(bars, runs, layouts);
        for (int run = 0; run < runs.Length; run++) CountHardware(runs[run], layouts[run].Joints.Length);
        return Made(letter, choice, bars, placed, [.. tooLong.Select(need => need.Piece)]);
    }

    /// <summary>Searches with stock on hand and without, since a search that is cut short may do worse with more to choose from.</summary>
    private CutChoice Best(ImmutableArray<CutNeed> single, ImmutableArray<CutNeed> runs)
    {
        CutChoice with = Searched(offers.Offers, single, runs, warn: true);
        if (!offers.Offers.Any(offer => offer.OnHand)) return with;
        ImmutableArray<StockOffer> bought = [.. offers.Offers.Select(offer => offer.OnHand ? offer with { Limit = 0 } : offer)];
        if (single.Any(need => !Serves(bought.Where(offer => !offer.OnHand), need))) return with;
        CutChoice without = Searched(bought, single, runs, warn: false);
        return without.Plan.Found && (!with.Plan.Found || without.Plan.Cost < with.Plan.Cost) ? without with { LowerBound = with.LowerBound } : with;
    }

    private CutChoice Searched(ImmutableArray<StockOffer> stock, ImmutableArray<CutNeed> single, ImmutableArray<CutNeed> runs, bool warn)
    {
        ImmutableArray<Length> usable =
            [.. stock.Where(offer => offer.Limit is null or > 0).Select(offer => offer.Length - saw.Trim).Where(length => length > Length.Zero).Distinct().OrderDescending()];
        var layouts = ImmutableArray.CreateBuilder<ImmutableArray<JointLayout>>(runs.Length);
        // Purlins are alike, and so are the two baseboards: their joints may stand in the same places.
        List<(PieceNeed Piece, string Key, ImmutableArray<JointLayout> Layouts)> known = [];
        StringBuilder runsKey = new();
        foreach (CutNeed run in runs)
        {
            (PieceNeed? alike, string key, ImmutableArray<JointLayout> own) = known.Find(each => AreJoinedAlike(each.Piece, run.Piece));
            if (alike is null) known.Add((run.Piece, key = KeyOf(run.Piece, usable), own = LayoutsOf(run.Piece, key, usable)));
            runsKey.Append(key).Append('|');
            if (own.IsEmpty)
            {
                own = [JointLayouts.Regardless(run.Piece, usable[0])];
                if (warn)
                {
                    found.Add(new Diagnostic("cuts.joint-out-of-place", Severity.Warning, "cuts",
                        $"{run.Line.Name} for {run.Piece.MemberId} is sold too short to keep its joints where they belong.",
                        $"up to {Tape(usable[0])}", "longer stock"));
                }
            }
            layouts.Add(own);
        }
        ImmutableArray<ImmutableArray<JointLayout>> ways = layouts.MoveToImmutable();
        ImmutableArray<Length> exact = [.. single.Select(need => need.Piece.Exact)];
        CutChoice choice = With(toTheHair: false);
        return choice.Rooms.Overfills(choice.Plan, stock) ? With(toTheHair: true) : choice;

        CutChoice With(bool toTheHair) =>
            new CutSearch(stock, new CutRooms(exact.Concat(ways.SelectMany(own => own).SelectMany(layout => layout.Pieces)), stock, saw.Kerf, saw.Trim, toTheHair), saw.Trim, effort, memory).Best(exact, ways, runsKey.ToString());
    }

    private ImmutableArray<JointLayout> LayoutsOf(PieceNeed run, string key, ImmutableArray<Length> usable) =>
        memory is null ? JointLayouts.Of(run, run.Joining!, usable) : ImmutableCollectionsMarshal.AsImmutableArray(memory.Kept(key, () => JointLayouts.Of(run, run.Joining!, usable).ToArray()));

    // All that the ways of joining a run depend on.
    private static string KeyOf(PieceNeed run, ImmutableArray<Length> usable)
    {
        ExactKey key = new();
        key.Add(run.Exact).Add(run.Joining!.ShortestPiece).Add(run.Joining.NoJoints.Length);
        foreach (NoJoint stretch in run.Joining.NoJoints) key.Add(stretch.From).Add(stretch.To);
        foreach (Length length in usable) key.Add(length);
        return key.ToString();
    }

    private static bool AreJoinedAlike(PieceNeed one, PieceNeed other) => JointLayout.GrainsOf(one.Exact) == JointLayout.GrainsOf(other.Exact)
        && one.Joining!.ShortestPiece == other.Joining!.ShortestPiece && one.Joining.NoJoints.SequenceEqual(other.Joining.NoJoints);

    private bool OnHandServes(CutNeed need) => Serves(offers.Offers.Where(offer => offer.OnHand), need)
        // Stock on hand is limited: count on it only where it is enough for all that need it.
        && offers.Offers.Where(offer => offer.OnHand && Fits(offer, need)).Sum(offer => offer.Limit ?? 0)
            >= lines.Sum(line => line.Pieces.Count(piece => piece.Joining is null && piece.Exact >= need.Piece.Exact));

    private bool Serves(IEnumerable<StockOffer> stock, CutNeed need) => stock.Any(offer => Fits(offer, need));

    private bool Fits(StockOffer offer, CutNeed need) => need.Piece.Exact.Metres <= (offer.Length - saw.Trim).Metres + SameLengthM;

    private void WarnOfLength(ImmutableArray<CutNeed> tooLong, Length longest)
    {
        if (tooLong.IsEmpty) return;
        Length most = TapeText.RoundUpForLimit(tooLong.Max(need => need.Piece.Exact), saw.Units);
        found.Add(new Diagnostic("cuts.longer-than-stock", Severity.Warning, "cuts",
            $"{tooLong.Length} {(tooLong.Length == 1 ? "piece" : "pieces")} of {lines[0].Name} are longer than any stock length; they are listed to be ordered to length.",
            Tape(most), $"stock of {Tape(most + saw.Trim)} or more, joints, or pieces up to {Tape(longest)}"));
    }

    private void CountHardware(CutNeed run, int count)
    {
        foreach (JointHardware each in run.Piece.Joining!.Hardware)
            joints.Add(run.Line.Stage, MaterialUnit.Each, each.Item, each.Size, each.PerJoint * count, each.Rule, each.Source, [run.Piece.MemberId], each.RulePaths.AsSpan());
    }

    private static ImmutableArray<RunJoint> JointsOf(ImmutableArray<CutBar> bars, ImmutableArray<CutNeed> runs, ImmutableArray<JointLayout> layouts)
    {
        ILookup<string, CutBarPiece> pieces = bars.SelectMany(bar => bar.Pieces).ToLookup(piece => piece.MemberId, StringComparer.Ordinal);
        return
        [
            .. runs.Zip(layouts).SelectMany(run =>
            {
                List<string> numbers = [.. pieces[run.First.Piece.MemberId].OrderBy(piece => piece.Part).Select(piece => piece.Number)];
                return run.Second.Joints.Select((joint, index) => new RunJoint(run.First.Piece.MemberId, joint, numbers[index], numbers[index + 1]));
            }),
        ];
    }

    private CutSheet Made(
        string letter, CutChoice choice, ImmutableArray<CutBar> bars, ImmutableArray<RunJoint> placed, ImmutableArray<PieceNeed> madeToLength) => new()
        {
            Letter = letter,
            Item = lines[0].Item,
            Size = lines[0].Size,
            Kerf = saw.Kerf,
            Trim = saw.Trim,
            Offers = offers.Offers,
            Bars = bars,
            Patterns = BarDealer.Patterns(bars),
            Stops = BarDealer.Stops(bars, saw.Units),
            Joints = placed,
            MadeToLength = madeToLength,
            RankedBy = offers.Rank,
            CountsFor = choice.Plan.Cost,
            LowerBound = choice.LowerBound,
            JoinsCompared = choice.Considered,
            AllJoinsCompared = choice.Whole,
        };

    private string Tape(Length length) => TapeText.Of(length, saw.Units);
}
