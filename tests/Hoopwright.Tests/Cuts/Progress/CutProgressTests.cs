using CsCheck;
using Hoopwright.Cuts;
using Hoopwright.Cuts.Progress;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Cuts.Progress;

/// <summary>Cut lists that were begun: what is cut stays cut, and the rest changes as little as it can.</summary>
public sealed class CutProgressTests
{
    private static readonly Plan Plan = SamplePlans.Example("gothic-26ft");
    private static readonly PlannedTunnel Planned = Work(Plan);
    private static readonly CutSheet Boards = Planned.Cuts!.Of("board", "2x4")!;

    [Fact]
    public void What_was_cut_as_planned_changes_nothing_else()
    {
        PlannedTunnel after = Work(With(Boards.Bars.Take(5).Select(bar => (Boards.Name, Said(bar)))));
        CutSheet sheet = Same(after, Boards);
        Assert.Equal(new CutSheetProgress { Cut = 5, Bad = 0, Kept = Boards.Bars.Length - 5, Changed = 0, Further = [], FewestChanged = true }.ToString(), sheet.Progress!.ToString());
        Assert.Equal(Boards.Bars.Select(Names), sheet.Bars.Select(Names));
        Assert.Equal(Planned.Orders!.Total, after.Orders!.Total);
        Assert.Equal(Boards.Patterns.Sum(pattern => pattern.Times) - 5, sheet.Patterns.Sum(pattern => pattern.Times));
        Assert.DoesNotContain(after.Diagnostics, each => each.Code.StartsWith("site-book.cut", StringComparison.Ordinal));
        Assert.Contains(after.Assumptions, each => each.Code == "assumed.cuts.bought");
        Assert.Equal(Planned.Takeoff!.Lines.Length, after.Takeoff!.Lines.Length);
    }

    [Fact]
    public void A_bad_one_costs_one_more_at_the_most_and_leaves_all_others_as_they_were()
    {
        CutBar bad = Boards.Bars.MaxBy(bar => bar.Pieces.Sum(piece => piece.Length.Metres))!;
        PlannedTunnel after = Work(With([(Boards.Name, $"{TapeText.Of(bad.Stock, Plan.Units!.Value)}: bad")]));
        CutSheet sheet = Same(after, Boards);
        Assert.Equal((0, 1), (sheet.Progress!.Cut, sheet.Progress.Bad));
        Assert.True(sheet.Progress.Further.Length <= 1, string.Join(", ", sheet.Progress.Further));
        Holds(Boards, sheet);
        decimal further = sheet.Progress.Further.Sum(length => Boards.Offers.First(offer => !offer.OnHand && offer.Length == length).CostInPlan.Amount);
        Assert.Equal(Boards.CountsFor.Amount + further, sheet.CountsFor.Amount);
        Assert.Equal(Planned.Orders!.Total.Amount + further, after.Orders!.Total.Amount);
        Assert.Equal(sheet.Progress.Further.Length, after.Diagnostics.Count(each => each.Code == "cuts.further"));
        Assert.True(sheet.Progress.Kept >= Boards.Bars.Length - 4, $"{sheet.Progress.Kept} of {Boards.Bars.Length} stay.");
    }

    [Fact]
    public void What_is_left_of_a_bad_one_is_used_before_anything_is_bought()
    {
        CutBar bad = Boards.Bars.First(bar => bar.Pieces.Length > 1);
        Length rest = Length.FromFeet(Math.Round(bad.Stock.Feet) - 1);
        // Its longest piece and whatever else goes with it no longer fit together; nothing needs to be bought while the rest takes one and leftovers the others.
        PlannedTunnel after = Work(With([(Boards.Name, $"{TapeText.Of(bad.Stock, Plan.Units!.Value)}: bad, {TapeText.Of(rest, Plan.Units!.Value)} left")]));
        CutSheet sheet = Same(after, Boards);
        Holds(Boards, sheet);
        Assert.Contains(sheet.Bars, bar => bar.IsRest && bar.Stock == rest);
    }

    [Fact]
    public void A_piece_cut_from_another_one_is_not_cut_again_and_what_it_pushed_out_finds_a_place()
    {
        CutBar one = Boards.Bars[0], other = Boards.Bars.Last(bar => bar.Number != one.Number && bar.Pieces[^1].Length < one.Stock);
        CutBarPiece foreign = other.Pieces[^1];
        PlannedTunnel after = Work(With([(Boards.Name, $"{TapeText.Of(one.Stock, Plan.Units!.Value)}: {CutPieceName.Of(foreign).Text(foreign.Parts)}")]));
        CutSheet sheet = Same(after, Boards);
        Assert.Single(sheet.Bars, bar => bar.State == CutBarState.Cut && bar.Pieces.Any(piece => piece.Number == foreign.Number));
        Holds(Boards, sheet);
    }

