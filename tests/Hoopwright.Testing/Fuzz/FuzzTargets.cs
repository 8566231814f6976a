using System.Collections.Immutable;
using System.Text;
using Hoopwright.Cutting;
using Hoopwright.Diagnostics;
using Hoopwright.Frames;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Scheduling;
using Hoopwright.SiteBooks;
using Hoopwright.Weather;

namespace Hoopwright.Testing.Fuzz;

/// <summary>Every reader of what comes from outside.</summary>
public static class FuzzTargets
{
    private static readonly string[] Typed = ["26' 4-1/2\"", "7.93 m", "1 660 mm", "30 psf", "1,5 kPa", "95 mph", "22 m/s", "-20 F", "5 °C", "12 ga", "0.083 in", "6 mil", "50 %", "N 30 E", "29.95 USD", "1/0", "٣ m", ""];

    /// <summary>All of them.</summary>
    public static ImmutableArray<FuzzTarget> All { get; } =
    [
        new("plan", Files("*.json"), input => TunnelWorks.Plan(PlanReader.Read(input), depth: WorkDepth.Layout).Tunnel is not null),
        new("works", [.. new[] { "round-14ft", "metric-9m", SamplePlans.BuiltExample }.Select(SamplePlans.ExampleBytes)], input => TunnelWorks.Plan(PlanReader.Read(input), effort: new CutEffort(1_000_000), depth: WorkDepth.Orders).Orders is not null),
        new("quantities", [.. Typed.Select(Encoding.UTF8.GetBytes)], input => Quantities(Encoding.UTF8.GetString(input))),
        new("frame", Files("frame-*.json"), input => IsSound(FrameFile.Solve(input).Diagnostics)),
        new("cut", Files("cut-job.json"), input => IsSound(CutFile.Solve(input, new CutEffort(100_000)).Diagnostics)),
        new("schedule", Files("schedule-job.json"), input => ScheduleFile.Solve(input, new ScheduleEffort(200)).Plan is not null),
        new("weather", [Lines("year-invented.csv", 80), Lines("storm-invented.csv", 80), File.ReadAllBytes(Example("forecast-invented.json")), Epw()], input => WeatherReader.Read(input).Record is not null),
        new("merge", [.. SamplePlans.GoodExamples.Append(SamplePlans.BuiltExample).Select(name => (byte[])[.. SamplePlans.ExampleBytes(name), TreeMutator.Between, .. SamplePlans.ExampleBytes(SamplePlans.BuiltExample)])], Merge),
    ];

    private static bool IsSound(ImmutableArray<Diagnostic> found) => found.All(each => each.Severity != Severity.Error);

    private static bool Quantities(string text) =>
        QuantityText.ReadLength(text).IsRead
        | QuantityText.ReadTubeWall(text).IsRead
        | QuantityText.ReadFilmThickness(text).IsRead
        | QuantityText.ReadArea(text).IsRead
        | QuantityText.ReadVolume(text).IsRead
        | QuantityText.ReadAngle(text).IsRead
        | QuantityText.ReadBearing(text).IsRead
        | QuantityText.ReadMass(text).IsRead
        | QuantityText.ReadMassPerLength(text).IsRead
        | QuantityText.ReadPressure(text).IsRead
        | QuantityText.ReadForce(text).IsRead
        | QuantityText.ReadForcePerLength(text).IsRead
        | QuantityText.ReadMoment(text).IsRead
        | QuantityText.ReadDensity(text).IsRead
        | QuantityText.ReadSpeed(text).IsRead
        | QuantityText.ReadTemperature(text).IsRead
        | QuantityText.ReadRatio(text).IsRead
        | QuantityText.ReadMoney(text).IsRead;

    private static bool Merge(byte[] input)
    {
        int at = Array.IndexOf(input, TreeMutator.Between);
        ReadOnlyMemory<byte> first = at < 0 ? input : input.AsMemory(0, at), second = at < 0 ? input : input.AsMemory(at + 1);
        PlanMerge.Undecided(first);
        return PlanMerge.Merge(first, second).IsMerged;
    }

    private static string Example(string name) => Path.Combine(SamplePlans.Root, "examples", name);

    private static ImmutableArray<byte[]> Files(string pattern) => [.. Directory.GetFiles(Path.Combine(SamplePlans.Root, "examples"), pattern).Order(StringComparer.Ordinal).Select(File.ReadAllBytes)];

    private static byte[] Lines(string name, int count) => Encoding.UTF8.GetBytes(string.Join('\n', File.ReadLines(Example(name)).Take(count)));

    private static byte[] Epw()
    {
        StringBuilder text = new("LOCATION,Alder Bend,NY,USA,invented,999999,42.50,-76.50,-5.0,250.0\nDESIGN CONDITIONS,0\nTYPICAL/EXTREME PERIODS,0\nGROUND TEMPERATURES,0\nHOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\nCOMMENTS 1,invented\nCOMMENTS 2,\nDATA PERIODS,1,1,Data,Sunday,1/1,12/31\n");
        for (int hour = 1; hour <= 48; hour++)
            text.Append(FormattableString.Invariant($"2026,1,{1 + ((hour - 1) / 24)},{1 + ((hour - 1) % 24)},0,A7,{-5 + (hour % 9)}.0,-8.0,80,98000,0,0,270,0,0,0,0,0,0,0,250,3.5,5,5,16.1,77777,9,999999999,10,0.1,0,88,0.2,0.0,1.0\n"));
        return Encoding.ASCII.GetBytes(text.ToString());
    }
}
