using System.Collections.Immutable;
using System.Text.Json;
using Hoopwright.ModelFiles;

namespace Hoopwright.Scheduling;

/// <summary>
/// Reads and plans scheduling jobs given as files, as docs/schedule-job.md says. Whatever the bytes are, the answer is a plan or a list of
/// diagnostics, never an exception.
/// </summary>
public static class ScheduleFile
{
    private const int MostTime = 1_000_000, MostAmount = 1_000_000;

    private static readonly ImmutableArray<string> Fields = ["resources", "activities", "dayLength", "goodDays"];
    private static readonly ImmutableArray<string> ActivityFields = ["id", "duration", "needs", "after", "sameDay", "goodDaysOnly"];

    /// <summary>Reads a job and plans it.</summary>
    /// <param name="utf8">The bytes of the file.</param>
    /// <param name="effort">How much work may be spent; <see cref="ScheduleEffort.Usual"/> when null.</param>
    /// <param name="stopAsked">Asked now and then; true ends the work with the best plan so far. Null never stops.</param>
    public static ScheduleFileAnswer Solve(ReadOnlyMemory<byte> utf8, ScheduleEffort? effort = null, Func<bool>? stopAsked = null)
    {
        var problems = new ModelProblems();
        ScheduleJob? job = ModelFile.Read(utf8, problems, file => Read(file, problems));
        if (job is null || problems.HasErrors) return new ScheduleFileAnswer(job, null, problems.All());
        SchedulePlan plan = Scheduler.Solve(job, effort, stopAsked);
        return new ScheduleFileAnswer(job, plan.Makespan is null ? null : plan, [.. problems.All(), .. plan.Diagnostics]);
    }

    private static ScheduleJob Read(ModelGroup file, ModelProblems problems)
    {
        file.Only(Fields);
        ModelGroup? resources = file.NeededGroup("resources", """{ "crew": 4 }""");
        _ = file.NeededValue("activities", """[{ "id": "1", "duration": 3, "needs": { "crew": 2 }, "after": [] }]""");
        ImmutableArray<ScheduleActivity>.Builder activities = ImmutableArray.CreateBuilder<ScheduleActivity>();
        foreach ((JsonElement json, string path) in file.List("activities"))
        {
            if (ModelGroup.Of(json, path, problems) is { } group && Activity(group, problems) is { } activity) activities.Add(activity);
        }
        return new ScheduleJob(
            [.. (resources?.Entries() ?? []).Select(entry => (entry.Id, Amount: Whole(entry.Json, entry.Path, MostAmount, problems))).Where(each => each.Amount is not null).Select(each => new ScheduleResource(each.Id, each.Amount!.Value))],
            activities.ToImmutable(),
            file.Count("dayLength", 1, MostTime),
            [.. file.List("goodDays").Select(each => Whole(each.Json, each.Path, MostTime, problems)).OfType<int>()]);
    }

    private static ScheduleActivity? Activity(ModelGroup group, ModelProblems problems)
    {
        group.Only(ActivityFields);
        string? id = group.NeededText("id", "\"1\"");
        int? duration = group.NeededValue("duration", "3") is null ? null : group.Count("duration", 0, MostTime);
        ImmutableDictionary<string, int>.Builder needs = ImmutableDictionary.CreateBuilder<string, int>();
        foreach (ModelEntry entry in group.Group("needs")?.Entries() ?? [])
        {
            if (Whole(entry.Json, entry.Path, MostAmount, problems) is { } need) needs[entry.Id] = need;
        }
        ImmutableArray<string>.Builder after = ImmutableArray.CreateBuilder<string>();
        foreach ((JsonElement json, string path) in group.List("after"))
        {
            if (json.ValueKind == JsonValueKind.String) after.Add(json.GetString()!);
            else ModelGroup.Wrong(problems, path, json, "the id of an activity in double quotes");
        }
        bool sameDay = group.Flag("sameDay") ?? false, goodDaysOnly = group.Flag("goodDaysOnly") ?? false;
        return id is null || duration is null ? null : new ScheduleActivity(id, duration.Value, needs.ToImmutable(), after.ToImmutable(), sameDay, goodDaysOnly);
    }

    private static int? Whole(JsonElement json, string path, int most, ModelProblems problems)
    {
        if (ModelGroup.Whole(json, path, problems) is not { } value) return null;
        if (value >= 0 && value <= most) return value;
        problems.Error("model.count", path, "This is less than 0, or too large.", ModelGroup.Seen(json), "a whole number up to 1 000 000");
        return null;
    }
}
