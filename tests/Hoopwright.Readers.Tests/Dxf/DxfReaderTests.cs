using System.Text.Json;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Dxf;
using Hoopwright.Sheets.Figures;

namespace Hoopwright.Readers.Tests.Dxf;

/// <summary>DXF files as ezdxf 0.18, a library of others, reads and audits them.</summary>
public sealed class DxfReaderTests
{
    private const double Relative = 1e-6;
    private static readonly Lazy<JsonElement> Seen = new(() => Outside.Read("dxf.py", "The Debian package python3-ezdxf", Written.Folder));

    public static TheoryData<string> Names { get; } = [.. Written.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Ezdxf_finds_no_error_and_nothing_to_mend_in_any_drawing(string name)
    {
        JsonProperty[] files = Of(name);
        Assert.True(files.Length > 10);
        Assert.All(files, file =>
        {
            Assert.Equal("[] []", $"{file.Value.GetProperty("errors")} {file.Value.GetProperty("fixes")}");
            Assert.Equal("AC1021", file.Value.GetProperty("version").GetString());
            bool isMetric = Written.Planned(name).Units == UnitSystem.Metric;
            Assert.Equal(isMetric ? 4 : 1, file.Value.GetProperty("units").GetInt32());
            Assert.Equal(isMetric ? 1 : 0, file.Value.GetProperty("measurement").GetInt32());
        });
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_bow_reads_back_with_its_true_lengths_and_radii(string name)
    {
        Tunnel tunnel = Written.Planned(name).Tunnel!;
        JsonElement bow = Drawing(name, "bow");
        foreach ((PlanePath path, string layer) in new[] { (tunnel.Bow.FilmLine, "BOW-OUTLINE"), (tunnel.Bow.Underside, "BOW-OUTLINE"), (tunnel.Bow.CentreLine, "CENTRE-CENTRE") })
        {
            double expected = InUnits(path.Length, tunnel.Units);
            JsonElement read = bow.GetProperty("paths").EnumerateArray().Where(each => each.GetProperty("layer").GetString() == layer).MinBy(each => Math.Abs(LengthOf(each) - expected));
            Close(expected, LengthOf(read));
            double[] radii = [.. path.Segments.OfType<ArcSegment>().Select(arc => InUnits(arc.Radius, tunnel.Units)).Order()];
            double[] found = [.. read.GetProperty("pieces").EnumerateArray().Where(piece => piece.TryGetProperty("radius", out _)).Select(piece => piece.GetProperty("radius").GetDouble()).Order()];
            Assert.Equal(radii.Length, found.Length);
            Assert.All(radii.Zip(found), pair => Close(pair.First, pair.Second));
        }
        double purlin = InUnits(tunnel.Members.First(member => member.Role is MemberRole.Purlin or MemberRole.RidgePurlin).Section.Match(tube => tube.Outside, board => board.Depth) / 2, tunnel.Units);
        JsonElement[] purlins = [.. bow.GetProperty("circles").EnumerateArray().Where(circle => circle.GetProperty("layer").GetString() == "PURLINS-CUT")];
        Assert.Equal(tunnel.Members.Count(member => member.Role is MemberRole.Purlin or MemberRole.RidgePurlin), purlins.Length);
        Assert.All(purlins, circle => Close(purlin, circle.GetProperty("radius").GetDouble()));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Dimensions_measure_what_they_say(string name)
    {
        Tunnel tunnel = Written.Planned(name).Tunnel!;
        int seen = 0;
        foreach (JsonProperty file in Of(name))
        {
            foreach (JsonElement dimension in file.Value.GetProperty("dimensions").EnumerateArray())
            {
                seen++;
                double measured = dimension.GetProperty("measured").GetDouble(), stated = dimension.GetProperty("stated").GetDouble();
                Assert.Equal(stated, measured, Math.Max(1e-9, Relative * stated));
                Assert.True(dimension.GetProperty("block").GetInt32() >= 3 || dimension.GetProperty("text").GetString() == " ");
            }
        }
        Assert.True(seen > 30);
        Close(InUnits(tunnel.Span, tunnel.Units), Measured(name, "bow", TapeText.Of(tunnel.Span, tunnel.Units)));
        Close(InUnits(tunnel.Bow.PeakHeight, tunnel.Units), Measured(name, "bow", TapeText.Of(tunnel.Bow.PeakHeight, tunnel.Units)));
        foreach (RunningMark mark in tunnel.SetOut.SideMarks.Where(mark => mark.Mark > Length.Zero))
            Assert.Contains(Drawing(name, "set-out").GetProperty("dimensions").EnumerateArray(), dimension => Math.Abs(dimension.GetProperty("measured").GetDouble() - InUnits(mark.Mark, tunnel.Units)) <= Relative * InUnits(mark.Mark, tunnel.Units));
    }

    [Fact]
    public void Lines_weigh_by_their_role_and_texts_are_as_high_as_on_paper()
    {
        JsonElement bow = Drawing("gothic-26ft", "bow"), layers = bow.GetProperty("layers");
        // Hundredths of a millimetre, by the table of docs/drawings.md.
        Assert.Equal("[35,\"Continuous\"]", layers.GetProperty("BOW-OUTLINE").GetRawText().Replace(" ", "", StringComparison.Ordinal));
        Assert.Equal("[13,\"CENTRE\"]", layers.GetProperty("CENTRE-CENTRE").GetRawText().Replace(" ", "", StringComparison.Ordinal));
        Assert.Equal("[18,\"HIDDEN\"]", layers.GetProperty("TIE-HIDDEN").GetRawText().Replace(" ", "", StringComparison.Ordinal));
        Assert.Equal("[50,\"Continuous\"]", layers.GetProperty("PURLINS-CUT").GetRawText().Replace(" ", "", StringComparison.Ordinal));
        Assert.All(bow.GetProperty("layersUsed").EnumerateArray(), layer => Assert.True(layers.TryGetProperty(layer.GetString()!, out _), layer.GetString()));
        // 2.5 mm at 3/16" = 1'-0", which is 1 to 64.
        Assert.Contains(bow.GetProperty("texts").EnumerateArray(), text => Math.Abs(text.GetProperty("height").GetDouble() - (2.5 * 64 / 25.4)) < 1e-6);
        Assert.Equal("CONCRETE EARTH SOLID", string.Join(' ', bow.GetProperty("hatches").EnumerateArray().Select(hatch => hatch.GetProperty("pattern").GetString()).Distinct().Order()));
    }

    [Fact]
    public void Exploded_the_drawing_is_the_same_without_dimensions()
    {
        PlannedTunnel planned = Written.Planned("metric-9m");
        string folder = Directory.CreateTempSubdirectory("hoopwright-exploded-").FullName;
        try
        {
            TunnelFigure figure = TunnelFigures.Of(planned, new FigureSheet(297, 210, "Exploded", "2026-03-01", planned.Units)).First(each => each.Name.EndsWith("front-end", StringComparison.Ordinal));
            File.WriteAllBytes(Path.Combine(folder, "whole.dxf"), DxfWriter.Write(figure.Drawing, planned.Units));
            File.WriteAllBytes(Path.Combine(folder, "exploded.dxf"), DxfWriter.Write(figure.Drawing, planned.Units, DxfDimensions.Exploded));
            JsonElement read = Outside.Read("dxf.py", "The Debian package python3-ezdxf", folder), whole = read.GetProperty("whole.dxf"), exploded = read.GetProperty("exploded.dxf");
            Assert.Equal("[] []", $"{exploded.GetProperty("errors")} {exploded.GetProperty("fixes")}");
            Assert.Contains("DIMENSION", whole.GetProperty("kinds").GetRawText(), StringComparison.Ordinal);
            Assert.DoesNotContain("DIMENSION", exploded.GetProperty("kinds").GetRawText(), StringComparison.Ordinal);
            Assert.Equal(Texts(whole), Texts(exploded));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Hostile_names_are_shown_and_do_nothing()
    {
        foreach (JsonProperty file in Of(Written.Hostile))
        {
            foreach (string text in Texts(file.Value))
                Assert.DoesNotContain(text, each => char.IsControl(each) || each == '\u202E');
        }
        string all = string.Join("\n", Texts(Drawing(Written.Hostile, "bow")));
        Assert.Contains("HYPERLINK", all, StringComparison.Ordinal);
    }

    private static string[] Texts(JsonElement file) => [.. file.GetProperty("texts").EnumerateArray().Select(text => text.GetProperty("plain").GetString()!).Order(StringComparer.Ordinal)];

    private static JsonProperty[] Of(string name) => [.. Seen.Value.EnumerateObject().Where(file => file.Name.StartsWith(name + "/", StringComparison.Ordinal))];

    private static JsonElement Drawing(string name, string drawing) => Of(name).First(file => file.Name.EndsWith($"-{drawing}.dxf", StringComparison.Ordinal)).Value;

    private static double Measured(string name, string drawing, string text) =>
        Drawing(name, drawing).GetProperty("dimensions").EnumerateArray().First(dimension => dimension.GetProperty("text").GetString() == text).GetProperty("measured").GetDouble();

    private static double LengthOf(JsonElement path) => path.GetProperty("pieces").EnumerateArray().Sum(piece => piece.GetProperty("length").GetDouble());

    private static double InUnits(Length length, UnitSystem units) => units == UnitSystem.Metric ? length.Millimetres : length.Inches;

    private static void Close(double expected, double read) => Assert.Equal(expected, read, Relative * expected);
}