    [Fact]
    public void An_entry_that_was_taken_back_counts_for_nothing()
    {
        Plan plan = With([(Boards.Name, Said(Boards.Bars[0]))]);
        plan = plan with { SiteBook = plan.SiteBook.Add(new SiteBookEntry { Id = "20260601T090000000Z-abcdefgh", Kind = SiteBookKind.Correction, Corrects = plan.SiteBook[^1].Id }) };
        Assert.Null(Same(Work(plan), Boards).Progress);
    }

    [Theory]
    [InlineData("board 2x4", "cut it", "site-book.cut.unreadable", ".value")]
    [InlineData("board 2x4", "12 ft: bad, front-girt-1", "site-book.cut.unreadable", ".value")]
    [InlineData("board 2x4", "12 ft: bad, 13 ft left", "site-book.cut.unreadable", ".value")]
    [InlineData("board 3x4", "12 ft: bad", "site-book.cut.item-unknown", ".of")]
    [InlineData("board 2x4", "12 ft: front-girt-99", "site-book.cut.piece-unknown", ".value")]
    public void What_is_no_record_of_a_cut_is_told_with_its_place_and_counts_for_nothing(string of, string value, string code, string field)
    {
        PlannedTunnel after = Work(With([(of, value)]));
        Diagnostic told = Assert.Single(after.Diagnostics, each => each.Code.StartsWith("site-book.cut", StringComparison.Ordinal));
        Assert.Equal((code, $"siteBook[{Plan.SiteBook.Length}]{field}", Severity.Warning), (told.Code, told.Path, told.Severity));
        Assert.NotNull(told.Accepted);
        Assert.Equal(Planned.Orders!.Total, after.Orders!.Total);
    }

    [Fact]
    public void The_same_piece_cut_twice_and_pieces_that_cannot_have_been_cut_from_that_length_are_told()
    {
        CutBar bar = Boards.Bars[0];
        Assert.Contains(Work(With([(Boards.Name, Said(bar)), (Boards.Name, Said(bar))])).Diagnostics, each => each.Code == "site-book.cut.twice");
        Length shorter = bar.Pieces[0].Length - Length.FromFeet(1);
        Assert.Contains(Work(With([(Boards.Name, $"{TapeText.Of(shorter, Plan.Units!.Value)}: {CutPieceName.Of(bar.Pieces[0]).Text(bar.Pieces[0].Parts)}")])).Diagnostics, each => each.Code == "site-book.cut.too-long");
    }

    [Fact]
    public void A_piece_that_must_be_longer_than_it_was_cut_is_told_and_cut_anew_and_what_was_cut_is_a_rest()
    {
        CutBar bar = Boards.Bars.First(bar => bar.Pieces.Length > 1);
        CutBarPiece piece = bar.Pieces[0];
        Length cut = Rounded(piece.Length - Length.FromInches(3));
        PlannedTunnel after = Work(With([(Boards.Name, SaidWith(bar, (piece, cut)))]));
        CutSheet sheet = Same(after, Boards);
        Diagnostic told = Assert.Single(after.Diagnostics, each => each.Code.StartsWith("site-book.cut", StringComparison.Ordinal));
        Assert.Equal(("site-book.cut.too-short", $"siteBook[{Plan.SiteBook.Length}].value", Severity.Warning), (told.Code, told.Path, told.Severity));
        Assert.Equal(TapeText.Of(cut, Plan.Units!.Value), told.Seen);
        Assert.Contains(CutPieceName.Of(piece).Text(piece.Parts), told.Message, StringComparison.Ordinal);
        Assert.StartsWith(TapeText.Of(TapeText.RoundUpForLimit(piece.Length, Plan.Units.Value), Plan.Units.Value), told.Accepted, StringComparison.Ordinal);
        CutBar done = Assert.Single(sheet.Bars, each => each.State == CutBarState.Cut);
        Assert.Equal(bar.Pieces.Skip(1).Select(each => each.Number).Order(StringComparer.Ordinal), done.Pieces.Select(each => each.Number).Order(StringComparer.Ordinal));
        // Of the bar no more is left than the short piece leaves, and the piece itself is still to cut or to be ordered.
        Assert.True(done.Leftover.Metres <= bar.Stock.Metres - bar.Pieces.Sum(each => each.Length.Metres) + Length.FromInches(3.1).Metres);
        Holds(Boards, sheet);

        // Cut anew from another one, nothing is left to say.
        CutBar other = Boards.Bars.First(each => each.Number != bar.Number && each.Stock >= piece.Length);
        string anew = $"{TapeText.Of(other.Stock, Plan.Units.Value)}: {CutPieceName.Of(piece).Text(piece.Parts)} {TapeText.Of(piece.Length, Plan.Units.Value)}";
        after = Work(With([(Boards.Name, SaidWith(bar, (piece, cut))), (Boards.Name, anew)]));
        Assert.DoesNotContain(after.Diagnostics, each => each.Code.StartsWith("site-book.cut", StringComparison.Ordinal));
        Holds(Boards, Same(after, Boards));
    }

