using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A list of texts.</summary>
/// <param name="item">How one of them is read and written.</param>
internal sealed class TextListValue(TextValue item) : PlanValue<ImmutableArray<string>>
{
    public override bool IsAbsent(ImmutableArray<string> value) => value.IsDefaultOrEmpty;

    public override bool Read(PlanNode node, PlanProblems problems, out ImmutableArray<string> value)
    {
        value = [];
        if (node.Kind != PlanNodeKind.List)
        {
            WrongKind(node, problems, "a list of texts in [ ]", Example(problems.Units));
            return false;
        }

        var read = ImmutableArray.CreateBuilder<string>();
        foreach (var child in node.Children)
        {
            if (item.Read(child, problems, out var text) && text is not null)
                read.Add(text);
        }

        value = read.ToImmutable();
        return true;
    }

    public override void Write(ImmutableArray<string> value, Utf8JsonWriter writer)
    {
        writer.WriteStartArray();
        foreach (var text in value)
            item.Write(text, writer);
        writer.WriteEndArray();
    }

    public override string Example(UnitSystem units) => $"[{item.Example(units)}]";

    public override void Describe(JsonObject schema)
    {
        var items = new JsonObject();
        item.Describe(items);
        schema["type"] = "array";
        schema["items"] = items;
    }
}
