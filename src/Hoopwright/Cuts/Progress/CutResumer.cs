using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cutting;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Cuts.Progress;

/// <summary>
/// Goes on with a cut list of which some stock pieces are cut or turned out bad. What is not cut yet is taken as bought, and stays as it
/// was planned wherever that costs nothing; what has lost its place goes onto stock that lies there, onto what is left of it, or onto as little more as can be.
/// A piece that must be longer by now than it was cut is still to cut, and what was cut lies there as a rest.
/// </summary>
internal sealed class CutResumer(CutSheet sheet, SawRules saw, Length tolerance, CutEffort effort, ImmutableArray<Diagnostic>.Builder found)
{
    private const string RestPrefix = "rest ";

    // Lengths are told apart to a ten-thousandth of a millimetre; so many pieces on one bar are never off by more together.
    private const long RoundingGrains = 64;

    private readonly Dictionary<CutPieceName, CutBarPiece> pieces = sheet.Bars.SelectMany(bar => bar.Pieces).ToDictionary(CutPieceName.Of);
    private readonly HashSet<CutPieceName> made = [];
    private readonly List<CutBar> waiting = [.. sheet.Bars];
    private readonly List<CutBar> done = [];
    private readonly List<Length> tooShort = [];
    private readonly HashSet<CutPieceName> cutAnew = [];
    private int last = sheet.Bars.Length;

    /// <summary>The cut list as it stands.</summary>
    /// <param name="records">What the site book says of it, in order; at least one.</param>
    public CutSheet Resume(ImmutableArray<CutRecord> records)
    {
        cutAnew.UnionWith(records.SelectMany(record => record.Pieces).Where(said => pieces.TryGetValue(said.Name, out CutBarPiece? piece) && !(said.Length is { } cut && IsShort(piece, cut))).Select(said => said.Name));
        foreach (CutRecord record in records) Take(record);
        if (done.Count == 0) return sheet;
        ImmutableArray<CutBar> left = [.. waiting.Select(WithoutMade)];
        HashSet<CutPieceName> placed = [.. left.SelectMany(bar => bar.Pieces).Select(CutPieceName.Of)];
        ImmutableArray<CutBarPiece> loose = [.. pieces.Where(each => !made.Contains(each.Key) && !placed.Contains(each.Key)).Select(each => each.Value)];
        Rest rest = loose.IsEmpty ? new(left, [], Money.Zero, Money.Zero, FewestChanged: true) : Placed(left, loose);
        ImmutableArray<CutBar> bars = Patterned([.. done, .. rest.Bars]);
        ImmutableArray<CutBar> toCut = [.. bars.Where(bar => bar.State == CutBarState.ToCut)];
        Dictionary<int, string> planned = sheet.Bars.ToDictionary(bar => bar.Number, NamesOf);
        int kept = toCut.Count(bar => planned.GetValueOrDefault(bar.Number) == NamesOf(bar));
        WarnOfFurther(rest.Further);
        return sheet with
        {
            Bars = bars,
            Patterns = BarDealer.Patterns(toCut),
            Stops = BarDealer.Stops(toCut, saw.Units),
            MadeToLength = [.. sheet.MadeToLength, .. rest.TooLong ?? []],
            CountsFor = sheet.CountsFor + rest.Cost,
            LowerBound = sheet.LowerBound + rest.LowerBound,
            Progress = new CutSheetProgress
            {
                Cut = bars.Count(bar => bar.State == CutBarState.Cut),
                Bad = bars.Count(bar => bar.State == CutBarState.Bad),
                Kept = kept,
                Changed = toCut.Length - kept,
                Further = rest.Further,
                FewestChanged = rest.FewestChanged,
            },
        };
    }

