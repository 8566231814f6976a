using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Hoopwright.BuildSteps;
using Hoopwright.Comparisons;
using Hoopwright.Cutting;
using Hoopwright.Diagnostics;
using Hoopwright.Frames;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Dxf;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Svg;
using Hoopwright.Strength;

namespace Hoopwright.Web.Engine;

/// <summary>
/// What the page asks of the engine, from text to text, so that it runs alike in a worker of the browser and in tests.
/// A plan goes in as the text of its file; results come out as the JSON that the command line prints.
/// </summary>
public static partial class EngineWork
{
    // A worker of the browser is one thread; where several ask at once, each remembers for itself.
    [ThreadStatic]
    private static EngineMemory? memory;

    private static EngineMemory Memory => memory ??= new();

    /// <summary>
    /// The quick look while someone types: what is wrong, the layout, and what to buy by the first cut list that comes to hand.
    /// What the tunnel stands is left out, which takes most of the time.
    /// </summary>
    /// <param name="document">The plan as text.</param>
    /// <returns>JSON: results in brief; figures, names.</returns>
    public static string Look(string document)
    {
        PlannedTunnel planned = Glance(document);
        return Json(json =>
        {
            WriteResults(json, planned, brief: true);
            json.WriteStartArray("figures");
            foreach (FigureOffer offer in Early(planned)) json.WriteStringValue(offer.Name);
            json.WriteEndArray();
        });
    }

    /// <summary>The drawing in sight while someone types; asked for after the look at the same plan, it takes little more than the drawing.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="figure">Its name without its number; the first is taken when there is none of that name.</param>
    /// <returns>JSON: drawing {name, title, description, svg} or null.</returns>
    public static string Draw(string document, string figure)
    {
        ImmutableArray<FigureOffer> offers = Early(Glance(document));
        return Json(json =>
        {
            json.WritePropertyName("drawing");
            if ((offers.FirstOrDefault(each => each.Name == figure) ?? offers.FirstOrDefault()) is { } wanted) WriteDrawing(json, wanted);
            else json.WriteNullValue();
        });
    }

    /// <summary>What the bows by themselves stand, long before everything is worked out.</summary>
    /// <param name="document">The plan as text.</param>
    /// <returns>JSON: use (a part of the strength; null when a bow buckles first), words, bow, bows, combinations, seconds (of the analyses alone); empty when nothing is entered to stand.</returns>
    public static string Stands(string document)
    {
        if (TunnelWorks.Plan(Read(document), depth: WorkDepth.Layout).Tunnel is not { } tunnel || StrengthPlanner.BowsAlone(tunnel) is not { } bows) return "";
        long start = Stopwatch.GetTimestamp();
        CombinationStrength worst = bows.Worst();
        TimeSpan took = Stopwatch.GetElapsedTime(start);
        return Json(json =>
        {
            if (worst.Utilisation is { } use) json.WriteNumber("use", Math.Round(use.Value, 4));
            else json.WriteNull("use");
            json.WriteString("words", worst.Words);
            json.WriteNumber("bow", worst.Bow);
            json.WriteNumber("bows", bows.Bows);
            json.WriteNumber("combinations", bows.Combinations);
            json.WriteNumber("seconds", Math.Round(took.TotalSeconds, 6));
        });
    }

    /// <summary>Any frame of beams, as the verb frame solves it.</summary>
    /// <param name="model">The frame file as text.</param>
    /// <returns>JSON: answer, the text that the command line writes for machines; table, that for people; seconds; diagnostics [severity, path, message, seen, accepted].</returns>
    public static string Frame(string model)
    {
        long start = Stopwatch.GetTimestamp();
        FrameAnswer answer = FrameFile.Solve(Encoding.UTF8.GetBytes(model));
        TimeSpan took = Stopwatch.GetElapsedTime(start);
        return Solved(FrameAnswerText.Json(answer, took), FrameAnswerText.Table(answer), took, answer.Diagnostics);
    }

