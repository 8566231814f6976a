using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Hoopwright.Scheduling;

namespace Hoopwright.Reference.Tests.Scheduling;

/// <summary>Published scheduling instances, kept outside the repository because they come without a licence to ship them.</summary>
internal static class ScheduleData
{
    private static readonly char[] Blanks = [' ', '\t'];

    /// <summary>PSPLIB instances of a set with their known optimum.</summary>
    public static IEnumerable<(string Name, ScheduleJob Job, int Optimum)> Psplib(string set)
    {
        string folder = OutsideData.Folder("schedule");
        foreach (string line in File.ReadAllLines(Path.Combine(folder, "optimum.csv")).Skip(1).Where(line => line.StartsWith(set + "/", StringComparison.Ordinal)))
        {
            string[] cells = line.Split(',');
            yield return (cells[1], ReadPsplib(Path.Combine(folder, cells[0])), int.Parse(cells[3], CultureInfo.InvariantCulture));
        }
    }

    /// <summary>Instances with working days, days that are fit, and a proven optimum.</summary>
    public static IEnumerable<(string Name, ScheduleJob Job, int Optimum)> Calendar()
    {
        foreach (string file in Directory.EnumerateFiles(OutsideData.Folder("schedule", "calendar"), "*.json").Order(StringComparer.Ordinal))
        {
            using JsonDocument document = JsonDocument.Parse(File.ReadAllText(file));
            JsonElement root = document.RootElement;
            int[] capacity = [.. root.GetProperty("capacity").EnumerateArray().Select(each => each.GetInt32())];
            JsonElement[] tasks = [.. root.GetProperty("tasks").EnumerateArray()];
            ILookup<string, string> after = tasks.SelectMany(task => task.GetProperty("successors").EnumerateArray().Select(later => (Later: Text(later), Earlier: Text(task.GetProperty("id"))))).ToLookup(pair => pair.Later, pair => pair.Earlier);
            yield return (
                root.GetProperty("name").GetString()!,
                new ScheduleJob(
                    Resources(capacity),
                    [
                        .. tasks.Select(task => new ScheduleActivity(
                            Text(task.GetProperty("id")), task.GetProperty("duration").GetInt32(), Needs([.. task.GetProperty("demand").EnumerateArray().Select(each => each.GetInt32())]),
                            [.. after[Text(task.GetProperty("id"))]], task.GetProperty("sameDay").GetBoolean(), task.GetProperty("calmDay").GetBoolean())),
                    ],
                    root.GetProperty("dayLength").GetInt32(), [.. root.GetProperty("goodDays").EnumerateArray().Select(each => each.GetInt32())]),
                root.GetProperty("optimum").GetInt32());
        }

        static string Text(JsonElement number) => number.GetInt32().ToString(CultureInfo.InvariantCulture);
    }

    private static ScheduleJob ReadPsplib(string file)
    {
        string[][] lines = [.. File.ReadAllLines(file).Select(line => line.Split(Blanks, StringSplitOptions.RemoveEmptyEntries))];
        int At(string title) => Array.FindIndex(lines, line => line.Length > 0 && line[0] == title);
        int waits = At("PRECEDENCE") + 2, works = At("REQUESTS/DURATIONS:") + 3, has = At("RESOURCEAVAILABILITIES:") + 2;
        List<(string Later, string Earlier)> after = [];
        for (int at = waits; lines[at][0][0] != '*'; at++) after.AddRange(lines[at].Skip(3).Select(later => (later, lines[at][0])));
        ILookup<string, string> before = after.ToLookup(pair => pair.Later, pair => pair.Earlier);
        List<ScheduleActivity> activities = [];
        for (int at = works; lines[at][0][0] != '*'; at++)
            activities.Add(new ScheduleActivity(lines[at][0], Number(lines[at][2]), Needs([.. lines[at].Skip(3).Select(Number)]), [.. before[lines[at][0]]]));
        return new ScheduleJob(Resources([.. lines[has].Select(Number)]), [.. activities], null, []);
    }

    private static ImmutableArray<ScheduleResource> Resources(int[] amounts) => [.. amounts.Select((amount, at) => new ScheduleResource(Name(at), amount))];

    private static ImmutableDictionary<string, int> Needs(int[] needs) => needs.Select((need, at) => (need, at)).Where(pair => pair.need > 0).ToImmutableDictionary(pair => Name(pair.at), pair => pair.need);

    private static string Name(int resource) => "r" + (resource + 1).ToString(CultureInfo.InvariantCulture);

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
