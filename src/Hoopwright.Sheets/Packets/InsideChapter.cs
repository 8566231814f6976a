using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Diagnostics;
using Hoopwright.Inside;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Charts;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Packets;

/// <summary>The pages on the year inside, by a weather file of a year that goes with the packet.</summary>
internal static class InsideChapter
{
    /// <summary>The charts of the year; none without one.</summary>
    public static ImmutableArray<(string Name, Drawing Drawing)> Charts(InsideReport? report, FigureSheet sheet) =>
        report is null ? [] : [.. InsideCharts.Offers(report, sheet).Select(offer => (offer.Name, offer.Draw()))];

    /// <summary>Heat and cold, frost, light, air, how it could lie; none without a year.</summary>
    public static ImmutableArray<Table> TablesOf(InsideReport? report, UnitSystem units) => report is null ? [] :
        [Warmth(report, units), Frost(report, units), Light(report), Air(report, units), Headings(report, units), Sources()];

    /// <summary>Sets the chapter; nothing without a year.</summary>
    public static void Set(PacketBook book, InsideReport? report, UnitSystem units, ImmutableArray<(string Name, Drawing Drawing)> charts)
    {
        if (report is null) return;
        book.Chapter("The year inside").Caution("Heat, fumes and wires", InsideSheet.Caution);
        book.Paragraph($"Worked out hour by hour with the weather of {(report.Weather.Length > 0 ? report.Weather : "the file")}{(report.TypicalYear ? ", a typical year, which has no extremes" : "")}. Floor {TapeText.Of(report.Floor, units)}, film {TapeText.Of(report.Cover, units)}, air {TapeText.Of(report.Volume, units)}.");
        book.Table(Warmth(report, units)).Table(Frost(report, units)).Paragraph(InsideSheet.GrowthNote);
        Lines(InsideSheet.Season(report, units));
        book.Heading("How sure that is").Paragraph(InsideSheet.Band(report, units)).Paragraph(InsideSheet.Measured);
        book.Table(Light(report)).Paragraph($"{InsideSheet.LightNote(report)} {InsideSheet.EdgeNote(report, units)}");
        book.Table(Air(report, units));
        Lines(InsideSheet.Opens(report, units));
        book.Heading("Heater and fans").Points(InsideSheet.Machines(report, units));
        book.Table(Headings(report, units)).Points(InsideSheet.Lies(report, units));
        foreach ((_, Drawing drawing) in charts) book.Figure(drawing);
        ImmutableArray<Diagnostic> seen = [.. report.Diagnostics.Where(each => each.Severity == Severity.Warning)];
        if (!seen.IsEmpty) book.Heading("Look at these again, for the year inside").Points(seen.Select(Said));
        ImmutableArray<Diagnostic> assumed = [.. report.Diagnostics.Where(each => each.Severity == Severity.Assumption)];
        if (!assumed.IsEmpty) book.Heading("Taken for the year inside, to confirm").Points(assumed.Select(Said));
        book.Table(Sources());

        void Lines(string text)
        {
            foreach (string line in text.Split('\n')) book.Paragraph(line);
        }
    }

    private static string Said(Diagnostic each) =>
        $"{each.Message} {(each.Seen is { } seen ? $"Seen: {seen}. " : "")}{(each.Accepted is { } taken ? $"{(each.Severity == Severity.Assumption ? "Taken" : "Would do")}: {taken}. " : "")}({each.Path})";

    private static Table Warmth(InsideReport report, UnitSystem units) => new("inside-warmth", "Heat and cold",
        [
            new("Kept", 3), new("Hottest", 1.6, TextAlign.End), new("Coldest", 1.6, TextAlign.End), new("Nights gain", 1.8, TextAlign.End), new("At the least", 1.8, TextAlign.End),
            new("Too hot", 1.6, TextAlign.End), new("Too cold", 1.6, TextAlign.End),
        ],
        [
            .. report.Ways.Select(way => TableRow.Of(InsideSheet.Name(way.Way), TapeText.Of(way.Highest, units), TapeText.Of(way.Lowest, units),
                way.Way == InsideWay.Outside ? "" : TapeText.Of(way.NightLift, units), way.Way == InsideWay.Outside ? "" : TapeText.Of(way.LeastNightLift, units),
                Hours(way.HoursTooHot), Hours(way.HoursTooCold))),
        ]);

