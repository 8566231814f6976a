using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A list of groups of fields.</summary>
/// <typeparam name="TSection">The section that one of them is.</typeparam>
/// <param name="format">Its fields.</param>
internal sealed class GroupListValue<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicProperties)] TSection>(PlanFormat<TSection> format) : PlanValue<ImmutableArray<TSection>>
    where TSection : PlanSection, new()
{
    public override bool IsAbsent(ImmutableArray<TSection> value) => value.IsDefaultOrEmpty;

    public override bool Read(PlanNode node, PlanProblems problems, out ImmutableArray<TSection> value)
    {
        value = [];
        if (node.Kind != PlanNodeKind.List)
        {
            WrongKind(node, problems, "a list of groups of fields", Example(problems.Units));
            return false;
        }

        var read = ImmutableArray.CreateBuilder<TSection>();
        foreach (var item in node.Children)
        {
            if (item.Kind == PlanNodeKind.Group)
                read.Add(format.Read(item, problems));
            else
                WrongKind(item, problems, "a group of fields", "{ … }");
        }

        value = read.ToImmutable();
        return true;
    }

    public override void Write(ImmutableArray<TSection> value, Utf8JsonWriter writer)
    {
        writer.WriteStartArray();
        foreach (var section in value)
            format.Write(section, writer);
        writer.WriteEndArray();
    }

    public override string Example(UnitSystem units) => "[ { … } ]";

    public override string? SentenceAt(string path) => format.SentenceAt(path);

    public override void Describe(JsonObject schema)
    {
        var items = new JsonObject();
        format.Describe(items);
        schema["type"] = "array";
        schema["items"] = items;
    }
}
