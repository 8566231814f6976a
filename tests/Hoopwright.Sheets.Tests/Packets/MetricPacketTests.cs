using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Hoopwright.BuildSteps;
using Hoopwright.Cover.Pull;
using Hoopwright.Cuts;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Charts;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Sheets.Tables;
using Hoopwright.Sheets.Words;
using Hoopwright.Testing;

namespace Hoopwright.Sheets.Tests.Packets;

/// <summary>A packet of a metric plan speaks in metres: to the grower, to the crew, and in what can hurt.</summary>
public sealed partial class MetricPacketTests
{
    private static readonly DateOnly Day = new(2026, 3, 1);

    // Left out nearly whole, so that what is taken instead is seen; with a site that fits every way of holding snow and wind.
    private const string Bare = "\"units\": \"metric\", \"site\": { \"groundSnow\": \"0.5 kPa\", \"wind\": \"28 m/s\", \"frostDepth\": \"400 mm\", \"soilClass\": \"sand\" }, \"loads\": { \"standard\": \"en1991\" }, "
        + "\"frame\": { \"span\": \"8 m\", \"length\": \"20 m\", \"bow\": { \"shape\": \"peaked\", \"sideHeight\": \"1.5 m\", \"peakHeight\": \"3.8 m\", \"shoulderRadius\": \"700 mm\" } }, "
        + "\"sides\": { \"left\": { \"kind\": \"drop\", \"hipHeight\": \"1.4 m\" }, \"right\": { \"kind\": \"fixed\" } }, \"ends\": { \"front\": { \"doors\": [ { \"kind\": \"double\", \"width\": \"2.4 m\", \"height\": \"2.2 m\" } ] } }, "
        + "\"cover\": { \"layers\": 2, \"thickness\": \"200 μm\" }";

    public static TheoryData<string> Plans { get; } = [Bare, "gothic", "round", "example"];

    [Theory]
    [MemberData(nameof(Plans))]
    public void No_page_of_a_metric_plan_speaks_of_feet_or_pounds_but_beside_metres_or_where_a_source_is_cited(string name)
    {
        PlannedTunnel planned = Planned(name);
        (string Sheets, ImmutableArray<PdfSheet> Pages)[] all =
        [
            ("packet", PacketWriter.Pages(planned, Paper.A4, Day)), ("crew sheets", CrewSheets.Pages(planned, Paper.A4, Day, "es")),
            .. CrewWords.Languages.Select(language => ("cards", StepCards.Pages(planned, Paper.A4, Day, language))), .. CrewWords.Languages.Select(language => ("upkeep", UpkeepSheets.Pages(planned, Paper.A4, Day, language))),
        ];
        foreach ((string sheets, ImmutableArray<PdfSheet> pages) in all)
        {
            string text = Cited(planned).Aggregate(Text(pages), (left, cited) => left.Replace(cited, "", StringComparison.Ordinal));
            Assert.All(Customary().Matches(text), match => Assert.Fail($"{sheets}: …{text[Math.Max(0, match.Index - 60)..Math.Min(text.Length, match.Index + 30)]}…"));
        }
    }

