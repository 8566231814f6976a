using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Hoopwright.BeforeCuts;
using Hoopwright.Cover.Pull;
using Hoopwright.Layout;
using Hoopwright.Orders;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Running;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Dxf;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.GeoJson;
using Hoopwright.Sheets.Gltf;
using Hoopwright.Sheets.Ics;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Sheets.Svg;
using Hoopwright.Sheets.Tables;
using Hoopwright.Sheets.Words;

namespace Hoopwright.Sheets.Packets;

/// <summary>The whole packet: pages to print, drawings, tables, model, calendar, map, the results and the plan, with a list of them all.</summary>
public static class PacketWriter
{
    /// <summary>Every file of the packet, the list of them first.</summary>
    /// <param name="planned">A plan that was worked out; it must have a tunnel.</param>
    /// <param name="paper">Letter or A4.</param>
    /// <param name="date">The day on the sheets. It comes from outside, so that the same plan gives the same bytes.</param>
    /// <param name="sideBySide">How to run what needs nothing of each other; null for one after the other.</param>
    /// <param name="choice">What goes into it; null for everything without crew sheets.</param>
    public static ImmutableArray<PacketFile> Write(PlannedTunnel planned, Paper paper, DateOnly date, SideBySide? sideBySide = null, PacketChoice? choice = null)
    {
        Tunnel tunnel = Built(planned);
        sideBySide ??= InTurn.Run;
        choice ??= new PacketChoice();
        string? crew = choice.Crew is "en" ? null : choice.Crew;
        CrewWords crewWords = CrewWords.Of(choice.Crew ?? CrewWords.English.Language);
        CoverWeather? weather = choice.Weather;
        ImmutableArray<TunnelFigure> figures = [];
        FigureSheet sheet = Sheet(planned, choice.DrawnOn ?? paper, date) with { Revision = choice.Revision };
        ImmutableArray<(string Name, Drawing Drawing)> charts = WeatherChapter.Charts(weather, sheet);
        ImmutableArray<Table> weatherTables = WeatherChapter.TablesOf(weather, planned.Units);
        ImmutableArray<(string Name, Drawing Drawing)> insideCharts = InsideChapter.Charts(weather?.Inside, sheet);
        PacketTables? tables = null;
        PacketFile[] pdf = [], crewPdf = [], cards = [], upkeep = [], calendar = [], svg = [], dxf = [], csv = [], workbook = [], model = [], map = [], texts = [];
        sideBySide(
            () => figures = choice.Has(PacketForm.Pdf) || choice.Has(PacketForm.Svg) || choice.Has(PacketForm.Dxf) ? TunnelFigures.Of(planned, sheet, sideBySide) : [],
            () => tables = choice.Has(PacketForm.Pdf) || choice.Has(PacketForm.Csv) ? new PacketTables(planned, tunnel) : null,
            () => workbook = choice.Has(PacketForm.Xlsx) ? [new PacketFile("tables/00-tables.xlsx", [.. PacketWorkbook.Write(planned, paper)]) { Says = "Orders, costs, takeoff, cuts and set-out as a workbook with totals" }] : [],
            () => model = choice.Has(PacketForm.Gltf) ? [new PacketFile("model/tunnel.glb", [.. GltfWriter.Write(tunnel, Called(planned))]) { Says = "The tunnel in space, part by part" }] : [],
            () => map = choice.Has(PacketForm.GeoJson) && GeoJsonWriter.Write(tunnel, Called(planned)) is { } place ? [new PacketFile("model/site.geojson", [.. place]) { Says = "Footprint and stakes on the map" }] : [],
            () => texts = choice.Has(PacketForm.Json)
                ? [new PacketFile("results.json", [.. ResultsJson.Write(planned)]) { Says = "All results" }, new PacketFile("plan.json", [.. PlanWriter.Write(planned.Plan)]) { Says = "The plan itself" }] : []);
        sideBySide(
            () => pdf = choice.Has(PacketForm.Pdf) ? [new PacketFile("packet.pdf", [.. PdfWriter.Write(Book(planned, tunnel, tables!, figures, paper, date, choice.DrawnOn, WeatherPages), Details(planned, date))]) { Says = "The packet: begin here" }] : [],
            () => crewPdf = choice.Has(PacketForm.Pdf) && choice.Crew is { } language ? [CrewSheets.Write(planned, paper, date, language) with { Says = "Sheets for those who set out, dig, cover and cut" }] : [],
            () => cards = choice.Has(PacketForm.Pdf) ? [.. InLanguages(crew, language => StepCards.Write(planned, paper, date, language) with { Says = "A card for each step of the build" })] : [],
            () => upkeep = choice.Has(PacketForm.Pdf) ? [.. InLanguages(crew, language => UpkeepSheets.Write(planned, paper, date, language) with { Says = "Storms, rounds and the next film" })] : [],
            () => calendar = choice.Has(PacketForm.Ics) && planned.Upkeep is { } report ? [new PacketFile("upkeep.ics", [.. UpkeepIcs.Write(report, planned.Plan, crewWords, date)]) { Says = "Rounds and the next film as a calendar" }] : [],
            () => dxf = choice.Has(PacketForm.Dxf) ? [.. figures.Where(figure => figure.Drawing.Scale is not null).Select(figure => new PacketFile($"drawings/{figure.Name}.dxf", [.. DxfWriter.Write(figure.Drawing, planned.Units, choice.Dimensions)]) { Says = figure.Drawing.Title })] : [],
            () => csv = choice.Has(PacketForm.Csv) ? [.. tables!.All.Concat(weatherTables).Concat(InsideChapter.TablesOf(weather?.Inside, planned.Units)).Select((table, index) => new PacketFile(string.Create(CultureInfo.InvariantCulture, $"tables/{index + 1:00}-{table.Name}.csv"), Text(CsvWriter.Write(table))) { Says = table.Title })] : [],
            () => svg = choice.Has(PacketForm.Svg) ? [.. figures.Select(figure => (figure.Name, figure.Drawing)).Concat(charts).Concat(insideCharts).Select(drawn => new PacketFile($"drawings/{drawn.Name}.svg", [.. SvgWriter.Bytes(drawn.Drawing).Span]) { Says = drawn.Drawing.Title })] : []);
        ImmutableArray<PacketFile> files = [.. pdf, .. crewPdf, .. cards, .. upkeep, .. calendar, .. svg, .. dxf, .. workbook, .. csv, .. model, .. map, .. texts];
        return [PacketIndex.Write(Called(planned), date, files, choice.Staying), .. files];

        void WeatherPages(PacketBook book)
        {
            WeatherChapter.Set(book, weather, weatherTables, charts);
            InsideChapter.Set(book, weather?.Inside, planned.Units, insideCharts);
        }

        static IEnumerable<PacketFile> InLanguages(string? crew, Func<string, PacketFile> write) =>
            crew is null ? [write(CrewWords.English.Language)] : [write(CrewWords.English.Language), write(crew)];
    }

