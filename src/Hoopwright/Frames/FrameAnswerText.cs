using System.Globalization;
using System.Text.Json;
using Hoopwright.Diagnostics;
using Hoopwright.ModelFiles;

namespace Hoopwright.Frames;

/// <summary>Writes what solving a frame gave: as JSON for machines, as a table for people. The same answer gives the same bytes.</summary>
public static class FrameAnswerText
{
    // Two digits more than equilibrium is checked to; the last three of a double differ between machines.
    private const string Digits = "G12";

    // What is left where forces or movements cancel is rounding: beside the greatest of its kind it is nothing.
    private const double NothingShare = 1e-12;

    private static readonly JsonEncodedText[] ShiftNames = Encode("uxM", "uyM", "uzM", "rxRad", "ryRad", "rzRad");
    private static readonly JsonEncodedText[] ForceNames = Encode("fxN", "fyN", "fzN", "mxNm", "myNm", "mzNm");
    private static readonly JsonEncodedText[] SectionNames = Encode("nN", "vyN", "vzN", "tNm", "myNm", "mzNm");

    /// <summary>The answer as JSON, in the order of the model: SI values with the unit at the end of the name.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="took">How long it took, as the caller's clock has it.</param>
    /// <returns>UTF-8 without a mark, ending in a line end.</returns>
    public static byte[] Json(FrameAnswer answer, TimeSpan took)
    {
        ArgumentNullException.ThrowIfNull(answer);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, AnswerJson.Indented))
        {
            json.WriteStartObject();
            json.WriteStartObject("combinations");
            int state = 0, failed = 0;
            for (int at = 0; at < answer.Model.Combinations.Length; at++)
            {
                if (state < answer.Solved.Length && answer.Solved[state] == at)
                    Combination(json, answer, state++);
                else if (failed < answer.Unsolved.Length && answer.Unsolved[failed].Combination == at)
                    Unsolved(json, answer.Model.Combinations[at].Id, answer.Unsolved[failed++].Code);
            }
            json.WriteEndObject();
            Buckling(json, answer);
            if (!answer.Paths.IsEmpty)
                Paths(json, answer);
            json.WritePropertyName("seconds");
            json.WriteRawValue(took.TotalSeconds.ToString("0.000000", CultureInfo.InvariantCulture));
            json.WritePropertyName("diagnostics");
            DiagnosticJson.Write(json, answer.Diagnostics);
            json.WriteEndObject();
        }
        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    /// <summary>The answer as plain tables: how it was found, the nodes that move most, reactions, the members bent most.</summary>
    /// <param name="answer">The answer.</param>
    /// <returns>Lines ending in \n; nothing when there is no state.</returns>
    public static string Table(FrameAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return FrameAnswerTable.Of(answer);
    }

    private static void Combination(Utf8JsonWriter json, FrameAnswer answer, int at)
    {
        var (model, state) = (answer.Model, answer.States[at]);
        json.WriteStartObject(model.Combinations[answer.Solved[at]].Id);
        Displacements(json, model, state.Displacements.AsSpan());
        var (forceN, momentNm) = Greatest(state.SectionForces.AsSpan());
        var (reactionN, reactionNm) = Greatest(state.Reactions.AsSpan());
        (forceN, momentNm) = (Math.Max(forceN, reactionN), Math.Max(momentNm, reactionNm));
        json.WriteStartObject("reactions");
        for (int node = 0; node < model.Nodes.Length; node++)
        {
            if (model.Nodes[node].Held != Freedoms.None || model.Nodes[node].Springs is not null)
                Six(json, model.Nodes[node].Id, ForceNames, state.Reactions.AsSpan().Slice(6 * node, 6), forceN, momentNm);
        }
        json.WriteEndObject();
        json.WriteStartObject("members");
        for (int member = 0; member < model.Members.Length; member++)
        {
            json.WriteStartObject(model.Members[member].Id);
            Six(json, "from", SectionNames, state.SectionForces.AsSpan().Slice(12 * member, 6), forceN, momentNm);
            Six(json, "to", SectionNames, state.SectionForces.AsSpan().Slice((12 * member) + 6, 6), forceN, momentNm);
            json.WriteEndObject();
        }
        json.WriteEndObject();
        json.WriteNumber("iterations", state.Iterations);
        json.WritePropertyName("residual");
        json.WriteRawValue(state.Residual.ToString("0.0E-00", CultureInfo.InvariantCulture));
        json.WriteEndObject();
    }

    private static void Unsolved(Utf8JsonWriter json, string combination, string code)
    {
        json.WriteStartObject(combination);
        json.WriteString("unsolved", code);
        json.WriteEndObject();
    }

    private static void Displacements(Utf8JsonWriter json, FrameModel model, ReadOnlySpan<double> values)
    {
        var (shiftM, turnRad) = Greatest(values);
        json.WriteStartObject("displacements");
        for (int node = 0; node < model.Nodes.Length; node++)
            Six(json, model.Nodes[node].Id, ShiftNames, values.Slice(6 * node, 6), shiftM, turnRad);
        json.WriteEndObject();
    }

    private static void Paths(Utf8JsonWriter json, FrameAnswer answer)
    {
        json.WriteStartObject("paths");
        for (int at = 0; at < answer.Paths.Length; at++)
        {
            json.WriteStartArray(answer.Model.Combinations[answer.Solved[at]].Id);
            foreach (var point in answer.Paths[at])
            {
                json.WriteStartObject();
                json.WritePropertyName("loadFactor");
                json.WriteRawValue(point.LoadFactor.ToString(Digits, CultureInfo.InvariantCulture));
                json.WriteNumber("iterations", point.Iterations);
                Displacements(json, answer.Model, point.Displacements.AsSpan());
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        json.WriteEndObject();
    }

    private static void Buckling(Utf8JsonWriter json, FrameAnswer answer)
    {
        json.WriteStartObject("buckling");
        for (int at = 0; at < answer.Buckling.Length; at++)
        {
            json.WriteStartObject(answer.Model.Combinations[answer.Solved[at]].Id);
            json.WriteStartArray("factors");
            foreach (double factor in answer.Buckling[at].Factors)
                json.WriteRawValue(factor.ToString(Digits, CultureInfo.InvariantCulture));
            json.WriteEndArray();
            json.WriteEndObject();
        }
        json.WriteEndObject();
    }

    private static void Six(Utf8JsonWriter json, string name, JsonEncodedText[] names, ReadOnlySpan<double> values, double greatest, double greatestTurning)
    {
        Span<byte> text = stackalloc byte[32];
        json.WriteStartObject(name);
        for (int at = 0; at < 6; at++)
        {
            json.WritePropertyName(names[at]);
            double value = Math.Abs(values[at]) <= NothingShare * (at < 3 ? greatest : greatestTurning) ? 0 : values[at];
            value.TryFormat(text, out int length, Digits, CultureInfo.InvariantCulture);
            json.WriteRawValue(text[..length], skipInputValidation: true);
        }
        json.WriteEndObject();
    }

    /// <summary>The greatest of the first three and of the last three of every six.</summary>
    private static (double Straight, double Turning) Greatest(ReadOnlySpan<double> values)
    {
        double straight = 0, turning = 0;
        for (int at = 0; at < values.Length; at++)
        {
            if (at % 6 < 3)
                straight = Math.Max(straight, Math.Abs(values[at]));
            else
                turning = Math.Max(turning, Math.Abs(values[at]));
        }
        return (straight, turning);
    }

    private static JsonEncodedText[] Encode(params string[] names) => [.. names.Select(name => JsonEncodedText.Encode(name))];
}
