using System.Buffers;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A quantity in words, within bounds.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="range">What is accepted.</param>
internal sealed class QuantityValue<T>(QuantityRange<T> range) : PlanValue<Written<T>?>
    where T : struct, IComparable<T>
{
    // What a bare number or a number without a unit consists of.
    private static readonly SearchValues<char> NumberMarks = SearchValues.Create("0123456789 .-+/½¼¾⅛⅜⅝⅞");

    private readonly QuantityKind<T> _kind = range.Kind;

    public override bool IsAbsent(Written<T>? value) => value is null;

    public override bool Read(PlanNode node, PlanProblems problems, out Written<T>? value)
    {
        value = null;
        switch (node.Kind)
        {
            case PlanNodeKind.Number when _kind.HasUnit:
                problems.Error(
                    PlanCodes.UnitMissing, node, $"The number has no unit; write {_kind.Noun} with its unit, in quotes.",
                    WithUnit(node.Seen, range.UsualUnit(problems.Units)));
                return false;
            case PlanNodeKind.Number:
                WrongKind(node, problems, $"{_kind.Noun} in quotes", Quoted(node.Seen));
                return false;
            case PlanNodeKind.Text:
                break;
            default:
                WrongKind(node, problems, $"{_kind.Noun} in quotes", Example(problems.Units));
                return false;
        }

        var reading = _kind.Read(node.Text);
        if (!reading.IsRead)
        {
            problems.Error(CodeFor(node.Text), node, reading.Problem ?? $"This cannot be read as {_kind.Noun}.", reading.Accepted);
            return false;
        }

        if (range.NearestTo(reading.Value, problems.Units) is { } nearest)
        {
            problems.Error(
                PlanCodes.OutOfRange, node, $"The value is {node.Seen}; it must be {range.In(problems.Units)}.",
                $"{range.In(problems.Units)}; the nearest is {nearest.Text}");
            return false;
        }

        value = new Written<T>(node.Text, reading.Value);
        return true;
    }

    public override void Write(Written<T>? value, Utf8JsonWriter writer) => writer.WriteStringValue(value?.Text);

    public override string Example(UnitSystem units) => Quoted(range.ExampleIn(units));

    public override void Describe(JsonObject schema)
    {
        schema["type"] = "string";
        schema["pattern"] = _kind.Pattern;
        schema["examples"] = range.Example == range.ExampleMetric ? new JsonArray(range.Example) : new JsonArray(range.Example, range.ExampleMetric);
        var metric = range.LeastMetric.Text == range.Least.Text ? "" : $" ({range.In(UnitSystem.Metric)})";
        schema["$comment"] = $"Accepted: {range.In(UnitSystem.UsCustomary)}{metric}.";
    }

    // As it would stand in the file, where an inch mark inside a text needs its \.
    private static string Quoted(string text) => $"\"{text.Replace("\"", "\\\"", StringComparison.Ordinal)}\"";

    private static string WithUnit(string number, string unit) => unit switch
    {
        // A bare 0.02 may be meant as a share or in hundredths; a bare 2 is no share that makes sense.
        "%" when double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out var share) && Math.Abs(share) < 1 =>
            $"{Quoted(number)} or {Quoted($"{number} %")}",
        "°" => Quoted($"{number}°"),
        _ => Quoted($"{number} {unit}"),
    };

    private string CodeFor(string text) =>
        text.Contains(',', StringComparison.Ordinal) && text.AsSpan().ContainsAnyInRange('0', '9') ? PlanCodes.CommaInNumber
        : _kind.HasUnit && text.AsSpan().ContainsAnyInRange('0', '9') && !text.AsSpan().ContainsAnyExcept(NumberMarks) ? PlanCodes.UnitMissing
        : PlanCodes.Unreadable;
}
