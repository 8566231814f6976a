using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Xlsx;

namespace Hoopwright.Readers.Tests.Xlsx;

/// <summary>The workbook as openpyxl 3.0 reads it, and as LibreOffice Calc 7.4 opens it and works it out anew.</summary>
public sealed partial class XlsxReaderTests
{
    private const string Workbook = "tables/00-tables.xlsx", Dearer = "dearer";
    private static readonly Lazy<JsonElement> Seen = new(() => Outside.Read("xlsx.py", "The Debian package python3-openpyxl", Written.Folder));
    private static readonly Lazy<JsonElement> Calculated = new(Recalculate);

    public static TheoryData<string> Names { get; } = [.. Written.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Calc_works_out_every_formula_as_we_did_where_the_file_does_not_say(string name)
    {
        PlannedTunnel planned = Written.Planned(name);
        foreach (Worksheet sheet in PacketWorkbook.Of(planned))
        {
            string[][] rows = Rows(name, sheet.Name);
            for (int row = 0; row < sheet.Rows.Length; row++)
            {
                for (int column = 0; column < sheet.Columns.Length; column++)
                {
                    if (sheet.Rows[row][column] is { Formula: not null, Number: { } gives }) Near(gives, rows[row + 1][column]);
                }
            }
            for (int column = 0; column < sheet.Columns.Length; column++)
            {
                if (sheet.Columns[column].HasTotal) Near(sheet.Rows.Sum(row => row[column].Number ?? 0), rows[sheet.LastRow][column]);
            }
        }
        Near(planned.Orders!.Total.Amount, Total(name, "Orders"));
        Near(planned.Orders.Total.Amount, Total(name, "Cost by seller"));
        Near(planned.Orders.Total.Amount, Total(name, "Cost by stage"));
        Near(planned.Orders.Total.Amount, Total(name, "Stage shares"));
        double concrete = planned.Tunnel!.Holes.Sum(hole => planned.Units == UnitSystem.Metric ? hole.Volume.CubicMetres : hole.Volume.CubicFeet);
        // Each hole is written to four places.
        Assert.Equal(concrete, double.Parse(Total(name, "Concrete"), CultureInfo.InvariantCulture), 0.00005 * planned.Tunnel.Holes.Length);
    }

    [Fact]
    public void At_other_prices_the_shares_of_every_line_still_add_up_and_follow_their_parts()
    {
        string[][] orders = Rows(Dearer, "Orders"), shares = Rows(Dearer, "Stage shares");
        decimal whole = Number(Total(Dearer, "Orders"));
        Assert.InRange(whole, Written.Planned("gothic-26ft").Orders!.Total.Amount * 7.7m, Written.Planned("gothic-26ft").Orders!.Total.Amount * 7.8m);
        Near(whole, Total(Dearer, "Cost by stage"));
        Near(whole, Total(Dearer, "Cost by seller"));
        int parted = 0;
        foreach (IGrouping<string, string[]> line in shares.Skip(1).TakeWhile(row => row[0].All(char.IsAsciiDigit)).GroupBy(row => row[0]))
        {
            Near(line.Sum(row => Number(row[7])), orders[int.Parse(line.Key, CultureInfo.InvariantCulture) - 1][12]);
            Assert.All(line, row => Assert.InRange(Number(row[7]) - Number(row[6]), -0.01m, 0.01m));
            if (line.Count() > 1) parted++;
        }
        Assert.True(parted > 3);
    }

    [Fact]
    public void A_line_without_a_price_says_so_in_words_and_so_do_the_sums()
    {
        const string Name = Written.Hostile;
        PlannedTunnel planned = Written.Planned(Name);
        Assert.True(planned.Orders!.Unpriced > 0);
        Assert.Equal(planned.Orders.Unpriced, Rows(Name, "Orders").Count(row => row.Length > 12 && row[12] == "no price"));
        Assert.All((string[])["Orders", "Cost by stage", "Stage shares"], sheet => Assert.Contains(Rows(Name, sheet), row => row[0].Contains("no price", StringComparison.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Sheets_have_frozen_filtered_repeated_headings_with_units_and_print_landscape(string name)
    {
        bool isMetric = Written.Planned(name).Units == UnitSystem.Metric;
        JsonElement[] sheets = [.. Book(name).EnumerateObject().Select(sheet => sheet.Value)];
        Assert.Equal(10, sheets.Length);
        Assert.All(sheets, sheet =>
        {
            Assert.Equal("A2", sheet.GetProperty("frozen").GetString());
            Assert.StartsWith("A1:", sheet.GetProperty("filter").GetString(), StringComparison.Ordinal);
            Assert.Equal("$1:$1", sheet.GetProperty("repeated").GetString());
            Assert.Equal("landscape", sheet.GetProperty("orientation").GetString());
            Assert.Equal(1, sheet.GetProperty("paper").GetInt32());
            Assert.Equal("[true,1,0]", sheet.GetProperty("fits").GetRawText().Replace(" ", "", StringComparison.Ordinal));
            Assert.All(sheet.GetProperty("bold").EnumerateArray(), bold => Assert.True(bold.GetBoolean()));
        });
        string[] headings = [.. Book(name).GetProperty("Pieces").GetProperty("headings").EnumerateArray().Select(heading => heading.GetString()!)];
        Assert.Contains(isMetric ? "Length, mm" : "Length, in", headings);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_column_holds_numbers_or_words_and_never_numbers_as_words(string name)
    {
        foreach (Worksheet sheet in PacketWorkbook.Of(Written.Planned(name)))
        {
            JsonElement[] rows = [.. Book(name).GetProperty(sheet.Name).GetProperty("rows").EnumerateArray().Take(sheet.Rows.Length)];
            Assert.Equal(sheet.Rows.Length, rows.Length);
            for (int column = 0; column < sheet.Columns.Length; column++)
            {
                string[] allowed = sheet.Columns[column].Kind == NumberKind.Words ? ["words", "empty"] : ["number", "formula", "empty"];
                Assert.All(rows, row => Assert.Contains(row[column].GetProperty("kind").GetString()!, allowed));
            }
        }
    }

    [Fact]
    public void Inches_show_as_a_tape_reads_them_and_are_exact_sixteenths()
    {
        JsonElement[] cells = [.. Book("gothic-26ft").GetProperty("Pieces").GetProperty("rows").EnumerateArray().Select(row => row[5]).Where(cell => cell.GetProperty("kind").GetString() == "number")];
        Assert.All(cells, cell =>
        {
            Assert.Equal("# ??/??", cell.GetProperty("format").GetString());
            double sixteenths = cell.GetProperty("value").GetDouble() * 16;
            Assert.Equal(Math.Round(sixteenths), sixteenths, 1e-4);
        });
    }

    [Fact]
    public void Hostile_words_are_words()
    {
        JsonElement orders = Book(Written.Hostile).GetProperty("Orders");
        string[] items = [.. orders.GetProperty("rows").EnumerateArray().Select(row => row[1]).Where(cell => cell.GetProperty("kind").GetString() == "words").Select(cell => cell.GetProperty("value").GetString()!)];
        // What was typed, as words, with blanks for what no text holds.
        foreach (string item in HostilePlan.Items) Assert.Contains(items, seen => Same(item, Unescaped(seen)));
        foreach (JsonProperty sheet in Book(Written.Hostile).EnumerateObject())
        {
            foreach (JsonElement cell in sheet.Value.GetProperty("rows").EnumerateArray().SelectMany(row => row.EnumerateArray()).Where(cell => cell.GetProperty("kind").GetString() == "formula"))
                Assert.Matches(OurFormula(), cell.GetProperty("value").GetString());
        }
        Assert.All(Rows(Written.Hostile, "Orders"), row => Assert.DoesNotContain("#NAME?", row));
    }

    private static bool Same(string typed, string seen) => Visible(typed) == Visible(seen);

    private static string Visible(string text) => new([.. text.Where(c => !char.IsControl(c) && !char.IsWhiteSpace(c) && c is not ('\ufffe' or '\uffff' or '\ufffd'))]);

    // openpyxl leaves the numbers of characters as they are; Calc reads them.
    private static string Unescaped(string text) => text.Replace("_x005F_", "_", StringComparison.Ordinal);

    private static JsonElement Recalculate()
    {
        string folder = Path.Combine(Written.Scratch, "recalculated");
        Directory.CreateDirectory(folder);
        string[] files = [.. Written.Names.Select(name =>
        {
            string file = Path.Combine(folder, name + ".xlsx");
            File.Copy(Path.Combine(Written.Folder, name, Workbook), file);
            Forget(file);
            return file;
        })];
        string dearer = Path.Combine(folder, Dearer + ".xlsx");
        File.Copy(Path.Combine(Written.Folder, "gothic-26ft", Workbook), dearer);
        Change(dearer, "xl/worksheets/sheet1.xml", text => Price().Replace(text, match => string.Create(CultureInfo.InvariantCulture, $"<v>{decimal.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) * 7.77m}</v></c>{match.Groups[2].Value}")));
        Forget(dearer);
        files = [.. files, dearer];
        // All sheets of all files at one start; numbers unrounded.
        (int code, _, string said) = Outside.Run("soffice",
            ["--headless", "-env:UserInstallation=file://" + Path.Combine(Written.Scratch, "office"), "--convert-to", "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1", "--outdir", folder, .. files]);
        if (code == Outside.NotThere) Outside.Missing("The Debian package libreoffice-calc");
        Assert.True(code == 0, said);
        return Outside.Read("files.py", "One of the Debian packages python3-icalendar and python3-geographiclib", folder);
    }

    /// <summary>Takes away what each formula gives, so that only who works it out has it.</summary>
    private static void Forget(string file)
    {
        int formulas = 0;
        Change(file, "xl/worksheets/", text => Given().Replace(text, match =>
        {
            formulas++;
            return match.Groups[1].Value;
        }));
        Assert.True(formulas > 20);
    }

    /// <summary>Changes the text of the parts whose names begin so.</summary>
    private static void Change(string file, string part, Func<string, string> change)
    {
        using ZipArchive zip = ZipFile.Open(file, ZipArchiveMode.Update);
        foreach (ZipArchiveEntry entry in zip.Entries.Where(entry => entry.FullName.StartsWith(part, StringComparison.Ordinal)).ToArray())
        {
            string text;
            using (StreamReader reader = new(entry.Open(), Encoding.UTF8)) text = reader.ReadToEnd();
            text = change(text);
            using Stream stream = entry.Open();
            stream.SetLength(0);
            stream.Write(Encoding.UTF8.GetBytes(text));
        }
    }

    private static string[][] Rows(string name, string sheet) => [.. Calculated.Value.GetProperty($"{name}-{sheet}.csv").EnumerateArray().Select(row => row.EnumerateArray().Select(cell => cell.GetString()!).ToArray())];

    private static string Total(string name, string sheet) => Rows(name, sheet).First(row => row[0].StartsWith("Total", StringComparison.Ordinal))[^1];

    private static JsonElement Book(string name) => Seen.Value.GetProperty($"{name}/{Workbook}");

    private static void Near(decimal expected, string read) => Assert.Equal((double)expected, double.Parse(read, CultureInfo.InvariantCulture), 1e-6);

    private static decimal Number(string read) => decimal.Parse(read, NumberStyles.Float, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"<v>([0-9.]+)</v></c>(<c[^>]*><f>ROUND\(K)")]
    private static partial Regex Price();

    [GeneratedRegex("(</f>)<v>[^<]*</v>")]
    private static partial Regex Given();

    [GeneratedRegex(@"^=(SUBTOTAL\(9,[A-Z]\d+:[A-Z]\d+\)|ROUND\(K\d+\*L\d+,2\)|IF\(ISNUMBER\(L\d+\),ROUND\(K\d+\*L\d+,2\),""no price""\)|SUMIF\(Orders!\$A\$2:\$A\$\d+,A\d+,Orders!\$M\$2:\$M\$\d+\)|SUMIF\('Stage shares'!\$E\$2:\$E\$\d+,A\d+,'Stage shares'!\$H\$2:\$H\$\d+\)|ROUND\(Orders!M\d+\*F\d+,8\)|Orders!M\d+|ROUNDDOWN\(G\d+,2\)\+IF\([A-Z0-9!:.,><=()*+-]+,0\.01,0\))$")]
    private static partial Regex OurFormula();
}