    /// <summary>Any list of pieces, as the verb cut cuts it.</summary>
    /// <param name="job">The job file as text.</param>
    /// <returns>JSON: answer, the text that the command line writes for machines; table, that for people; seconds; diagnostics [severity, path, message, seen, accepted].</returns>
    public static string Cut(string job)
    {
        long start = Stopwatch.GetTimestamp();
        CutFileAnswer answer = CutFile.Solve(Encoding.UTF8.GetBytes(job));
        TimeSpan took = Stopwatch.GetElapsedTime(start);
        return Solved(CutFileJson.Of(answer, took), CutFileSheet.Of(answer), took, answer.Diagnostics);
    }

    /// <summary>What became of a file, for machines and for people.</summary>
    private static string Solved(byte[] answer, string table, TimeSpan took, ImmutableArray<Diagnostic> diagnostics) => Json(json =>
    {
        json.WriteString("answer", Encoding.UTF8.GetString(answer));
        json.WriteString("table", table);
        json.WriteNumber("seconds", Math.Round(took.TotalSeconds, 6));
        json.WritePropertyName("diagnostics");
        DiagnosticJson.Write(json, diagnostics);
    });

    /// <summary>Everything, with the drawings that need it.</summary>
    /// <param name="document">The plan as text.</param>
    /// <returns>JSON: results, as the command line prints them, and drawings [name, title, description, svg] of what it stands, film and cuts.</returns>
    public static string Whole(string document)
    {
        PlannedTunnel planned = WholePlan(document);
        ImmutableArray<FigureOffer> offers = planned.Tunnel is null ? [] : TunnelFigures.Offers(planned, Sheet(planned));
        return Json(json =>
        {
            WriteResults(json, planned);
            json.WriteStartArray("drawings");
            foreach (FigureOffer offer in offers.Where(each => each.NeedsWorks)) WriteDrawing(json, offer);
            json.WriteEndArray();
        });
    }

    /// <summary>The packet to take away.</summary>
    /// <param name="wish">What of it.</param>
    /// <returns>The bytes of one file; empty when the plan has errors, or does not say where on the earth the map is to be.</returns>
    public static byte[] Packet(PacketWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        PlannedTunnel planned = WholePlan(wish.Document);
        if (planned.Tunnel is null) return [];
        (Paper size, DateOnly day) = (wish.Paper == "a4" ? Paper.A4 : Paper.Letter, DateOnly.ParseExact(wish.Date, "yyyy-MM-dd", CultureInfo.InvariantCulture));
        if (wish.What == "cards") return [.. StepCards.Write(planned, size, day, wish.Crew).Bytes];
        if (wish.What == "cards-recover") return [.. StepCards.Write(planned, size, day, wish.Crew, BuildJob.Recover).Bytes];
        if (wish.What == "crew") return [.. CrewSheets.Write(planned, size, day, wish.Crew).Bytes];
        ImmutableArray<PacketFile> files = PacketWriter.Write(planned, size, day, choice: new PacketChoice
        {
            Crew = wish.Crew,
            Weather = WeatherOf(planned, wish.Weather, wish.Clock),
            Only = FormsOf(wish.What),
            DrawnOn = wish.Drawings switch { "tabloid" => Paper.Tabloid, "a3" => Paper.A3, _ => null },
            Dimensions = wish.Dimensions == "exploded" ? DxfDimensions.Exploded : DxfDimensions.Entities,
            Revision = wish.Revision is { Length: > 0 } revision ? revision : null,
        });
        if (wish.What is not ("pdf" or "xlsx" or "glb" or "geojson")) return ZipWriter.Write(files);
        return files.FirstOrDefault(file => file.Name.EndsWith("." + wish.What, StringComparison.Ordinal)) is { } file ? [.. file.Bytes] : [];
    }

    private static ImmutableHashSet<PacketForm> FormsOf(string what) => what switch
    {
        "pdf" => [PacketForm.Pdf],
        "xlsx" => [PacketForm.Xlsx],
        "glb" => [PacketForm.Gltf],
        "dxf" => [PacketForm.Dxf],
        "geojson" => [PacketForm.GeoJson],
        _ => [],
    };

