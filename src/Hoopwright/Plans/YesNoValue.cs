using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>true or false.</summary>
internal sealed class YesNoValue : PlanValue<bool?>
{
    public override bool IsAbsent(bool? value) => value is null;

    public override bool Read(PlanNode node, PlanProblems problems, out bool? value)
    {
        value = node.Kind == PlanNodeKind.YesNo ? node.Text == "true" : null;
        if (value is null)
            WrongKind(node, problems, "true or false, without quotes", "true or false");
        return value is not null;
    }

    public override void Write(bool? value, Utf8JsonWriter writer) => writer.WriteBooleanValue(value == true);

    public override string Example(UnitSystem units) => "true";

    public override void Describe(JsonObject schema) => schema["type"] = "boolean";
}