    private void Take(CutRecord record)
    {
        List<CutBarPiece> own = [], said = [];
        List<Length> shorter = [];
        foreach ((CutPieceName name, Length? length) in record.Pieces)
        {
            if (!pieces.TryGetValue(name, out CutBarPiece? piece)) Warn("site-book.cut.piece-unknown", record, $"The cut list of {sheet.Name} has no piece of this name.", name.MemberId, NearestWord.Of(name.Text(name.Part == 1 ? 1 : 2), [.. pieces.Values.Select(TextOf)]) ?? "a name from the column of what each piece is for");
            else if (length is { } asCut && IsShort(piece, asCut))
            {
                if (!cutAnew.Contains(name)) WarnOfShort(record, piece, asCut);
                said.Add(piece);
                shorter.Add(asCut);
            }
            else if (!made.Add(name)) Warn("site-book.cut.twice", record, "This piece is said to be cut twice; it is needed once.", TextOf(piece), "a correction to one of the two entries");
            else own.Add(piece);
        }
        said.AddRange(own);
        tooShort.AddRange(shorter);
        if (said.Count == 0 && !record.IsBad) return;
        CutBar? taken = waiting.Where(bar => AreSame(bar.Stock, record.Stock)).OrderByDescending(bar => bar.Pieces.Count(said.Contains)).ThenBy(bar => bar.Pieces.Length).ThenByDescending(bar => bar.Number).FirstOrDefault();
        if (taken is not null) waiting.Remove(taken);
        int number = taken?.Number ?? ++last;
        // What was not on the list was no part of the order either.
        (bool onHand, bool isRest) = taken is null ? (true, true) : (taken.OnHand, false);
        Length gone = shorter.Aggregate(Length.Zero, (sum, each) => sum + each + saw.Kerf);
        if (own.Count == 0)
        {
            // Nothing on it is of use as it was meant, be it bad or too short.
            Length left = record.Left ?? (record.IsBad ? Length.Zero : Length.Max(record.Stock - saw.Trim - gone, Length.Zero));
            done.Add(new CutBar { Number = number, Pattern = 0, Stock = record.Stock, OnHand = onHand, IsRest = isRest, State = CutBarState.Bad, EntryId = record.EntryId, Trim = Length.Zero, Pieces = [], KerfLost = Length.Zero, Leftover = left, LeftoverUseful = IsUseful(left) });
            return;
        }
        CutBar cut = BarDealer.Bar(number, 0, record.Stock, onHand, [.. own.OrderByDescending(piece => JointLayout.GrainsOf(piece.Length))], saw) with { State = CutBarState.Cut, IsRest = isRest, EntryId = record.EntryId };
        if (cut.Pieces[^1].To.Metres + gone.Metres > record.Stock.Metres + 0.001)
            Warn("site-book.cut.too-long", record, "These pieces do not fit on that length together; they count as cut all the same.", TapeText.Of(record.Stock, saw.Units), $"at least {TapeText.Of(TapeText.RoundUpForLimit(cut.Pieces[^1].To, saw.Units), saw.Units)}");
        Length over = record.Left ?? Length.Max(cut.Leftover - gone, Length.Zero);
        done.Add(cut with { Leftover = over, LeftoverUseful = IsUseful(over) });
    }

    /// <summary>A bar of which some pieces were cut elsewhere; spare when all were.</summary>
    private CutBar WithoutMade(CutBar bar)
    {
        ImmutableArray<CutBarPiece> still = [.. bar.Pieces.Where(piece => !made.Contains(CutPieceName.Of(piece)))];
        return still.Length == bar.Pieces.Length ? bar : still.IsEmpty ? Spare(bar) : BarDealer.Bar(bar.Number, bar.Pattern, bar.Stock, bar.OnHand, still, saw);
    }

    private static CutBar Spare(CutBar bar) => bar with { State = CutBarState.Spare, Pieces = [], Trim = Length.Zero, KerfLost = Length.Zero, Leftover = bar.Stock, LeftoverUseful = true };