    /// <summary>Why a result is what it is.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="path">The result's path, as in the results.</param>
    /// <returns>See <see cref="ExplanationJson"/>; empty when nobody has said.</returns>
    public static string Why(string document, string path)
    {
        PlannedTunnel planned = WholePlan(document);
        using Explainer explainer = Explainer.Of(planned);
        return explainer.Explain(path) is { } why ? ExplanationJson.Of(why).ToJsonString() : "";
    }

    /// <summary>The tunnel as lines and faces in space, metres, for a view that can be turned.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="withStrength">True to show how the worst bow moves too, which takes as long as everything.</param>
    /// <returns>
    /// JSON: profile [[x, z]], bows [[y, base]], tubeRadius, ends [y, base, doors [[left, right, top]]] that are covered, moved {bow, times,
    /// mostText, points [[x, z]]} or null, members [role, a, b, across, deep, round]; empty when the plan has errors.
    /// </returns>
    public static string Scene(string document, bool withStrength)
    {
        PlannedTunnel planned = withStrength ? WholePlan(document) : TunnelWorks.Plan(Read(document), depth: WorkDepth.Layout);
        if (planned.Tunnel is not { } tunnel) return "";
        return Json(json =>
        {
            json.WriteStartArray("profile");
            foreach (PlanePoint point in tunnel.Bow.FilmLine.Outline(Length.FromMillimetres(4))) Numbers(json, point.Across.Metres, point.Up.Metres);
            json.WriteEndArray();
            json.WriteStartArray("bows");
            foreach (BowStation bow in tunnel.Stations) Numbers(json, bow.Along.Metres, bow.Base.Metres);
            json.WriteEndArray();
            json.WriteNumber("tubeRadius", tunnel.BowTube.Outside.Metres / 2);
            List(json, "ends", tunnel.Ends.Where(end => end.Closing == EndClosing.Framed), end =>
            {
                json.WriteNumber("y", end.Along.Metres);
                json.WriteNumber("base", (end.IsFront ? tunnel.Stations[0] : tunnel.Stations[^1]).Base.Metres);
                json.WriteStartArray("doors");
                foreach (DoorOpening door in end.Doors) Numbers(json, door.RoughLeft.Metres, door.RoughRight.Metres, door.ClearHeight.Metres);
                json.WriteEndArray();
            });
            json.WritePropertyName("moved");
            if (planned.Strength?.Worst is { } worst) Moved(json, worst, planned.Units);
            else json.WriteNullValue();
            List(json, "members", tunnel.Members.Where(member => member.Role != MemberRole.Bow), member =>
            {
                json.WriteString("id", member.Id);
                json.WriteString("role", member.Role.ToString());
                (double across, double deep, bool round) = member.Section.Match(
                    tube => (tube.Outside.Metres, tube.Outside.Metres, tube.Form == TubeForm.Round), board => (board.Thickness.Metres, board.Depth.Metres, false));
                json.WritePropertyName("a");
                Numbers(json, member.Start.X.Metres, member.Start.Y.Metres, member.Start.Z.Metres);
                json.WritePropertyName("b");
                Numbers(json, member.End.X.Metres, member.End.Y.Metres, member.End.Z.Metres);
                json.WriteNumber("across", across);
                json.WriteNumber("deep", deep);
                json.WriteBoolean("round", round);
            });
        });
    }

    /// <summary>Two plans side by side.</summary>
    /// <param name="before">The first plan as text.</param>
    /// <param name="after">The second plan as text.</param>
    /// <returns>JSON: comparison, as the command line prints it; drawing {name, title, description, svg} of both bows, null when either plan has errors.</returns>
    public static string Compare(string before, string after)
    {
        PlannedTunnel first = WholePlan(before), second = WholePlan(after);
        return Json(json =>
        {
            json.WritePropertyName("comparison");
            json.WriteRawValue(ComparisonJson.Write(Comparison.Of(first, second)), skipInputValidation: true);
            json.WritePropertyName("drawing");
            if (first.Tunnel is null || second.Tunnel is null) json.WriteNullValue();
            else WriteDrawing(json, new FigureOffer("before-after", FigureChapter.Strength, true, () => BeforeAfterFigure.Draw(first, second, "", Sheet(second), "1 of 1")));
        });
    }

