using System.Globalization;
using System.Text.Json;
using Hoopwright.Testing;

namespace Hoopwright.Cli.Tests;

/// <summary>Weather files and covering days on the command line.</summary>
public sealed class WeatherTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("hoopwright").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void The_bundled_forecast_is_summed_up_in_words_and_in_json()
    {
        (int code, string output, string messages) = Run("weather", Forecast);
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("174 hours", output, StringComparison.Ordinal);
        Assert.Contains("stop when small twigs move", output, StringComparison.Ordinal);
        Assert.Contains("weather.clock-by-longitude", messages, StringComparison.Ordinal);
        Assert.Contains("°C", Run("weather", Forecast, "--metric").Output, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run("weather", Forecast, "--json").Output);
        Assert.Equal("gridForecast", json.RootElement.GetProperty("weather").GetProperty("form").GetString());
        Assert.Equal(4, json.RootElement.GetProperty("coverDays").GetProperty("limits").GetProperty("hours").GetInt32());
    }

    [Fact]
    public void Days_are_those_of_the_plan_by_the_clock_on_the_wall()
    {
        (int code, string output, _) = Run("days", Example, "--weather", Forecast, "--clock", "-04:00");
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("4 people", output, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run("days", Example, "--weather", Forecast, "--clock", "-04:00", "--json").Output);
        JsonElement windows = json.RootElement.GetProperty("coverDays").GetProperty("windows");
        Assert.EndsWith("-04:00", windows[0].GetProperty("begin").GetString(), StringComparison.Ordinal);
        Assert.True(windows[0].GetProperty("reasons").GetArrayLength() >= 4);
        Assert.Equal(Run("days", Example, "--weather", Forecast, "--json").Output, Run("days", Example, "--weather", Forecast, "--json").Output);
    }

    [Fact]
    public void A_year_inside_is_told_in_words_in_json_and_hour_by_hour()
    {
        (int code, string output, string messages) = Run("inside", Example, Year);
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("opened by hand", output, StringComparison.Ordinal);
        Assert.Contains("carbon monoxide", output, StringComparison.Ordinal);
        Assert.Contains("inside.sky", messages, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run("inside", Example, Year, "--json").Output);
        JsonElement inside = json.RootElement.GetProperty("inside");
        Assert.Equal(12, inside.GetProperty("light").GetProperty("months").GetArrayLength());
        Assert.Equal("outside", inside.GetProperty("ways")[0].GetProperty("kept").GetString());
        Assert.True(inside.GetProperty("ways")[1].GetProperty("highestC").GetDouble() > inside.GetProperty("ways")[0].GetProperty("highestC").GetDouble() + 5);
        string[] hours = Run("inside", Example, Year, "--csv").Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(8761, hours.Length);
        Assert.All(hours, hour => Assert.Equal(10, hour.Split(',').Length));
    }

    [Fact]
    public void A_year_inside_needs_a_year_and_one_form()
    {
        (int code, string output, _) = Run("inside", Example, Forecast, "--json");
        Assert.Equal(ExitCode.InputErrors, code);
        using JsonDocument json = JsonDocument.Parse(output);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("inside").ValueKind);
        Assert.Contains("inside.short", output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.WrongUsage, Run("inside", Example, Year, "--json", "--csv").Code);
        Assert.Equal(ExitCode.WrongUsage, Run("inside", "-", "-").Code);
        Assert.Equal(ExitCode.WrongUsage, Run("inside", Example).Code);
    }

    [Fact]
    public void Charts_are_drawings_of_what_there_is_data_for()
    {
        string charts = Path.Combine(folder, "charts");
        Assert.Equal(ExitCode.Done, Run("weather", Forecast, "--charts", charts).Code);
        Assert.Equal(["covering-hours.svg"], Directory.GetFiles(charts).Select(Path.GetFileName));
        Assert.Equal(ExitCode.Done, Run("days", Example, "--weather", Forecast, "--charts", charts, "--json").Code);
        Assert.Equal(["covering-hours.svg", "film-pull.svg"], Directory.GetFiles(charts).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal(ExitCode.Done, Run("inside", Example, Year, "--charts", charts).Code);
        Assert.Equal(["covering-hours.svg", "film-pull.svg", "inside-air.svg", "inside-light.svg", "inside-year.svg"], Directory.GetFiles(charts).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.All(Directory.GetFiles(charts), file => Assert.Equal("svg", System.Xml.Linq.XDocument.Load(file).Root!.Name.LocalName));
    }

    [Fact]
    public void A_packet_with_weather_says_when_the_film_can_be_pulled()
    {
        string packet = Path.Combine(folder, "packet");
        Assert.Equal(ExitCode.Done, Run("packet", Example, "--out", packet, "--weather", Forecast, "--clock", "-04:00", "--date", "2026-04-17").Code);
        Assert.True(File.Exists(Path.Combine(packet, "drawings", "covering-hours.svg")));
        string[] rows = File.ReadAllLines(Assert.Single(Tables(packet, "covering-windows")));
        using JsonDocument json = JsonDocument.Parse(Run("days", Example, "--weather", Forecast, "--clock", "-04:00", "--json").Output);
        Assert.Equal(json.RootElement.GetProperty("coverDays").GetProperty("windows").GetArrayLength(), rows.Length - 1);
        string broken = Path.Combine(folder, "none.csv");
        File.WriteAllText(broken, "hello");
        Assert.Equal(ExitCode.InputErrors, Run("packet", Example, "--out", Path.Combine(folder, "other"), "--weather", broken).Code);
    }

    [Fact]
    public void A_packet_with_a_year_says_what_it_is_like_inside_as_the_verb_does()
    {
        string packet = Path.Combine(folder, "year");
        Assert.Equal(ExitCode.Done, Run("packet", Example, "--out", packet, "--weather", Year, "--date", "2026-03-01").Code);
        Assert.All(new[] { "inside-year", "inside-light", "inside-air" }, name => Assert.True(File.Exists(Path.Combine(packet, "drawings", name + ".svg")), name));
        using JsonDocument json = JsonDocument.Parse(Run("inside", Example, Year, "--json").Output);
        JsonElement year = json.RootElement.GetProperty("inside");
        string[] frost = File.ReadAllLines(Assert.Single(Tables(packet, "inside-frost")));
        Assert.Equal([.. year.GetProperty("ways").EnumerateArray().Select(way => way.GetProperty("frostDays").GetInt32().ToString(CultureInfo.InvariantCulture))], frost.Skip(1).Select(row => row.Split(',')[1]));
        Assert.Equal(1 + 12, File.ReadAllLines(Assert.Single(Tables(packet, "inside-headings"))).Length);
        // A forecast tells nothing of a year, so there are no such pages with it.
        string forecast = Path.Combine(folder, "forecast");
        Assert.Equal(ExitCode.Done, Run("packet", Example, "--out", forecast, "--weather", Forecast, "--clock", "-04:00").Code);
        Assert.Empty(Tables(forecast, "inside-frost"));
    }

    // Their names begin with their place in the packet.
    private static string[] Tables(string packet, string name) => Directory.GetFiles(Path.Combine(packet, "tables"), $"??-{name}.csv");

    [Fact]
    public void A_broken_file_a_missing_one_and_wrong_usage_are_told_apart()
    {
        string empty = Path.Combine(folder, "empty.epw");
        File.WriteAllText(empty, "");
        Assert.Equal(ExitCode.InputErrors, Run("weather", empty).Code);
        (int code, string output, _) = Run("days", Example, "--weather", empty, "--json");
        Assert.Equal(ExitCode.InputErrors, code);
        using JsonDocument json = JsonDocument.Parse(output);
        Assert.Equal("weather.empty", json.RootElement.GetProperty("diagnostics")[0].GetProperty("code").GetString());
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("coverDays").ValueKind);
        Assert.Contains("There is no file", Run("weather", Path.Combine(folder, "none.epw")).Messages, StringComparison.Ordinal);
        Assert.Contains("is a folder", Run("weather", folder).Messages, StringComparison.Ordinal);
        Assert.Equal(ExitCode.InputErrors, Run("days", Example).Code);
        Assert.Equal(ExitCode.WrongUsage, Run("days", "-", "--weather", "-").Code);
        Assert.Equal(ExitCode.WrongUsage, Run("weather", Forecast, "--from", "soon").Code);
        Assert.Equal(ExitCode.WrongUsage, Run("weather", Forecast, "--clock", "late").Code);
        Assert.Equal(ExitCode.InputErrors, Run("weather", Forecast, "--from", "2027-01-01").Code);
    }

    [Fact]
    public void The_days_of_the_crew_are_planned_told_and_written_as_a_calendar_file()
    {
        (int code, string output, _) = Run("days", Example, "--from", "2026-04-13");
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("Crew calendar from Mon 2026-04-13: all is done by", output, StringComparison.Ordinal);
        Assert.Contains("the end moves if this slips", output, StringComparison.Ordinal);
        string ics = Path.Combine(folder, "crew.ics");
        (code, output, _) = Run("days", Example, "--from", "2026-04-13", "--climate", Year, "--odds", "50", "--seed", "3", "--ics", ics, "--date", "2026-04-01", "--language", "es", "--json");
        Assert.Equal(ExitCode.Done, code);
        using JsonDocument json = JsonDocument.Parse(output);
        JsonElement calendar = json.RootElement.GetProperty("calendar"), odds = json.RootElement.GetProperty("odds");
        Assert.True(calendar.GetProperty("proven").GetBoolean() && calendar.GetProperty("steps").GetArrayLength() > 20);
        Assert.Equal(50, odds.GetProperty("seasons").GetInt32());
        Assert.Equal(output, Run("days", Example, "--from", "2026-04-13", "--climate", Year, "--odds", "50", "--seed", "3", "--json").Output);
        string written = File.ReadAllText(ics);
        Assert.Contains("SUMMARY:Levantar los arcos", written, StringComparison.Ordinal);
        // Written over itself it stays as it is.
        Assert.Equal(ExitCode.Done, Run("days", Example, "--from", "2026-04-13", "--climate", Year, "--ics", ics, "--date", "2026-04-01", "--language", "es", "--json").Code);
        Assert.Equal(written, File.ReadAllText(ics));
        string wall = Path.Combine(folder, "wall.pdf");
        (code, output, _) = Run("days", Example, "--from", "2026-04-13", "--wall", wall, "--date", "2026-04-01");
        Assert.Equal((ExitCode.Done, "%PDF"), (code, System.Text.Encoding.ASCII.GetString(File.ReadAllBytes(wall), 0, 4)));
        // Concrete is loaded by the bag.
        Assert.Matches(@"load: [^\n]*\b1[0-9][0-9] dry concrete 80 lb bag", output);
        // The odds need years, and a forecast has a first day of its own.
        Assert.Equal(ExitCode.InputErrors, Run("days", Example, "--from", "2026-04-13", "--odds", "50").Code);
        Assert.Contains("Crew calendar from Sat 2026-04-18", Run("days", Example, "--weather", Forecast, "--clock", "-04:00").Output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.WrongUsage, Run("days", Example, "--from", "2026-04-13", "--odds", "0").Code);
    }

    private static string Example => Path.Combine(SamplePlans.Root, "examples", "gothic-26ft.json");

    private static string Year => Path.Combine(SamplePlans.Root, "examples", "year-invented.csv");

    private static string Forecast => Path.Combine(SamplePlans.Root, "examples", "forecast-invented.json");

    private static (int Code, string Output, string Messages) Run(params string[] args) => CommandLine.Run(args);
}
