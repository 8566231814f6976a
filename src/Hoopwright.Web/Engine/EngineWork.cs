using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Hoopwright.Comparisons;
using Hoopwright.Cutting;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Svg;

namespace Hoopwright.Web.Engine;

/// <summary>
/// What the page asks of the engine, from text to text, so that it runs alike in a worker of the browser and in tests.
/// A plan goes in as the text of its file; results come out as the JSON that the command line prints.
/// </summary>
public static class EngineWork
{
    // Most changes leave most cutting jobs as they were.
    private static readonly CutMemory Memory = new();

    // The plan that was worked out last: why, packet and comparison mostly ask about the very plan that is shown.
    private static (string Document, PlannedTunnel Planned)? last;

    /// <summary>The quick look while someone types: what is wrong, the layout, and the drawing that is in sight.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="figure">The name of the drawing in sight, without its number; the first is taken when there is none of that name.</param>
    /// <returns>JSON: results, as the command line prints them but for what rests on the layout; figures, names; drawing {name, title, description, svg} or null.</returns>
    public static string Look(string document, string figure)
    {
        PlannedTunnel planned = TunnelWorks.Plan(Read(document), depth: WorkDepth.Layout);
        ImmutableArray<FigureOffer> offers = planned.Tunnel is { } tunnel ? TunnelFigures.Offers(tunnel, null, null, null, Sheet(planned)) : [];
        return Json(json =>
        {
            WriteResults(json, planned, withMembers: false);
            json.WriteStartArray("figures");
            foreach (FigureOffer offer in offers) json.WriteStringValue(offer.Name);
            json.WriteEndArray();
            json.WritePropertyName("drawing");
            if ((offers.FirstOrDefault(each => each.Name == figure) ?? offers.FirstOrDefault()) is { } wanted) WriteDrawing(json, wanted);
            else json.WriteNullValue();
        });
    }

    /// <summary>Orders and a first cut list, without what the tunnel stands: soon there, not yet the last word on cuts.</summary>
    /// <param name="document">The plan as text.</param>
    /// <returns>JSON: results.</returns>
    public static string Orders(string document) =>
        Json(json => WriteResults(json, TunnelWorks.Plan(Read(document), effort: CutEffort.Least, depth: WorkDepth.Orders, memory: Memory), withMembers: false));

    /// <summary>Everything, with the drawings that need it.</summary>
    /// <param name="document">The plan as text.</param>
    /// <returns>JSON: results, as the command line prints them, and drawings [name, title, description, svg] of what it stands, film and cuts.</returns>
    public static string Whole(string document)
    {
        PlannedTunnel planned = WholePlan(document);
        ImmutableArray<FigureOffer> offers = planned.Tunnel is { } tunnel ? TunnelFigures.Offers(tunnel, planned.Film, planned.Cuts, planned.Strength, Sheet(planned)) : [];
        return Json(json =>
        {
            WriteResults(json, planned);
            json.WriteStartArray("drawings");
            foreach (FigureOffer offer in offers.Where(each => each.NeedsWorks)) WriteDrawing(json, offer);
            json.WriteEndArray();
        });
    }

    /// <summary>The whole packet as one zip file.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="paper">letter or a4.</param>
    /// <param name="date">The day on the sheets, as 2026-03-01.</param>
    /// <param name="pdfOnly">True for the PDF alone.</param>
    /// <returns>The bytes; empty when the plan has errors.</returns>
    public static byte[] Packet(string document, string paper, string date, bool pdfOnly)
    {
        PlannedTunnel planned = WholePlan(document);
        if (planned.Tunnel is null) return [];
        ImmutableArray<PacketFile> files = PacketWriter.Write(planned, paper == "a4" ? Paper.A4 : Paper.Letter, DateOnly.ParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture));
        return pdfOnly ? [.. files.First(file => file.Name == "packet.pdf").Bytes] : ZipWriter.Write(files);
    }

    /// <summary>Why a result is what it is.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="path">The result's path, as in the results.</param>
    /// <returns>See <see cref="ExplanationJson"/>; empty when nobody has said.</returns>
    public static string Why(string document, string path)
    {
        PlannedTunnel planned = WholePlan(document);
        using Explainer explainer = new(ResultsJson.Write(planned), planned.Rules);
        return explainer.Explain(path) is { } why ? ExplanationJson.Of(why).ToJsonString() : "";
    }

    /// <summary>The tunnel as lines and faces in space, metres, for a view that can be turned.</summary>
    /// <param name="document">The plan as text.</param>
    /// <returns>JSON: profile [[x, z]], bows [[y, base]], tubeRadius, members [role, a, b, across, deep, round]; empty when the plan has errors.</returns>
    public static string Scene(string document)
    {
        if (TunnelWorks.Plan(Read(document), depth: WorkDepth.Layout).Tunnel is not { } tunnel) return "";
        return Json(json =>
        {
            json.WriteStartArray("profile");
            foreach (PlanePoint point in tunnel.Bow.FilmLine.Outline(Length.FromMillimetres(4))) Numbers(json, point.Across.Metres, point.Up.Metres);
            json.WriteEndArray();
            json.WriteStartArray("bows");
            foreach (BowStation bow in tunnel.Stations) Numbers(json, bow.Along.Metres, bow.Base.Metres);
            json.WriteEndArray();
            json.WriteNumber("tubeRadius", tunnel.BowTube.Outside.Metres / 2);
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

    private static PlannedTunnel WholePlan(string document)
    {
        if (last is { } known && known.Document == document) return known.Planned;
        PlannedTunnel planned = TunnelWorks.Plan(Read(document), memory: Memory);
        last = (document, planned);
        return planned;
    }

    private static PlanReading Read(string document) => PlanReader.Read(Encoding.UTF8.GetBytes(document));

    /// <summary>Wide enough that a drawing's text is read on a screen that shows it at the width of a tablet.</summary>
    private static FigureSheet Sheet(PlannedTunnel planned) => new(262, 193, planned.Plan.Name ?? "", "", planned.Units);

    private static void WriteResults(Utf8JsonWriter json, PlannedTunnel planned, bool withMembers = true)
    {
        json.WritePropertyName("results");
        json.WriteRawValue(ResultsJson.Write(planned, withMembers), skipInputValidation: true);
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
