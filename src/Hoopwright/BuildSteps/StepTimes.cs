using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.BuildSteps;

/// <summary>
/// How long work takes. No source splits the work of a tunnel by task: the times of the tasks are from memory, set so that a tunnel of
/// 30 by 96 ft on driven posts comes to the 75 to 100 person-hours published for two skilled people with the material on site.
/// </summary>
internal static class StepTimes
{
    /// <summary>Where the sum of the times is published, and the times are not.</summary>
    internal static readonly Citation Rates = new("from memory", "set so that all steps of 30 by 96 ft come to the published 75 to 100 h of two skilled people", Standing.FromMemory);

    // Person-hours for 30 by 96 ft: 12 beginners 114 to 420, mean 237; two skilled people 75 to 100, read as person-hours.
    private static readonly (double Least, double Likely, double Most) Beginners = (114.0 / 75, 237 / 87.5, 420.0 / 100);

    /// <summary>How beginners are slower, with its source.</summary>
    internal static Formula BeginnerRule { get; } = new(
        "t", "least · 114/75, likely · 237/87.5, most · 420/100: person-hours of beginners over those of skilled people for 30 by 96 ft", "h",
        new Citation("Hoophouse Farming Startup, E-3138, Michigan State University (2010); High tunnel construction tips, publisher not shown", "labour for 30 by 96 ft", Standing.Published));

    /// <summary>The work of tasks for a crew.</summary>
    internal static WorkSpan Of(IEnumerable<StepTask> tasks, CrewSkill skill)
    {
        double least = 0, most = 0;
        foreach (StepTask task in tasks)
        {
            least += task.Count * task.LeastEach.TotalMinutes;
            most += task.Count * task.MostEach.TotalMinutes;
        }
        double likely = (least + most) / 2;
        return skill switch
        {
            CrewSkill.Practised => WorkSpan.OfMinutes(least, likely, most),
            CrewSkill.Beginner => WorkSpan.OfMinutes(least * Beginners.Least, likely * Beginners.Likely, most * Beginners.Most),
        };
    }

    /// <summary>Boards cut and joined along a run, counted by a usual length.</summary>
    internal static StepTask Boards(Length run, UnitSystem units)
    {
        (string length, double boards) = units switch { UnitSystem.UsCustomary => ("12 ft", run.Feet / 12), UnitSystem.Metric => ("3.6 m", run.Metres / 3.6) };
        return Task($"A length of board cut and joined, of about {length}", (int)Math.Ceiling(boards), 5.8, 8);
    }

    /// <summary>A task, its times in minutes of one practised person.</summary>
    internal static StepTask Task(string what, int count, double leastMinutes, double mostMinutes, Citation? source = null) =>
        new(Phrase.Of(what), count, TimeSpan.FromMinutes(leastMinutes), TimeSpan.FromMinutes(mostMinutes), source ?? Rates);
}