    [Fact]
    public void What_was_cut_too_short_serves_for_a_shorter_piece()
    {
        // The only piece on its bar comes out as long as a piece that loses its place elsewhere: nothing more is bought for that one.
        CutBar alone = Boards.Bars.OrderByDescending(bar => bar.Pieces[0].Length.Metres).First(bar => Boards.Bars.Any(other => other.Number != bar.Number && other.Pieces[^1].Length < bar.Pieces[0].Length - Length.FromFeet(1)));
        CutBarPiece shorter = Boards.Bars.Where(bar => bar.Number != alone.Number).SelectMany(bar => bar.Pieces).Where(piece => piece.Length < alone.Pieces[0].Length - Length.FromFeet(1)).MaxBy(piece => piece.Length.Metres)!;
        CutBar home = Boards.Bars.First(bar => bar.Pieces.Contains(shorter));
        Length cut = shorter.Length + Length.FromInches(1);
        string stock = TapeText.Of(alone.Stock, Plan.Units!.Value);
        PlannedTunnel after = Work(With([(Boards.Name, $"{stock}: {CutPieceName.Of(alone.Pieces[0]).Text(alone.Pieces[0].Parts)} {TapeText.Of(Rounded(cut), Plan.Units.Value)}, 0' 1\" left"), (Boards.Name, $"{TapeText.Of(home.Stock, Plan.Units.Value)}: bad")]));
        CutSheet sheet = Same(after, Boards);
        Assert.Contains("would still make", Assert.Single(after.Diagnostics, each => each.Code == "site-book.cut.too-short").Accepted, StringComparison.Ordinal);
        Assert.Contains(sheet.Bars, bar => bar.IsRest && bar.State == CutBarState.ToCut && Math.Abs((bar.Stock - cut).Inches) < 0.1);
        Holds(Boards, sheet);
    }

    [Theory]
    [InlineData(0.0625)]
    [InlineData(-3)]
    public void A_piece_that_is_short_within_the_tolerance_or_too_long_counts_as_cut(double shortByInches)
    {
        CutBar bar = Boards.Bars[0];
        CutBarPiece piece = bar.Pieces[0];
        PlannedTunnel after = Work(With([(Boards.Name, SaidWith(bar, (piece, Rounded(piece.Length - Length.FromInches(shortByInches)))))]));
        Assert.DoesNotContain(after.Diagnostics, each => each.Code.StartsWith("site-book.cut", StringComparison.Ordinal));
        Assert.Equal(1, Same(after, Boards).Progress!.Cut);
        Assert.Equal(Boards.Bars.Length - 1, Same(after, Boards).Progress!.Kept);
    }

    [Fact]
    public void Whatever_happens_at_the_saw_every_piece_is_cut_once_from_stock_that_is_there_or_ordered() =>
        Gen.Select(Gen.OneOf("gothic-26ft", "round-14ft", "metric-9m"), Gen.Int[0, 4].Array[1, 12], Gen.Int[0, 1000].Array[12]).Sample((example, kinds, picks) =>
        {
            PlannedTunnel before = example == "gothic-26ft" ? Planned : Work(SamplePlans.Example(example));
            List<(string, string)> said = [];
            for (int at = 0; at < kinds.Length; at++)
            {
                CutSheet sheet = before.Cuts!.Sheets[picks[at] % before.Cuts.Sheets.Length];
                CutBar bar = sheet.Bars[picks[at] * 7 % sheet.Bars.Length];
                string stock = TapeText.Of(bar.Stock, before.Units);
                said.Add((sheet.Name, kinds[at] switch
                {
                    0 => Said(bar, before.Units),
                    1 => $"{stock}: bad",
                    3 => SaidWith(bar, before.Units, (bar.Pieces[picks[at] % bar.Pieces.Length], bar.Pieces[picks[at] % bar.Pieces.Length].Length * 0.75)),
                    2 => $"{stock}: bad, {TapeText.Of(bar.Stock / 2, before.Units)} left",
                    _ => $"{stock}: {CutPieceName.Of(bar.Pieces[^1]).Text(bar.Pieces[^1].Parts)}",
                }));
            }
            PlannedTunnel after = Work(With(said, before.Plan));
            foreach (CutSheet sheet in before.Cuts!.Sheets) Holds(sheet, Same(after, sheet));
        }, iter: 40);