    private static Table Frost(InsideReport report, UnitSystem units) => new("inside-frost", "Frost and growth",
        [new("Kept", 3), new("Days with frost", 2, TextAlign.End), new("Last in spring", 2, TextAlign.End), new("First in autumn", 2, TextAlign.End), new("Growth", 2.4, TextAlign.End)],
        [
            .. report.Ways.Select(way => TableRow.Of(
                InsideSheet.Name(way.Way), way.FrostDays.ToString(CultureInfo.InvariantCulture), InsideSheet.Day(way.LastFrost), InsideSheet.Day(way.FirstFrost), TapeText.Of(way.Growth, units))),
        ]);

    private static Table Light(InsideReport report)
    {
        int last = report.Across.Length - 1;
        return new("inside-light", "Light by month, moles a m² and day",
            [
                new("Month", 2), new("Outside", 1.4, TextAlign.End), new("Floor", 1.4, TextAlign.End), new("Left edge", 1.6, TextAlign.End), new("Middle", 1.4, TextAlign.End),
                new("Right edge", 1.6, TextAlign.End), new("Lost to shade", 2, TextAlign.End),
            ],
            [
                .. report.Light.Select(month => TableRow.Of(
                    CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month.Month), InsideSheet.Mol(month.Outside), InsideSheet.Mol(month.Floor), InsideSheet.Mol(month.Across[0]),
                    InsideSheet.Mol(month.Across[last / 2]), InsideSheet.Mol(month.Across[last]), Percent(month.LostToShade))),
            ]);
    }

    private static Table Air(InsideReport report, UnitSystem units) => new("inside-air", "Air through what opens, 9 °F (5 K) warmer inside",
        [new("Open", 1.6), new("Free", 1.6, TextAlign.End), new("In a calm", 3, TextAlign.End), new("In usual wind", 3, TextAlign.End), new("At most", 3, TextAlign.End)],
        [
            .. report.Air.Select(air => TableRow.Of(
                InsideSheet.Name(air.Wide), TapeText.Of(air.Free, units), InsideSheet.Flow(report, air.ByWarmth, units), InsideSheet.Flow(report, air.Usual, units), InsideSheet.Flow(report, air.Most, units))),
        ]);

    private static Table Headings(InsideReport report, UnitSystem units) => new("inside-headings", "How it could lie here, front and back alike",
        [
            new("Front faces", 1.6, TextAlign.End), new("Winter light on the floor", 2.4, TextAlign.End), new("Darkest place", 2, TextAlign.End), new("Wind across, warm hours", 2.4, TextAlign.End),
            new("Wind across, windiest hours", 2.6, TextAlign.End),
        ],
        [
            .. report.Headings.Select(each => TableRow.Of(
                InsideSheet.Faces(each), InsideSheet.Mol(each.WinterLight), Percent(each.Darkest), TapeText.Of(each.AirAcross, units), TapeText.Of(each.StormAcross, units))),
        ]);

    private static Table Sources() => new("inside-sources", "Where the formulas of the year inside come from",
        [new("For", 2), new("Source", 5)],
        [.. InsideSheet.Named.Select(each => TableRow.Of(each.What, each.Formula.Source.ToString()))]);

    private static string Hours(int hours) => hours.ToString(CultureInfo.InvariantCulture) + " h";

    private static string Percent(Ratio part) => Math.Abs(Math.Round(part.Percent)).ToString("0", CultureInfo.InvariantCulture) + " %";
}