    /// <summary>The plan as the writer of plan files writes it: fields in order, as typed.</summary>
    /// <param name="document">The plan as text.</param>
    public static string Tidy(string document)
    {
        PlanReading reading = Read(document);
        return reading.IsUsable ? Encoding.UTF8.GetString(PlanWriter.Write(reading.Plan)) : document;
    }

    private static PlannedTunnel Glance(string document)
    {
        if (Memory.Glanced is { } known && known.Document == document) return known.Planned;
        PlannedTunnel planned = TunnelWorks.Plan(Read(document), effort: CutEffort.Least, depth: WorkDepth.Orders, memory: Memory.Cuts);
        Memory.Glanced = (document, planned);
        return planned;
    }

    // The drawings that need nothing but the layout.
    private static ImmutableArray<FigureOffer> Early(PlannedTunnel planned) => planned.Tunnel is null ? [] : TunnelFigures.Offers(planned, Sheet(planned), onlyLayout: true);

    private static PlannedTunnel WholePlan(string document)
    {
        if (Memory.Last is { } known && known.Document == document) return known.Planned;
        PlannedTunnel planned = TunnelWorks.Plan(Read(document), memory: Memory.Cuts);
        Memory.Last = (document, planned);
        return planned;
    }

    private static PlanReading Read(string document)
    {
        if (Memory.Read is { } known && known.Document == document) return known.Reading;
        PlanReading reading = PlanReader.Read(Encoding.UTF8.GetBytes(document));
        Memory.Read = (document, reading);
        return reading;
    }

    /// <summary>Wide enough that a drawing's text is read on a screen that shows it at the width of a tablet.</summary>
    private static FigureSheet Sheet(PlannedTunnel planned) => new(262, 193, planned.Plan.Name ?? "", "", planned.Units);

    private static void WriteResults(Utf8JsonWriter json, PlannedTunnel planned, bool brief = false)
    {
        json.WritePropertyName("results");
        json.WriteRawValue(ResultsJson.Write(planned, brief), skipInputValidation: true);
    }

    private static void WriteDrawing(Utf8JsonWriter json, FigureOffer offer)
    {
        Drawing drawing = offer.Draw();
        string svg = SvgWriter.Write(drawing, withFont: false, idPrefix: "drawing-" + offer.Name + "-");
        json.WriteStartObject();
        json.WriteString("name", offer.Name);
        json.WriteString("title", drawing.Title);
        json.WriteString("description", drawing.Description);
        // As it stands in a page: without the declaration that only a file of its own has.
        json.WriteString("svg", svg[svg.IndexOf("<svg", StringComparison.Ordinal)..]);
        json.WriteEndObject();
    }

    private static void Moved(Utf8JsonWriter json, BowDiagram worst, UnitSystem units)
    {
        json.WriteStartObject();
        json.WriteNumber("bow", worst.Bow);
        json.WriteNumber("times", worst.TimesDrawn);
        json.WriteString("mostText", TapeText.OfMovement(worst.MostMoved, units));
        json.WriteStartArray("points");
        foreach (BowDiagramPoint at in worst.Points) Numbers(json, (at.Place.Across + (at.MovedAcross * worst.TimesDrawn)).Metres, (at.Place.Up + (at.MovedUp * worst.TimesDrawn)).Metres);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Numbers(Utf8JsonWriter json, params ReadOnlySpan<double> values)
    {
        json.WriteStartArray();
        foreach (double value in values) json.WriteNumberValue(Math.Round(value, 5));
        json.WriteEndArray();
    }

    private static void List<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> fields)
    {
        json.WriteStartArray(name);
        foreach (T item in items)
        {
            json.WriteStartObject();
            fields(item);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static string Json(Action<Utf8JsonWriter> fields)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            fields(json);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }
}