    /// <summary>Every piece stands once, fits where it stands, and the stock is what was ordered, what is left of it and what is said to be needed further.</summary>
    private static void Holds(CutSheet before, CutSheet after)
    {
        if (after.Progress is null)
        {
            Assert.Equal(before.Bars.Select(Names), after.Bars.Select(Names));
            return;
        }
        string[] placed = [.. after.Bars.SelectMany(bar => bar.Pieces).Select(piece => piece.Number), .. after.MadeToLength.Skip(before.MadeToLength.Length).Select(piece => before.Bars.SelectMany(bar => bar.Pieces).First(own => own.Label == piece.Label && own.MemberId == piece.MemberId).Number)];
        Assert.Equal(before.Bars.SelectMany(bar => bar.Pieces).Select(piece => piece.Number).Order(StringComparer.Ordinal), placed.Order(StringComparer.Ordinal));
        Assert.Equal(after.Bars.Length, after.Bars.Select(bar => bar.Number).Distinct().Count());
        foreach (CutBar bar in after.Bars.Where(bar => bar.State == CutBarState.ToCut))
        {
            Assert.NotEmpty(bar.Pieces);
            Assert.True(bar.Pieces[^1].To.Metres <= bar.Stock.Metres + 1e-5, $"{after.Name}, bar {bar.Number} is over full.");
        }
        foreach (StockOffer offer in before.Offers)
        {
            int planned = before.Bars.Count(bar => bar.Stock == offer.Length && bar.OnHand == offer.OnHand);
            int now = after.Bars.Count(bar => !bar.IsRest && bar.OnHand == offer.OnHand && Math.Abs((bar.Stock - offer.Length).Metres) < 0.001);
            if (offer.OnHand) Assert.InRange(now, planned, offer.Limit ?? int.MaxValue);
            else Assert.Equal(planned + after.Progress.Further.Count(length => length == offer.Length), now);
        }
        Assert.True(after.LowerBound <= after.CountsFor);
        Assert.Equal(after.Bars.Count(bar => bar.State == CutBarState.ToCut), after.Progress.Kept + after.Progress.Changed);
    }

    private static string Said(CutBar bar) => Said(bar, Plan.Units!.Value);

    private static string Said(CutBar bar, UnitSystem units) => $"{TapeText.Of(bar.Stock, units)}: {string.Join(", ", bar.Pieces.Select(piece => CutPieceName.Of(piece).Text(piece.Parts)))}";

    private static string SaidWith(CutBar bar, (CutBarPiece Piece, Length Length) cut) => SaidWith(bar, Plan.Units!.Value, cut);

    /// <summary>As the app writes it, with the length of every piece.</summary>
    private static string SaidWith(CutBar bar, UnitSystem units, (CutBarPiece Piece, Length Length) cut) =>
        $"{TapeText.Of(bar.Stock, units)}: {string.Join(", ", bar.Pieces.Select(piece => $"{CutPieceName.Of(piece).Text(piece.Parts)} {TapeText.Of(piece == cut.Piece ? cut.Length : piece.Length, units)}"))}";

    private static Length Rounded(Length length) => TapeText.RoundForMember(length, Plan.Units!.Value);

    private static string Names(CutBar bar) => string.Join(' ', bar.Pieces.Select(piece => piece.Number));

    private static CutSheet Same(PlannedTunnel planned, CutSheet sheet) => planned.Cuts!.Of(sheet.Item, sheet.Size)!;

    private static Plan With(IEnumerable<(string Of, string Value)> said, Plan? plan = null)
    {
        Plan own = plan ?? Plan;
        return own with
        {
            SiteBook =
            [
                .. own.SiteBook,
                .. said.Select((each, at) => new SiteBookEntry { Id = FormattableString.Invariant($"20260520T10{at:00}00000Z-abcdefgh"), Kind = SiteBookKind.Cut, Of = each.Of, Value = each.Value, By = "Invented crew" }),
            ],
        };
    }

    private static PlannedTunnel Work(Plan plan) => TunnelWorks.Plan(new PlanReading(plan, false, []), depth: WorkDepth.Orders);
}
