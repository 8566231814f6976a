using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Hoopwright.Layout;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Upkeep;

namespace Hoopwright.Readers.Tests.Plain;

/// <summary>CSV, ICS, GeoJSON and zip files as readers of others see them: Python's csv and zipfile, icalendar 4.0, and GeographicLib for the earth.</summary>
public sealed class PlainReaderTests
{
    private static readonly Lazy<JsonElement> Seen = new(() => Outside.Read("files.py", "One of the Debian packages python3-icalendar and python3-geographiclib", Written.Folder));

    public static TheoryData<string> Names { get; } = [.. Written.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_table_reads_strictly_with_rows_of_one_width_and_no_formula(string name)
    {
        JsonProperty[] tables = Of(name, ".csv");
        Assert.True(tables.Length > 30);
        foreach (JsonProperty table in tables)
        {
            string[][] rows = [.. table.Value.EnumerateArray().Select(row => row.EnumerateArray().Select(cell => cell.GetString()!).ToArray())];
            Assert.Single(rows.Select(row => row.Length).Distinct());
            Assert.All(rows.SelectMany(row => row), cell => Assert.True(
                cell.Length == 0 || !"=+-@\t\r\n".Contains(cell[0], StringComparison.Ordinal) || decimal.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out _), $"{table.Name}: {cell}"));
        }
    }

    [Fact]
    public void Hostile_items_are_in_the_order_and_do_nothing()
    {
        string[] items = [.. Of(Written.Hostile, ".csv").Single(table => table.Name.EndsWith("-order-added-by-hand.csv", StringComparison.Ordinal)).Value.EnumerateArray().Skip(1).Select(row => row[0].GetString()!)];
        foreach (string item in HostilePlan.Items) Assert.Contains(items, seen => Visible(seen) == Visible(item));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_calendar_has_the_days_of_the_upkeep(string name)
    {
        JsonElement calendar = Of(name, ".ics").Single().Value;
        Assert.Equal("2.0", calendar.GetProperty("version").GetString());
        Assert.Equal("[]", calendar.GetProperty("errors").GetRawText());
        // RFC 5545, 3.1: no line longer than 75 octets.
        Assert.InRange(calendar.GetProperty("longestLine").GetInt32(), 1, 75);
        ImmutableArray<UpkeepDate> days = UpkeepCalendar.From(Written.Planned(name).Upkeep!, Written.Planned(name).Plan, Written.Day);
        JsonElement[] events = [.. calendar.GetProperty("events").EnumerateArray()];
        Assert.Equal(days.Select(day => day.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)), events.Select(each => each.GetProperty("start").GetString()));
        Assert.Equal(events.Length, events.Select(each => each.GetProperty("uid").GetString()).Distinct().Count());
        Assert.All(events, each => Assert.NotEqual("", each.GetProperty("summary").GetString()));
        Assert.All(events.Zip(days), pair => Assert.Equal(pair.Second.Repeat switch { UpkeepRepeat.Once => null, UpkeepRepeat.Weekly => "WEEKLY", UpkeepRepeat.Yearly => "YEARLY" },
            pair.First.GetProperty("rule").GetString()?.Split(';').Single(part => part.StartsWith("FREQ=", StringComparison.Ordinal))[5..]));
    }

    [Fact]
    public void The_footprint_lies_on_the_earth_as_long_as_wide_and_turned_as_the_plan_says()
    {
        JsonElement place = Of(Written.Hostile, ".geojson").Single().Value;
        Tunnel tunnel = Written.Planned(Written.Hostile).Tunnel!;
        Assert.Equal("FeatureCollection", place.GetProperty("type").GetString());
        // RFC 7946: nothing but these two members, a ring that closes and runs anticlockwise.
        Assert.Equal("[\"features\",\"type\"]", place.GetProperty("members").GetRawText().Replace(" ", "", StringComparison.Ordinal));
        Assert.True(place.GetProperty("closed").GetBoolean());
        Assert.Equal(tunnel.Span.Metres * tunnel.Length.Metres, place.GetProperty("area").GetDouble(), 0.05);
        double[] sides = Numbers(place, "sides"), azimuths = Numbers(place, "azimuths");
        double[] expected = [tunnel.Span.Metres, tunnel.Length.Metres, tunnel.Span.Metres, tunnel.Length.Metres];
        Assert.All(sides.Zip(expected), pair => Assert.Equal(pair.Second, pair.First, 0.001));
        // The front looks to 120°, so one walks in to 300°, and the right hand is at 30°.
        Assert.Equal(30, azimuths[0], 0.01);
        Assert.Equal(-60, azimuths[1], 0.01);
        double[] middle = Numbers(place, "middle");
        Assert.Equal(-78.7, middle[0], 1e-7);
        Assert.Equal(42.9, middle[1], 1e-7);
        foreach (BowStation bow in tunnel.Stations)
            Assert.Equal(bow.Along.Metres, place.GetProperty("fromOrigin").GetProperty(FormattableString.Invariant($"bow {bow.Number}, left")).GetDouble(), 0.001);
        Assert.Empty(Of("gothic-26ft", ".geojson"));
    }

    [Fact]
    public void The_zip_is_whole_has_one_time_and_names_that_any_disk_takes()
    {
        string folder = Directory.CreateTempSubdirectory("hoopwright-zip-").FullName;
        try
        {
            ImmutableArray<PacketFile> files = PacketWriter.Write(Written.Planned(Written.Hostile), Paper.A4, Written.Day, choice: new PacketChoice { Only = [PacketForm.Csv, PacketForm.Ics, PacketForm.GeoJson, PacketForm.Json, PacketForm.Xlsx] });
            File.WriteAllBytes(Path.Combine(folder, "packet.zip"), ZipWriter.Write(files));
            JsonElement zip = Outside.Read("files.py", "One of the Debian packages python3-icalendar and python3-geographiclib", folder).GetProperty("packet.zip");
            Assert.Equal(JsonValueKind.Null, zip.GetProperty("bad").ValueKind);
            Assert.Equal(files.ToDictionary(file => file.Name, file => file.Bytes.Length), zip.GetProperty("files").EnumerateObject().ToDictionary(file => file.Name, file => file.Value.GetInt32()));
            Assert.Equal("[\"(1980, 1, 1, 0, 0, 0)\"]", zip.GetProperty("times").GetRawText());
            Assert.All(files, file => Assert.Matches("^[a-z0-9-]+(/[a-z0-9.-]+)?(\\.[a-z]+)?$", file.Name));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static JsonProperty[] Of(string name, string ending) => [.. Seen.Value.EnumerateObject().Where(file => file.Name.StartsWith(name + "/", StringComparison.Ordinal) && file.Name.EndsWith(ending, StringComparison.Ordinal))];

    private static double[] Numbers(JsonElement from, string name) => [.. from.GetProperty(name).EnumerateArray().Select(value => value.GetDouble())];

    private static string Visible(string text) => new([.. text.TrimStart('\'').Where(c => !char.IsControl(c) && !char.IsWhiteSpace(c) && c is not ('\ufffe' or '\uffff' or '\ufffd'))]);
}