    private Rest Placed(ImmutableArray<CutBar> left, ImmutableArray<CutBarPiece> loose)
    {
        Length longest = sheet.Offers.Where(offer => !offer.OnHand).Select(offer => offer.Length - saw.Trim).DefaultIfEmpty(Length.Zero).Max();
        ImmutableArray<CutBarPiece> tooLong = [.. loose.Where(piece => JointLayout.GrainsOf(piece.Length) > JointLayout.GrainsOf(longest))];
        ImmutableArray<CutBarPiece> fitting = [.. loose.Except(tooLong)];
        ImmutableArray<PieceNeed> toOrder = [.. tooLong.Select(piece => new PieceNeed(piece.MemberId, piece.Label, piece.Length) { Place = piece.Place })];
        ImmutableArray<CutBar> uncut = [.. left.Where(bar => bar.State == CutBarState.ToCut)], spare = [.. left.Where(bar => bar.State == CutBarState.Spare)];
        if (fitting.IsEmpty) return new(left, [], Money.Zero, Money.Zero, FewestChanged: true, toOrder);
        RecutPlan plan = Recutter.Solve(Job(uncut, spare, fitting), [.. uncut.Concat(spare).Select(bar => new CutProgress(OfferOf(bar), 1, [.. bar.Pieces.Select(IdOf)], 0, 0))], effort);
        // Bought stock is without limit and every piece fits on some of it.
        if (!plan.Plan.Found) throw new InvalidOperationException($"No way was found to cut the rest of {sheet.Name}: {string.Join(' ', plan.Diagnostics.Select(each => each.Message))}");
        Dictionary<string, Queue<CutBarPiece>> queues = uncut.SelectMany(bar => bar.Pieces).Concat(fitting).GroupBy(IdOf).ToDictionary(group => group.Key, group => new Queue<CutBarPiece>(group));
        List<CutBar> bars = [], free = [.. uncut.Concat(spare)];
        List<Length> further = [];
        var patterns = plan.Plan.Patterns.Select((pattern, at) => (Pattern: pattern, Kept: plan.Kept[at], Further: plan.Further[at])).ToList();
        foreach ((UnitlessCutPattern pattern, int kept, _) in patterns.Where(each => each.Kept > 0))
        {
            string key = KeyOf(pattern.StockId, pattern.Pieces);
            for (int time = 0; time < kept; time++)
            {
                CutBar bar = free.First(each => KeyOf(OfferOf(each), each.Pieces.Select(IdOf)) == key);
                free.Remove(bar);
                bars.Add(bar);
            }
        }
        HashSet<CutPieceName> stay = [.. bars.SelectMany(bar => bar.Pieces).Select(CutPieceName.Of)];
        foreach (Queue<CutBarPiece> queue in queues.Values)
        {
            CutBarPiece[] waitingPieces = [.. queue.Where(piece => !stay.Contains(CutPieceName.Of(piece)))];
            queue.Clear();
            foreach (CutBarPiece piece in waitingPieces) queue.Enqueue(piece);
        }
        foreach ((UnitlessCutPattern pattern, int kept, int more) in patterns.Where(each => each.Kept == 0))
        {
            for (int time = 0; time < pattern.Times; time++)
            {
                ImmutableArray<CutBarPiece> dealt = [.. pattern.Pieces.Select(id => queues[id].Dequeue()).OrderByDescending(piece => JointLayout.GrainsOf(piece.Length))];
                bars.Add(pattern.StockId.StartsWith(RestPrefix, StringComparison.Ordinal)
                    ? BarDealer.Bar(++last, 0, JointLayout.LengthOf(long.Parse(pattern.StockId.AsSpan(RestPrefix.Length), CultureInfo.InvariantCulture)), onHand: true, dealt, saw) with { IsRest = true }
                    : OnOffer(int.Parse(pattern.StockId, CultureInfo.InvariantCulture), time < more, dealt, free, further));
            }
        }
        Money cost = new(further.Sum(length => sheet.Offers.First(offer => !offer.OnHand && offer.Length == length).CostInPlan.Amount));
        return new([.. bars, .. free.Select(Spare)], [.. further.Order()], cost, new Money(Math.Min(cost.Amount, plan.Plan.LowerBound)), plan.FewestChanged, toOrder);
    }

    private CutBar OnOffer(int index, bool isFurther, ImmutableArray<CutBarPiece> dealt, List<CutBar> free, List<Length> further)
    {
        StockOffer offer = sheet.Offers[index];
        if (!isFurther)
        {
            // One that lies there, freed of what it was planned for; its number stays on it.
            string id = index.ToString(CultureInfo.InvariantCulture);
            CutBar at = free.First(bar => OfferOf(bar) == id);
            free.Remove(at);
            return BarDealer.Bar(at.Number, 0, offer.Length, offer.OnHand, dealt, saw);
        }
        if (!offer.OnHand) further.Add(offer.Length);
        return BarDealer.Bar(++last, 0, offer.Length, offer.OnHand, dealt, saw);
    }

    private UnitlessCutJob Job(ImmutableArray<CutBar> uncut, ImmutableArray<CutBar> spare, ImmutableArray<CutBarPiece> loose)
    {
        ImmutableArray<CutBarPiece> wanted = [.. uncut.SelectMany(bar => bar.Pieces), .. loose];
        long shortest = wanted.Min(piece => JointLayout.GrainsOf(piece.Length));
        return new UnitlessCutJob
        {
            Stock =
            [
                .. sheet.Offers.Select((offer, index) => new UnitlessCutStock(index.ToString(CultureInfo.InvariantCulture), JointLayout.GrainsOf(offer.Length) + RoundingGrains, offer.CostInPlan.Amount, LimitOf(offer))),
                .. done.Select(bar => bar.Leftover).Concat(tooShort).Where(rest => JointLayout.GrainsOf(rest - saw.Trim) >= shortest).GroupBy(JointLayout.GrainsOf).OrderBy(group => group.Key)
                    .Select(group => new UnitlessCutStock(RestPrefix + group.Key.ToString(CultureInfo.InvariantCulture), group.Key, 0, group.Count())),
            ],
            Pieces = [.. wanted.GroupBy(IdOf).Select(group => new UnitlessCutPiece(group.Key, JointLayout.GrainsOf(group.First().Length), group.Count()))],
            Kerf = JointLayout.GrainsOf(saw.Kerf),
            Trim = JointLayout.GrainsOf(saw.Trim),
        };

        int? LimitOf(StockOffer offer) => offer.Limit is { } most ? Math.Max(0, most - done.Count(bar => bar.OnHand && !bar.IsRest && AreSame(bar.Stock, offer.Length))) : null;
    }

