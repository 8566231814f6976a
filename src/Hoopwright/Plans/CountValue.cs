using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A whole number of things.</summary>
/// <param name="least">The least accepted.</param>
/// <param name="most">The most accepted.</param>
internal sealed class CountValue(int least, int most) : PlanValue<int?>
{
    /// <summary>The only counts accepted, rising; empty for all from least to most.</summary>
    public ImmutableArray<int> Only { get; init; } = [];

    private string Range => Only.IsEmpty
        ? string.Create(CultureInfo.InvariantCulture, $"{least} to {most}")
        : string.Join(", ", Only.Select(count => count.ToString(CultureInfo.InvariantCulture)));

    public override bool IsAbsent(int? value) => value is null;

    public override bool Read(PlanNode node, PlanProblems problems, out int? value)
    {
        value = null;
        if (node.Kind != PlanNodeKind.Number)
        {
            WrongKind(node, problems, "a whole number without quotes", Range);
            return false;
        }

        if (!int.TryParse(node.Text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var count))
        {
            // Written with a point or a power, or beyond what a count holds: the nearest count is shown either way.
            _ = double.TryParse(node.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number);
            var whole = Nearest(double.IsNaN(number) ? 0 : Math.Round(number, MidpointRounding.AwayFromZero));
            problems.Error(
                PlanCodes.NotWhole, node, $"{node.Seen} is not a whole number as one counts.",
                string.Create(CultureInfo.InvariantCulture, $"{Range}; the nearest is {whole}"));
            return false;
        }

        var nearest = Nearest(count);
        if (nearest != count)
        {
            problems.Error(
                PlanCodes.OutOfRange, node, $"The count is {node.Seen}; it must be {(Only.IsEmpty ? "" : "one of ")}{Range}.",
                string.Create(CultureInfo.InvariantCulture, $"{Range}; the nearest is {nearest}"));
            return false;
        }

        value = count;
        return true;
    }

    public override void Write(int? value, Utf8JsonWriter writer) => writer.WriteNumberValue(value ?? 0);

    public override string Example(UnitSystem units) => Nearest(1).ToString(CultureInfo.InvariantCulture);

    public override void Describe(JsonObject schema)
    {
        schema["type"] = "integer";
        if (Only.IsEmpty)
        {
            schema["minimum"] = least;
            schema["maximum"] = most;
        }
        else
        {
            schema["enum"] = new JsonArray([.. Only.Select(count => (JsonNode?)JsonValue.Create(count))]);
        }
    }

    private int Nearest(double number) => Only.IsEmpty
        ? (int)Math.Clamp(number, least, most)
        : Only.MinBy(count => Math.Abs(count - number));
}
