using System.Collections.Immutable;
using Hoopwright.BuildSteps;
using Hoopwright.Calendar;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Sheets.Words;
using Hoopwright.Takeoff;

namespace Hoopwright.Sheets.Packets;

/// <summary>What a step's card says, text by text, in the language of a crew.</summary>
/// <param name="planned">A plan worked out to its orders.</param>
/// <param name="tunnel">Its tunnel.</param>
/// <param name="plan">The steps.</param>
/// <param name="words">The language.</param>
public sealed class StepSheet(PlannedTunnel planned, Tunnel tunnel, BuildPlan plan, CrewWords words)
{
    private readonly PacketTableMaker make = new(planned, tunnel, words);

    /// <summary>A sentence; names in it too.</summary>
    public string Said(Phrase phrase) => make.Phrased(phrase);

    /// <summary>What it uses up, item by item.</summary>
    public string Uses(BuildStep step) => make.Uses(step.Materials);

    /// <summary>People, at least and at best.</summary>
    public static string People(BuildStep step) => PacketTableMaker.PeopleOf(step);

    /// <summary>Work of one person: likely, and between least and most.</summary>
    public string Work(WorkSpan work) => words.Fill("{0}, {1} to {2}", StepCards.Hours(work.Likely), StepCards.Hours(work.Least), StepCards.Hours(work.Most));

    /// <summary>What it waits for, by number and name, and how long.</summary>
    public string Wait(StepWait wait) => make.WaitOf(plan, wait);

    /// <summary>Its tools, and how many.</summary>
    public string Tools(BuildStep step) => string.Join(", ", step.Tools.Select(make.ToolOf));

    /// <summary>A tool, and how many where it is more than one.</summary>
    public string Tool(Tool tool) => make.ToolOf(tool);

    /// <summary>What several steps use up together, item by item.</summary>
    public string Together(IEnumerable<MaterialLine> lines) => make.Uses(CrewCalendarSheet.Together(lines));

    /// <summary>A day with its weekday.</summary>
    public static string Day(DateOnly date, CrewWords words) => CrewDayWords.Day(date, words);

    /// <summary>A time of the day.</summary>
    public static string Clock(TimeOnly time) => CrewDayWords.Clock(time);

    /// <summary>What weather it asks for, in short.</summary>
    public ImmutableArray<string> Weather(BuildStep step) => [.. StepCards.Weather(step.Weather, planned.Units).Select(make.Phrased)];
}