    private static ImmutableArray<CutBar> Patterned(IEnumerable<CutBar> bars)
    {
        Dictionary<string, int> patterns = [];
        return
        [
            .. bars.OrderBy(bar => bar.Number).Select(bar =>
            {
                if (bar.State != CutBarState.ToCut) return bar with { Pattern = 0 };
                string key = $"{bar.OnHand} {bar.IsRest} {JointLayout.GrainsOf(bar.Stock)}: {string.Join(' ', bar.Pieces.Select(IdOf))}";
                if (!patterns.TryGetValue(key, out int pattern)) patterns[key] = pattern = patterns.Count + 1;
                return bar with { Pattern = pattern };
            }),
        ];
    }

    private string OfferOf(CutBar bar)
    {
        for (int index = 0; index < sheet.Offers.Length; index++)
        {
            if (sheet.Offers[index].OnHand == bar.OnHand && AreSame(sheet.Offers[index].Length, bar.Stock)) return index.ToString(CultureInfo.InvariantCulture);
        }
        throw new InvalidOperationException("A bar of a cut list is of none of its stock lengths.");
    }

    private static string KeyOf(string stock, IEnumerable<string> ids) => $"{stock}: {string.Join(' ', ids.Order(StringComparer.Ordinal))}";

    private static string NamesOf(CutBar bar) => string.Join(' ', bar.Pieces.Select(TextOf));

    private static string IdOf(CutBarPiece piece) => JointLayout.GrainsOf(piece.Length).ToString(CultureInfo.InvariantCulture);

    private static bool AreSame(Length one, Length other) => (one - other).Abs().Metres < 0.001;

    private static string TextOf(CutBarPiece piece) => CutPieceName.Of(piece).Text(piece.Parts);

    private bool IsUseful(Length left) => left > Length.Zero && left >= saw.UsefulLeftover;

    private bool IsShort(CutBarPiece piece, Length cut) => piece.Length - cut > tolerance;

    private void WarnOfFurther(ImmutableArray<Length> further)
    {
        foreach (IGrouping<Length, Length> more in further.GroupBy(length => length))
        {
            found.Add(new Diagnostic("cuts.further", Severity.Warning, "siteBook",
                $"What was cut or turned out bad leaves too little {sheet.Name}: {more.Count()} more of this length must be had.", TapeText.Of(more.Key, saw.Units), "buy it, or enter what lies there as stock on hand"));
        }
    }

    private void WarnOfShort(CutRecord record, CutBarPiece piece, Length cut)
    {
        string needed = TapeText.Of(TapeText.RoundUpForLimit(piece.Length, saw.Units), saw.Units);
        // What it would serve as: the longest other piece that it still makes.
        CutBarPiece? other = pieces.Values.Where(each => each != piece && !made.Contains(CutPieceName.Of(each)) && JointLayout.GrainsOf(each.Length) <= JointLayout.GrainsOf(cut)).OrderByDescending(each => each.Length.Metres).ThenBy(TextOf, StringComparer.Ordinal).FirstOrDefault();
        Warn("site-book.cut.too-short", record, $"{TextOf(piece)} must be longer by now than it was cut, so it counts as still to cut and what was cut as a rest.", TapeText.Of(cut, saw.Units),
            other is null ? $"{needed}: cut it anew" : $"{needed}: cut it anew; what was cut would still make {TextOf(other)}");
    }

    private void Warn(string code, CutRecord record, string message, string seen, string accepted) =>
        found.Add(new Diagnostic(code, Severity.Warning, record.Path + ".value", message, seen, accepted));

    private sealed record Rest(ImmutableArray<CutBar> Bars, ImmutableArray<Length> Further, Money Cost, Money LowerBound, bool FewestChanged, ImmutableArray<PieceNeed>? TooLong = null);
}