    [Fact]
    public void Overhead_lines_are_kept_off_by_the_units_of_the_plan_first()
    {
        PlannedTunnel planned = Planned("example");
        Assert.Contains("at least 3 m (10 ft) away", Text(PacketWriter.Pages(planned, Paper.A4, Day)), StringComparison.Ordinal);
        Assert.Contains("a 3 m (10 pies) por lo menos", Text(CrewSheets.Pages(planned, Paper.A4, Day, "es")), StringComparison.Ordinal);
        Assert.Contains("tubes 3 m (10 ft) away at least", Text(StepCards.Pages(planned, Paper.A4, Day, "en")), StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_step_uses_is_counted_in_the_pieces_that_lie_in_the_pile()
    {
        PlannedTunnel planned = Planned("gothic");
        int boards = planned.Cuts!.Sheets.SelectMany(sheet => sheet.Bars).SelectMany(bar => bar.Pieces).Count(piece => piece.MemberId is "left-baseboard" or "right-baseboard");
        Assert.True(boards > 2, "A side is longer than any board.");
        BuildStep step = planned.Steps!.Steps.First(each => each.Materials.Any(line => line.TraceIds.Contains("left-baseboard")));
        Assert.StartsWith($"{boards} pieces board", new PacketTableMaker(planned, planned.Tunnel!, CrewWords.English).Uses(step.Materials), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_kept_of_a_stick_is_drawn_as_kept_however_little_room_there_is()
    {
        PlannedTunnel planned = Planned("gothic");
        (double widthMm, double heightMm) = Paper.A4.DrawingSize(landscape: true);
        var sheet = new FigureSheet(widthMm, heightMm, "tunnel", "2026-03-01", planned.Units);
        ImmutableArray<CutBar> bars = [.. planned.Cuts!.Sheets.SelectMany(each => each.Bars)];
        Assert.Contains(bars, bar => bar.LeftoverUseful);
        Assert.All(bars, bar => Assert.All(CutBarsFigure.Left(bar, sheet), text => Assert.Equal(bar.LeftoverUseful, text.StartsWith("keep", StringComparison.Ordinal))));
    }

    [Fact]
    public void A_pull_too_small_for_the_tape_in_one_bay_is_told_over_the_bow_alone()
    {
        PlannedTunnel planned = Planned("example");
        (double widthMm, double heightMm) = Paper.A4.DrawingSize(landscape: true);
        var sheet = new FigureSheet(widthMm, heightMm, "tunnel", "2026-03-01", planned.Units);
        PullRow day = planned.Cover!.Pull!.Planned with { Advice = PullAdvice.Loose, PastSnugPerBay = Length.FromMillimetres(-0.4), PastSnugOverBow = Length.FromMillimetres(-3) };
        Assert.Equal("film at 15 °C: longer than snug by 3 mm over a bow", PullChart.Reading(planned.Cover.Pull, day, sheet));
    }

    [Fact]
    public void Coefficients_have_the_unit_that_is_theirs_and_no_more_digits_than_are_known()
    {
        PlannedTunnel planned = Planned(Bare);
        Table table = new PacketTables(planned, planned.Tunnel!).Strength!.Coefficients;
        Assert.Matches(@"^\d\.\d+$", table.Rows.First(row => row.Cells[0] == "ce").Cells[1]);
        Assert.Matches(@"^\d\.\d\d kPa$", table.Rows.First(row => row.Cells[0] == "qp").Cells[1]);
    }

    private static PlannedTunnel Planned(string name) => TunnelWorks.Plan(name switch
    {
        "example" => SamplePlans.Example("metric-9m"),
        "gothic" => PlanReader.Read(System.Text.Encoding.UTF8.GetBytes(StarterPlan.Write(BowKind.Gothic, UnitSystem.Metric))).Plan!,
        "round" => PlanReader.Read(System.Text.Encoding.UTF8.GetBytes(StarterPlan.Write(BowKind.Round, UnitSystem.Metric))).Plan!,
        _ => SamplePlans.FromJson(name),
    });

    // Text after text as it was set, so that a cell of a table is whole.
    private static string Text(ImmutableArray<PdfSheet> pages) => string.Join(" ", pages.SelectMany(page => page.Page.Marks.OfType<TextMark>()).Select(text => text.Text));

    // What a source says of its own sizes stands as it does there.
    private static IEnumerable<string> Cited(PlannedTunnel planned) => planned.Rules.Select(rule => rule.From.Place)
        .Concat(new PacketTables(planned, planned.Tunnel!).Strength?.Coefficients.Rows.Select(row => row.Cells[3]) ?? [])
        .Where(place => place.Length > 0).Distinct().OrderByDescending(place => place.Length);

    // Ten feet beside three metres may stand; so may "bow 9 in the middle".
    [GeneratedRegex(@"(?<![(\w])\d[\d./-]* ?(?:ft|lb|lbs|mil|mph|psf|psi|feet|foot|pounds?|pies|libras|pulgadas|inch|inches)\b|\d ?in(?=[ ,.;:)](?!the |all |a |its |front |space |concrete |which |\d|this |order ))|\d[″′]")]
    private static partial Regex Customary();
}
