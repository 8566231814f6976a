using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>The size of a board or post, brought to one way of writing: 2x6, or 45x145 mm for an actual size.</summary>
/// <param name="example">A size to show to someone who left it out.</param>
internal sealed class LumberValue(string example) : PlanValue<string?>
{
    public override bool IsAbsent(string? value) => value is null;

    public override bool Read(PlanNode node, PlanProblems problems, out string? value)
    {
        value = null;
        if (node.Kind != PlanNodeKind.Text)
        {
            WrongKind(node, problems, "the size of a board in quotes", Example(problems.Units));
            return false;
        }

        value = LumberSizes.Find(node.Text)?.Name;
        if (value is not null)
            return true;

        problems.Error(
            PlanCodes.UnknownLumber, node, $"{node.Seen} is no size that boards are sold in.",
            // 50x148 is no nominal size of any trade: the unit was left out.
            LumberSizes.Find(node.Text + " mm")?.Name ?? $"{LumberSizes.Nearest(node.Text).Name}, or an actual size such as 45x145 mm");
        return false;
    }

    public override void Write(string? value, Utf8JsonWriter writer) => writer.WriteStringValue(value);

    public override string Example(UnitSystem units) => $"\"{example}\"";

    public override void Describe(JsonObject schema)
    {
        schema["type"] = "string";
        schema["pattern"] = @"^\s*[0-9.]+\s*(?:[xX×*]|by)\s*[0-9.]+\s*(?:mm)?\s*$";
        schema["examples"] = new JsonArray(example, "45x145 mm");
    }
}
