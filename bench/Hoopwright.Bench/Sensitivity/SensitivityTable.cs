using System.Globalization;
using System.Text.Json;
using Hoopwright.Days;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength;
using Hoopwright.Testing;
using Hoopwright.Weather;
using PlanEdit = Hoopwright.Sweeps.PlanEdit;

namespace Hoopwright.Bench.Sensitivity;

/// <summary>The numbers of docs/sensitivity.md: how far the results that people go by move when what they rest on moves by as little as anyone can know it.</summary>
internal static class SensitivityTable
{
    /// <summary>Prints the rows.</summary>
    public static int Print(TextWriter to)
    {
        to.WriteLine("| plan | what moves | film over the bow | film length | snow limit | gust limit | worst bow use | boards and tubes | days to cover a year |");
        to.WriteLine("|---|---|---|---|---|---|---|---|---|");
        foreach (string example in SamplePlans.GoodExamples)
        {
            string plan = PlanEdit.Text(SamplePlans.ExampleBytes(example))!;
            Headline before = Of(plan, []) ?? throw new InvalidOperationException($"{example} cannot be worked out.");
            to.WriteLine($"| {example} | (as it is) | {Absolute(before)} |");
            foreach ((string what, Func<Plan, PlannedTunnel, (string Path, string Value)?> of) in Changes)
            {
                PlannedTunnel planned = before.Planned;
                if (of(planned.Plan, planned) is not { } change) continue;
                to.WriteLine(Of(plan, [(change.Path, PlanEdit.AsText(change.Value))]) is { } after ? $"| {example} | {what} | {Moved(before, after)} |" : $"| {example} | {what} | (cannot be built so) | | | | | | |");
            }
        }
        return 0;
    }

    private static (string What, Func<Plan, PlannedTunnel, (string Path, string Value)?> Of)[] Changes { get; } =
    [
        ("span + 1/4 in", (_, planned) => ("frame.span", In(planned.Tunnel!.Span.Inches + 0.25))),
        ("length + 1/4 in", (_, planned) => ("frame.length", In(planned.Tunnel!.Length.Inches + 0.25))),
        ("peak + 1/4 in", (plan, planned) => plan.Frame.Bow?.PeakHeight is null ? null : ("frame.bow.peakHeight", In(planned.Tunnel!.Bow.PeakHeight.Inches + 0.25))),
        ("bow tube wall + 0.001 in", (plan, planned) => plan.Frame.BowTube?.Wall is null ? null : ("frame.bowTube.wall", In(planned.Tunnel!.BowTube.Wall.Inches + 0.001))),
        ("ground snow + 1 psf", (plan, _) => plan.Site.GroundSnow is { } snow ? ("site.groundSnow", Number(snow.Value.PoundsPerSquareFoot + 1) + " psf") : null),
        ("wind + 1 mph", (plan, _) => plan.Site.Wind is { } wind ? ("site.wind", Number(wind.Value.MilesPerHour + 1) + " mph") : null),
        ("wind on the day of covering + 1 mph", (_, planned) => ("coverDay.wind", Number(CoverDayNeeds.Of(planned.Tunnel!, planned.Cover!, new Answers(planned.Units)).Wind.MilesPerHour + 1) + " mph")),
        ("coldest on the day of covering + 1 °F", (_, planned) => ("coverDay.coldest", Number(CoverDayNeeds.Of(planned.Tunnel!, planned.Cover!, new Answers(planned.Units)).Coldest.Fahrenheit + 1) + " F")),
    ];

    private static WeatherRecord Climate { get; } = WeatherReader.Read(File.ReadAllBytes(Path.Combine(SamplePlans.Root, "examples", "year-invented.csv"))).Record!;

    private static Headline? Of(string plan, (string Path, string Json)[] values)
    {
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(PlanEdit.With(plan, values) ?? throw new JsonException("The plan has no such field.")));
        if (planned.Strength is not { } strength) return null;
        return new Headline(
            planned, planned.Tunnel!.Bow.FilmLine.Length, planned.Cover!.Pieces[0].AlongRoll, strength.InSnow(StrengthLevel.Storm)?.GroundSnow?.Taken, strength.InWind(StrengthLevel.Storm)?.Wind?.Taken,
            strength.Combinations is [var worst, ..] ? worst.Utilisation : null, planned.Cuts!.Sheets.Sum(sheet => sheet.Cost?.Amount ?? 0), CoverDayPlanner.Plan(planned.Tunnel, planned.Cover, Climate).Report!.GoodDays);
    }

    private static string Absolute(Headline one) => Row(
        Number(one.Bow.Inches) + " in", Number(one.Film.Inches) + " in", one.Snow is { } snow ? Number(snow.PoundsPerSquareFoot) + " psf" : "", one.Gust is { } gust ? Number(gust.MilesPerHour) + " mph" : "",
        one.Use is { } use ? Number(use.Value) : "", one.Cuts.ToString("0.00", CultureInfo.InvariantCulture), one.Days.ToString(CultureInfo.InvariantCulture));

    private static string Moved(Headline before, Headline after) => Row(
        Signed(after.Bow.Inches - before.Bow.Inches), Signed(after.Film.Inches - before.Film.Inches), before.Snow is { } was && after.Snow is { } now ? Signed(now.PoundsPerSquareFoot - was.PoundsPerSquareFoot) : "",
        before.Gust is { } gustWas && after.Gust is { } gustNow ? Signed(gustNow.MilesPerHour - gustWas.MilesPerHour) : "", before.Use is { } useWas && after.Use is { } useNow ? Signed(useNow.Value - useWas.Value) : "",
        Signed((double)(after.Cuts - before.Cuts)), Signed(after.Days - before.Days));

    private static string Row(params string[] cells) => string.Join(" | ", cells);

    private static string Signed(double moved) => Math.Abs(moved) < 5e-5 ? "0" : (moved > 0 ? "+" : "") + Number(moved);

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    private static string In(double inches) => inches.ToString("0.######", CultureInfo.InvariantCulture) + " in";

    private sealed record Headline(PlannedTunnel Planned, Length Bow, Length Film, Pressure? Snow, Speed? Gust, Ratio? Use, decimal Cuts, int Days);
}
