using System.Globalization;
using System.Text.Json;
using Hoopwright.Diagnostics;
using Hoopwright.ModelFiles;

namespace Hoopwright.Cutting;

/// <summary>Writes what cutting a job file gave as JSON for machines. The same answer gives the same bytes.</summary>
public static class CutFileJson
{
    /// <summary>
    /// The answer: cost, lower bound and leftovers in the job's own units; where the job names units, leftovers as a tape reads
    /// them and, exactly, in metres.
    /// </summary>
    /// <param name="answer">The answer.</param>
    /// <param name="took">How long it took, as the caller's clock has it.</param>
    /// <returns>UTF-8 without a mark, ending in a line end.</returns>
    public static byte[] Of(CutFileAnswer answer, TimeSpan took)
    {
        ArgumentNullException.ThrowIfNull(answer);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, AnswerJson.Indented))
        {
            json.WriteStartObject();
            if (answer is { Plan: { } plan, Job: { } job })
                Plan(json, job, plan, answer.Again);
            json.WritePropertyName("seconds");
            json.WriteRawValue(took.TotalSeconds.ToString("F6", CultureInfo.InvariantCulture));
            json.WritePropertyName("diagnostics");
            DiagnosticJson.Write(json, answer.Diagnostics);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static void Plan(Utf8JsonWriter json, CutFileJob job, UnitlessCutPlan plan, RecutPlan? again)
    {
        Number(json, "cost", plan.Cost / job.MoneyScale);
        json.WriteNumber("bars", plan.Bars);
        Number(json, "lowerBound", plan.LowerBound / job.MoneyScale);
        json.WriteBoolean("proven", plan.Proven);
        json.WriteString("method", plan.Method switch
        {
            CutMethod.None => "none",
            CutMethod.Greedy => "greedy",
            CutMethod.Rounding => "rounding",
            CutMethod.Search => "search",
        });
        if (again is not null)
        {
            json.WriteNumber("waiting", again.Waiting);
            json.WriteNumber("keptBars", again.Kept.Sum());
            json.WriteBoolean("fewestChanged", again.FewestChanged);
        }

        json.WriteStartArray("patterns");
        for (var index = 0; index < plan.Patterns.Length; index++)
        {
            var pattern = plan.Patterns[index];
            json.WriteStartObject();
            json.WriteString("stock", pattern.StockId);
            json.WriteNumber("times", pattern.Times);
            json.WriteStartArray("pieces");
            foreach (var piece in pattern.Pieces)
                json.WriteStringValue(piece);
            json.WriteEndArray();
            if (job.NamesUnits)
            {
                json.WriteString("leftover", job.Words.Length(pattern.Leftover));
                Number(json, "leftoverM", pattern.Leftover);
            }
            else
            {
                Number(json, "leftover", pattern.Leftover);
            }

            if (again is not null)
            {
                json.WriteNumber("kept", again.Kept[index]);
                json.WriteNumber("further", again.Further[index]);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Number(Utf8JsonWriter json, string name, decimal value)
    {
        json.WritePropertyName(name);
        json.WriteRawValue(value.ToString("0.############", CultureInfo.InvariantCulture));
    }
}
