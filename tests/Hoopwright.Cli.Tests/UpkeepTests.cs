using System.Text.Json;
using Hoopwright.Testing;

namespace Hoopwright.Cli.Tests;

/// <summary>The verb for tunnels that stand.</summary>
public sealed class UpkeepTests
{
    private static readonly string Example = Path.Combine(SamplePlans.Root, "examples", "gothic-26ft.json"), Storm = Path.Combine(SamplePlans.Root, "examples", "storm-invented.csv");

    [Fact]
    public void The_storm_card_and_the_storm_are_told_as_text_and_as_json()
    {
        (int code, string output, _) = CommandLine.Run("upkeep", Example, "--weather", Storm, "--date", "2027-01-21");
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("Clear the snow: ", output, StringComparison.Ordinal);
        Assert.Contains("STORM CARD", output, StringComparison.Ordinal);
        (code, output, _) = CommandLine.Run("upkeep", Example, "--weather", Storm, "--snow", "6 in", "--kind", "wet", "--json");
        Assert.Equal(ExitCode.Done, code);
        using JsonDocument json = JsonDocument.Parse(output);
        Assert.Equal(4, json.RootElement.GetProperty("upkeep").GetProperty("card").GetProperty("snow").GetArrayLength());
        // 6 in of wet snow, 400 kg/m³.
        Assert.Equal(400 * 9.80665 * 0.1524, json.RootElement.GetProperty("storm").GetProperty("lyingPa").GetDouble(), 0.1);
        Assert.NotEmpty(json.RootElement.GetProperty("storm").GetProperty("warnings").EnumerateArray());
    }

    [Fact]
    public void Card_and_calendar_are_written_and_the_same_day_gives_the_same_bytes()
    {
        string folder = Directory.CreateTempSubdirectory().FullName, card = Path.Combine(folder, "card.pdf"), ics = Path.Combine(folder, "upkeep.ics");
        Assert.Equal(ExitCode.Done, CommandLine.Run("upkeep", Example, "--card", card, "--ics", ics, "--language", "es", "--date", "2027-01-21").Code);
        byte[] first = File.ReadAllBytes(card), days = File.ReadAllBytes(ics);
        Assert.Equal(ExitCode.Done, CommandLine.Run("upkeep", Example, "--card", card, "--ics", ics, "--language", "es", "--date", "2027-01-21").Code);
        Assert.Equal(first, File.ReadAllBytes(card));
        Assert.Equal(days, File.ReadAllBytes(ics));
        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData("--snow", "six")]
    [InlineData("--snow", "-3 in")]
    [InlineData("--kind", "yellow")]
    [InlineData("--date", "tomorrow")]
    public void What_cannot_be_read_is_refused_with_the_way_to_write_it(string option, string value) =>
        Assert.Equal(ExitCode.WrongUsage, CommandLine.Run("upkeep", Example, option, value).Code);

    [Fact]
    public void Years_that_were_are_no_forecast()
    {
        (int code, _, string messages) = CommandLine.Run("upkeep", Example, "--weather", Path.Combine(SamplePlans.Root, "examples", "year-invented.csv"));
        Assert.Equal(ExitCode.InputErrors, code);
        Assert.Contains("storm.no-forecast", messages, StringComparison.Ordinal);
    }
}