    /// <summary>The pages of the PDF alone.</summary>
    /// <param name="planned">A plan that was worked out; it must have a tunnel.</param>
    /// <param name="paper">Letter or A4.</param>
    /// <param name="date">The day on the sheets.</param>
    /// <param name="drawnOn">The paper of the drawings; that of the pages when null.</param>
    public static ImmutableArray<PdfSheet> Pages(PlannedTunnel planned, Paper paper, DateOnly date, Paper? drawnOn = null)
    {
        Tunnel tunnel = Built(planned);
        return Book(planned, tunnel, new PacketTables(planned, tunnel), TunnelFigures.Of(planned, Sheet(planned, drawnOn ?? paper, date)), paper, date, drawnOn);
    }

    private const int LongestName = 200;

    internal static Tunnel Built(PlannedTunnel planned) => planned.Tunnel ?? throw new ArgumentException("The plan has errors, so there is no packet.", nameof(planned));

    /// <summary>The name as it was typed, for forms that show any letter.</summary>
    internal static string Called(PlannedTunnel planned) => planned.Plan.Name is { Length: > 0 } name ? name : "Tunnel";

    /// <summary>The name as sheets carry it: one line, not longer than names are.</summary>
    internal static string Name(PlannedTunnel planned)
    {
        string name = OneLine(planned.Plan.Name ?? "");
        return name.Length == 0 ? "Tunnel" : name;
    }

    /// <summary>What a person typed, as a line of a table can carry it.</summary>
    internal static string OneLine(string typed)
    {
        string line = Typeface.Shown(typed).Trim();
        return line.Length <= LongestName ? line : line[..LongestName].TrimEnd() + "…";
    }

    private static PdfDetails Details(PlannedTunnel planned, DateOnly date) =>
        new(Name(planned), "Plan of a film-covered growing tunnel", new DateTimeOffset(date.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero));

