using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A group of fields that is always there, if only with nothing in it.</summary>
/// <typeparam name="TSection">The section.</typeparam>
/// <param name="format">Its fields.</param>
internal sealed class GroupValue<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicProperties)] TSection>(PlanFormat<TSection> format) : PlanValue<TSection>, IPlanGroup
    where TSection : PlanSection, new()
{
    public override bool IsAbsent(TSection value) => format.IsEmpty(value);

    public override bool Read(PlanNode node, PlanProblems problems, out TSection value)
    {
        if (node.Kind != PlanNodeKind.Group)
        {
            value = new TSection();
            WrongKind(node, problems, "a group of fields", Example(problems.Units));
            return false;
        }

        value = format.Read(node, problems);
        return true;
    }

    public override void Write(TSection value, Utf8JsonWriter writer) => format.Write(value, writer);

    public override string Example(UnitSystem units) => format.Example(units);

    public override string? SentenceAt(string path) => format.SentenceAt(path);

    public override void Describe(JsonObject schema) => format.Describe(schema);
}
