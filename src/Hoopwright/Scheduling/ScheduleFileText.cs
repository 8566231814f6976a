using System.Globalization;
using System.Text;
using System.Text.Json;
using Hoopwright.Diagnostics;
using Hoopwright.ModelFiles;

namespace Hoopwright.Scheduling;

/// <summary>Writes what planning a job file gave: as JSON for machines, as a table for people. The same answer gives the same bytes.</summary>
public static class ScheduleFileText
{
    private const int BarWidth = 48;

    /// <summary>The answer as JSON: makespan, lowerBound, proven, start by activity, seconds, diagnostics.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="took">How long it took, as the caller's clock has it.</param>
    /// <returns>UTF-8 without a mark, ending in a line end.</returns>
    public static byte[] Json(ScheduleFileAnswer answer, TimeSpan took)
    {
        ArgumentNullException.ThrowIfNull(answer);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, AnswerJson.Indented))
        {
            json.WriteStartObject();
            if (answer is { Plan: { Makespan: { } makespan } plan, Job: { } job })
            {
                json.WriteNumber("makespan", makespan);
                json.WriteNumber("lowerBound", plan.LowerBound);
                json.WriteBoolean("proven", plan.IsProven);
                json.WriteStartObject("start");
                for (int at = 0; at < job.Activities.Length; at++) json.WriteNumber(job.Activities[at].Id, plan.Starts[at]);
                json.WriteEndObject();
            }
            json.WritePropertyName("seconds");
            json.WriteRawValue(took.TotalSeconds.ToString("F6", CultureInfo.InvariantCulture));
            json.WritePropertyName("diagnostics");
            DiagnosticJson.Write(json, answer.Diagnostics);
            json.WriteEndObject();
        }
        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    /// <summary>The answer as lines: the end and what is known of it, then each activity in the order of starts with a bar.</summary>
    /// <param name="answer">The answer.</param>
    /// <returns>Lines ending in \n; nothing when there is no plan.</returns>
    public static string Table(ScheduleFileAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer is not { Plan: { Makespan: { } makespan } plan, Job: { } job }) return "";
        StringBuilder text = new();
        string known = plan.IsProven ? "proven: no plan ends earlier" : string.Create(CultureInfo.InvariantCulture, $"no plan ends before {plan.LowerBound}; whether one ends between is not known");
        text.Append(CultureInfo.InvariantCulture, $"Ends at {makespan} ({known}).\n");
        if (job.DayLength is { } day && makespan > 0) text.Append(CultureInfo.InvariantCulture, $"That is on day {(makespan - 1) / day}, counted from 0, of {day} each.\n");
        text.Append('\n');
        int[] order = [.. Enumerable.Range(0, job.Activities.Length).OrderBy(at => plan.Starts[at]).ThenBy(at => at)];
        int name = Math.Max(8, job.Activities.Select(each => each.Id.Length).DefaultIfEmpty(0).Max());
        text.Append(CultureInfo.InvariantCulture, $"{"activity".PadRight(name)}  {"start",6}  {"end",6}\n");
        foreach (int at in order)
        {
            (int start, int end) = (plan.Starts[at], plan.Starts[at] + job.Activities[at].Duration);
            int from = Place(start), to = Math.Max(Place(end), end > start ? from + 1 : from);
            text.Append(CultureInfo.InvariantCulture, $"{job.Activities[at].Id.PadRight(name)}  {start,6}  {end,6}  {(new string(' ', from) + (end > start ? new string('=', to - from) : "|")).TrimEnd()}\n");
        }
        return text.ToString();

        int Place(int time) => makespan == 0 ? 0 : (int)((long)time * BarWidth / makespan);
    }
}