    internal static string Written(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static FigureSheet Sheet(PlannedTunnel planned, Paper paper, DateOnly date)
    {
        (double widthMm, double heightMm) = paper.DrawingSize(landscape: true);
        return new FigureSheet(widthMm, heightMm, Name(planned), Written(date), planned.Units) { Paper = paper.Name };
    }

    private static ImmutableArray<byte> Text(string text) => [.. Encoding.UTF8.GetBytes(text)];

    private static ImmutableArray<PdfSheet> Book(PlannedTunnel planned, Tunnel tunnel, PacketTables tables, ImmutableArray<TunnelFigure> figures, Paper paper, DateOnly date, Paper? drawnOn, Action<PacketBook>? afterCovering = null)
    {
        string name = Name(planned);
        OrderList orders = planned.Orders ?? throw new ArgumentException("The plan was not worked out to its end.", nameof(planned));
        var book = new PacketBook(paper, name) { DrawingPaper = drawnOn, Drawings = NumbersOf(figures.Select(figure => (figure.Shows, figure.Drawing.Sheet))) };
        book.Cover(name,
        [
            .. planned.Plan.Site.Place is { } place ? (ImmutableArray<string>)[place] : [],
            $"{TapeText.Of(tunnel.Span, planned.Units)} wide, {TapeText.Of(tunnel.Length, planned.Units)} long, {tunnel.Bow.Kind.ToString().ToLowerInvariant()} bows, {tunnel.Stations.Length} of them",
            "Made " + Written(date),
            .. planned.Plan.Note is { } note ? (ImmutableArray<string>)[note] : [],
        ]);
        DesignSummary.Set(book, planned, tunnel, orders);
        ReviewChapter.Set(book, planned, tunnel);
        SiteBookChapter.Set(book, planned, tables.SiteBook);
        book.Chapter("Steps", "steps").Paragraph(StepsNote(planned.Units)).Table(tables.BuildSteps).Table(tables.Tools);
        book.Chapter("Set-out and frame", "set-out-chapter").Caution(PacketCautions.Digging(planned.Units));
        book.Table(tables.SideMarks).Table(tables.Ordinates);
        if (!tables.Purlins.Rows.IsEmpty) book.Table(tables.Purlins);
        Drawn(FigureChapter.SetOut);
        book.Chapter("Ground and ends").Caution(PacketCautions.Concrete).Mind(planned, CrewWords.English, CutCheckKind.Concrete, CutCheckKind.Posts);
        if (!tunnel.Holes.IsEmpty) book.Table(tables.Holes);
        foreach (Table posts in tables.EndPosts) book.Table(posts);
        if (tunnel.Ends.Any(end => !end.Doors.IsEmpty)) book.Table(tables.Doors);
        Drawn(FigureChapter.Ends);
        book.Chapter("Cover", "cover").Caution(PacketCautions.Film).Mind(planned, CrewWords.English, CutCheckKind.Film);
        book.Table(tables.Film).Table(tables.FilmMarks).Paragraph(Cuts.Film.FilmCutPlan.FoldNote).Paragraph(Cuts.Film.FilmCutPlan.FaceNote).Table(tables.Fastening).Table(tables.Pull).Paragraph(PullNote(planned.Cover!.Pull, planned.Units));
        Drawn(FigureChapter.Cover);
        FasteningChapter.Set(book, planned, tunnel, tables, CrewWords.English);
        Drawn(FigureChapter.Covering);
        afterCovering?.Invoke(book);
        book.Chapter("Orders", "orders").Paragraph($"{orders.PriceNote} Currency: {orders.Currency}. {(orders.Unpriced > 0 ? string.Create(CultureInfo.InvariantCulture, $"The sum is without {orders.Unpriced} lines that have no price.") : "")}".Trim());
        book.Table(tables.Stages);
        foreach (Table order in tables.Orders) book.Table(order);
        book.Chapter("Cut lists").Caution(PacketCautions.Saw).Mind(planned, CrewWords.English, CutCheckKind.Boards, CutCheckKind.Channel, CutCheckKind.Posts);
        foreach (Table cuts in tables.Cuts) book.Table(cuts);
        Drawn(FigureChapter.Cuts);
        book.Chapter("Takeoff").Paragraph("What joints of long runs take (sleeves, plates and their screws) follows from where they fall; it is in the orders, not here.").Table(tables.Takeoff);
        if (planned.Strength is { } strength && tables.Strength is { } stands) StrengthChapter.Set(book, strength, stands);
        Drawn(FigureChapter.Strength);
        book.Chapter("Rules and values").Table(tables.Rules);
        book.Chapter("Sources").Table(tables.Sources);
        return book.Pages();

        void Drawn(FigureChapter chapter)
        {
            foreach (TunnelFigure figure in figures.Where(figure => figure.Chapter == chapter)) book.Figure(figure.Drawing, figure.Shows);
        }
    }

    /// <summary>The number of each drawing's first sheet, by what it shows.</summary>
    internal static ImmutableDictionary<string, string> NumbersOf(IEnumerable<(string Shows, string? Sheet)> drawings) =>
        drawings.Where(each => each.Sheet is not null).DistinctBy(each => each.Shows).ToImmutableDictionary(each => each.Shows, each => each.Sheet!, StringComparer.Ordinal);

    private static string StepsNote(UnitSystem units) =>
        "Work is what one person would take: likely, and between least and most. No source splits the work of a tunnel by task; the times are from memory, set against the published hours for " + units switch { UnitSystem.UsCustomary => "30 by 96 ft", UnitSystem.Metric => "9 by 29 m" } + ". Each step has a card of its own in cards.pdf.";

    private static string PullNote(PullPlan pull, UnitSystem units) =>
        $"Snug is smooth without force, laid flat by hand. Measure the film, not the air, where it lies in the sun; film between {TapeText.Of(pull.Coldest, units)} and {TapeText.Of(pull.Hottest, units)} is what the year was taken to bring. "
        + $"{(pull.HasRoom ? "" : "No pull keeps both limits over so wide a year: the pull given lies midway. ")}"
        + $"{pull.Hands} people pull, one to a rope. Film gives way to a steady pull within weeks: the cold pull lies between both values, and after the first warm weeks it hangs in the heat as if it had been laid just snug. Stiffness and yield of film are from memory or ranges; the maker of your film knows better.";
}
