using System.Text;
using System.Text.Json;
using CsCheck;
using Hoopwright.Diagnostics;
using Hoopwright.Scheduling;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Scheduling;

public sealed class ScheduleFileTests
{
    private const string Crew = """ "resources": { "crew": 2 } """;

    public static TheoryData<string, string, string> Bad => new()
    {
        { "model.not-json", "", "{ \"resources\": {" },
        { "model.unknown-field", "resource", $$"""{ "resource": {}, {{Crew}}, "activities": [] }""" },
        { "model.missing-field", "resources", """{ "activities": [] }""" },
        { "model.missing-field", "activities", $$"""{ {{Crew}} }""" },
        { "model.missing-field", "activities[0].duration", $$"""{ {{Crew}}, "activities": [{ "id": "a" }] }""" },
        { "model.count", "activities[0].duration", $$"""{ {{Crew}}, "activities": [{ "id": "a", "duration": -1 }] }""" },
        { "model.count", "activities[0].needs.crew", $$"""{ {{Crew}}, "activities": [{ "id": "a", "duration": 1, "needs": { "crew": 1.5 } }] }""" },
        { "model.wrong-kind", "activities[0].after[0]", $$"""{ {{Crew}}, "activities": [{ "id": "a", "duration": 1, "after": [1] }] }""" },
        { "schedule.duplicate", "activities[1]", $$"""{ {{Crew}}, "activities": [{ "id": "a", "duration": 1 }, { "id": "a", "duration": 1 }] }""" },
        { "schedule.unknown", "activities[0].needs.cart", $$"""{ {{Crew}}, "activities": [{ "id": "a", "duration": 1, "needs": { "cart": 1 } }] }""" },
        { "schedule.unknown", "activities[0].after", $$"""{ {{Crew}}, "activities": [{ "id": "a", "duration": 1, "after": ["b"] }] }""" },
        { "schedule.too-few", "activities[0].needs.crew", $$"""{ {{Crew}}, "activities": [{ "id": "a", "duration": 1, "needs": { "crew": 4 } }] }""" },
        { "schedule.circle", "activities[0]", $$"""{ {{Crew}}, "activities": [{ "id": "a", "duration": 1, "after": ["b"] }, { "id": "b", "duration": 1, "after": ["a"] }] }""" },
        { "schedule.no-day", "dayLength", $$"""{ {{Crew}}, "activities": [{ "id": "a", "duration": 1, "sameDay": true }] }""" },
        { "schedule.longer-than-day", "activities[0].duration", $$"""{ {{Crew}}, "dayLength": 8, "activities": [{ "id": "a", "duration": 9, "sameDay": true }] }""" },
        { "schedule.no-good-day", "goodDays", $$"""{ {{Crew}}, "dayLength": 8, "activities": [{ "id": "a", "duration": 1, "goodDaysOnly": true }] }""" },
        { "schedule.no-plan", "activities", $$"""{ {{Crew}}, "dayLength": 8, "goodDays": [0], "activities": [{ "id": "a", "duration": 9 }, { "id": "b", "duration": 1, "after": ["a"], "goodDaysOnly": true }] }""" },
        { "schedule.too-large", "activities", $$"""{ {{Crew}}, "activities": [{ "id": "a", "duration": 1000000 }, { "id": "b", "duration": 1000000 }] }""" },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void What_is_wrong_with_a_file_is_said_once_and_where(string code, string path, string file)
    {
        ScheduleFileAnswer answer = Solve(file);
        Assert.Equal([(code, path)], answer.Diagnostics.Where(found => found.Severity == Severity.Error).Select(found => (found.Code, found.Path)));
        Assert.All(answer.Diagnostics, found => Assert.NotEmpty(found.Accepted!));
        Assert.Equal("", ScheduleFileText.Table(answer));
        using JsonDocument json = JsonDocument.Parse(ScheduleFileText.Json(answer, TimeSpan.Zero));
        Assert.False(json.RootElement.TryGetProperty("makespan", out _));
    }

    [Fact]
    public void A_circle_is_told_all_the_way_round()
    {
        ScheduleFileAnswer answer = Solve($$"""{ {{Crew}}, "activities": [{ "id": "a", "duration": 1, "after": ["c"] }, { "id": "b", "duration": 1, "after": ["a"] }, { "id": "c", "duration": 1, "after": ["b"] }] }""");
        Assert.Equal("a waits for c waits for b waits for a", Assert.Single(answer.Diagnostics).Seen);
    }

    [Fact]
    public void The_first_job_of_the_page_has_the_answer_of_the_page()
    {
        string page = File.ReadAllText(Path.Combine(SamplePlans.Root, "docs", "schedule-job.md"));
        Assert.Equal(Block("answer"), Encoding.UTF8.GetString(ScheduleFileText.Json(Solve(Block("json")), TimeSpan.Zero)).TrimEnd('\n'));

        string Block(string kind)
        {
            int from = page.IndexOf($"```{kind}\n", StringComparison.Ordinal) + kind.Length + 4;
            return page[from..page.IndexOf("\n```", from, StringComparison.Ordinal)];
        }
    }

    [Fact]
    public void The_example_is_planned_and_proven_with_the_roof_film_on_a_good_day()
    {
        ScheduleFileAnswer answer = ScheduleFile.Solve(SamplePlans.ExampleBytes("schedule-job"));
        Assert.Empty(answer.Diagnostics);
        Assert.True(answer.Plan!.IsProven);
        Assert.Empty(ScheduleRules.Broken(answer.Job!, answer.Plan));
        Assert.Contains("roof film", ScheduleFileText.Table(answer), StringComparison.Ordinal);
    }

    [Fact]
    public void Mangled_files_are_answered_with_words()
    {
        byte[] whole = SamplePlans.ExampleBytes("schedule-job");
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte, Gen.Int[0, whole.Length]).Sample(
            (at, value, length) =>
            {
                byte[] mangled = [.. whole[..length]];
                if (at < length) mangled[at] = value;
                ScheduleFileAnswer answer = ScheduleFile.Solve(mangled, new ScheduleEffort(100));
                Assert.True(answer.Plan is not null || answer.Diagnostics.Any(found => found.Severity == Severity.Error));
            },
            iter: 3000);
    }

    private static ScheduleFileAnswer Solve(string file) => ScheduleFile.Solve(Encoding.UTF8.GetBytes(file));
}
