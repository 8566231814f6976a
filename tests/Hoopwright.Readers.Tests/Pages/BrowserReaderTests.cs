using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Hoopwright.Layout;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;

namespace Hoopwright.Readers.Tests.Pages;

/// <summary>SVG drawings and the list of files as Chromium opens them from the disk, without a network.</summary>
public sealed partial class BrowserReaderTests
{
    // A CSS millimetre is 96/25.4 pixels (CSS Values and Units 3, 6.2).
    private const double PixelsPerMm = 96 / 25.4;
    private static readonly Lazy<JsonElement> Measured = new(Measure);

    public static TheoryData<string> Names { get; } = [.. Written.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_drawing_opens_as_large_as_its_paper_and_its_lines_measure_true_at_its_scale(string name)
    {
        JsonElement bow = Measured.Value.GetProperty(name);
        Tunnel tunnel = Written.Planned(name).Tunnel!;
        (double width, double height) = (bow.GetProperty("width").GetDouble() / PixelsPerMm, bow.GetProperty("height").GetDouble() / PixelsPerMm);
        Assert.True(width > height && width is > 200 and < 280, $"{width} by {height} mm");
        int denominator = Scale(name);
        double[] lengths = [.. bow.GetProperty("lengths").EnumerateArray().Select(length => length.GetDouble() * denominator)];
        // In the picture points are written to a thousandth of a millimetre.
        double most = 0.03 * denominator;
        Assert.Contains(lengths, length => Math.Abs(length - tunnel.Bow.FilmLine.Length.Millimetres) < most);
        Assert.Contains(lengths, length => Math.Abs(length - tunnel.Bow.CentreLine.Length.Millimetres) < most);
        Assert.Contains(lengths, length => Math.Abs(length - tunnel.Bow.Underside.Length.Millimetres) < most);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_list_of_files_names_each_and_runs_nothing(string name)
    {
        string folder = Path.Combine(Written.Folder, name), dom = Dom(Path.Combine(folder, "index.html"));
        string[] links = [.. Link().Matches(dom).Select(match => WebUtility.HtmlDecode(match.Groups[1].Value)).Order(StringComparer.Ordinal)];
        string[] files = [.. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/')).Where(file => file != "index.html").Order(StringComparer.Ordinal)];
        Assert.Equal(files, links);
        Assert.DoesNotContain("<script", dom, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img", dom, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("http", dom.Replace("http-equiv", "", StringComparison.Ordinal).Replace("http://example.invalid", "", StringComparison.Ordinal), StringComparison.Ordinal);
        if (name == Written.Hostile) Assert.Contains("&lt;/script&gt;&lt;script&gt;alert(1)", dom, StringComparison.Ordinal);
    }

    [Fact]
    public void Hostile_names_in_pictures_are_words() => Assert.Equal("[]", Measured.Value.GetProperty(Written.Hostile).GetProperty("foreign").GetRawText());

    /// <summary>The scale as the sheet says it.</summary>
    private static int Scale(string name)
    {
        string svg = WebUtility.HtmlDecode(File.ReadAllText(Svg(name)));
        return DrawingScale.Of(Written.Planned(name).Units).Single(scale => svg.Contains($">Scale {TapeFractions.Set(scale.Name)}<", StringComparison.Ordinal)).Denominator;
    }

    private static string Svg(string name) => Directory.EnumerateFiles(Path.Combine(Written.Folder, name, "drawings"), "*-bow.svg").Order(StringComparer.Ordinal).First();

    private static JsonElement Measure()
    {
        StringBuilder page = new("<!DOCTYPE html><meta charset=utf-8><body>");
        foreach (string name in Written.Names)
        {
            string svg = File.ReadAllText(Svg(name));
            page.Append("<div data-name=\"").Append(name).Append("\">").Append(svg.AsSpan(svg.IndexOf("<svg", StringComparison.Ordinal))).Append("</div>\n");
        }
        page.Append("""
            <script>
            const found = {}, times = 1000;
            // The browser measures curves by chords of about a pixel: so the same path, a thousand times as large.
            function length(path) {
              const large = document.createElementNS("http://www.w3.org/2000/svg", "path");
              large.setAttribute("d", path.getAttribute("d").replace(/([MLA])([^MLAZ]*)/g, (_, letter, numbers) => letter + numbers.trim().split(" ").map((number, at) => letter === "A" && at > 1 && at < 5 ? number : number * times).join(" ")));
              return large.getTotalLength() / times;
            }
            for (const div of document.querySelectorAll("div[data-name]")) {
              const svg = div.querySelector("svg"), box = svg.getBoundingClientRect();
              found[div.dataset.name] = {
                width: box.width, height: box.height,
                lengths: [...svg.querySelectorAll("path.line")].map(length),
                foreign: [...div.querySelectorAll("*")].map(each => each.localName).filter(each => !["svg", "title", "desc", "style", "rect", "g", "path", "text"].includes(each)),
              };
            }
            document.body.textContent = JSON.stringify(found);
            </script>
            """);
        string file = Path.Combine(Written.Scratch, "measure.html");
        File.WriteAllText(file, page.ToString());
        return JsonDocument.Parse(WebUtility.HtmlDecode(Body().Match(Dom(file)).Groups[1].Value)).RootElement;
    }

    private static string Dom(string file)
    {
        (int code, string printed, string said) = Outside.Run("chromium", ["--headless", "--no-sandbox", "--disable-gpu", "--host-resolver-rules=MAP * ~NOTFOUND", "--user-data-dir=" + Path.Combine(Written.Scratch, "browser"), "--dump-dom", "file://" + file]);
        if (code == Outside.NotThere) Outside.Missing("The Debian package chromium");
        Assert.True(code == 0, said);
        return printed;
    }

    [GeneratedRegex("<a href=\"([^\"]*)\"")]
    private static partial Regex Link();

    [GeneratedRegex("<body>(.*)</body>", RegexOptions.Singleline)]
    private static partial Regex Body();
}
