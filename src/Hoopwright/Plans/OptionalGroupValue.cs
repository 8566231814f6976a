using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A group of fields that means something by not being there.</summary>
/// <typeparam name="TSection">The section.</typeparam>
/// <param name="format">Its fields.</param>
internal sealed class OptionalGroupValue<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicProperties)] TSection>(PlanFormat<TSection> format) : PlanValue<TSection?>
    where TSection : PlanSection, new()
{
    public override bool IsAbsent(TSection? value) => value is null;

    public override bool Read(PlanNode node, PlanProblems problems, out TSection? value)
    {
        value = null;
        if (node.Kind != PlanNodeKind.Group)
        {
            WrongKind(node, problems, "a group of fields", Example(problems.Units));
            return false;
        }

        value = format.Read(node, problems);
        return true;
    }

    public override void Write(TSection? value, Utf8JsonWriter writer) => format.Write(value!, writer);

    public override string Example(UnitSystem units) => format.Example(units);

    public override string? SentenceAt(string path) => format.SentenceAt(path);

    public override void Describe(JsonObject schema) => format.Describe(schema);
}
