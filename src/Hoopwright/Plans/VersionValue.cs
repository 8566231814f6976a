using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>The version of the format. Whether it is too new is decided before the plan is read.</summary>
internal sealed class VersionValue : PlanValue<PlanVersion>
{
    public override bool IsAbsent(PlanVersion value) => false;

    public override bool Read(PlanNode node, PlanProblems problems, out PlanVersion value)
    {
        value = PlanVersion.Current;
        var read = node.Kind == PlanNodeKind.Text ? PlanVersion.Read(node.Text) : null;
        if (read is null)
        {
            problems.Error(
                PlanCodes.BadVersion, node, "The version of the plan format must be two numbers with a point between, in quotes.",
                Example(problems.Units));
            return false;
        }

        value = read.Value;
        return true;
    }

    public override void Write(PlanVersion value, Utf8JsonWriter writer) => writer.WriteStringValue(value.ToString());

    public override string Example(UnitSystem units) => $"\"{PlanVersion.Current}\"";

    public override void Describe(JsonObject schema)
    {
        schema["type"] = "string";
        schema["const"] = PlanVersion.Current.ToString();
    }
}
