using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A list of quantities.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="item">How one of them is read and written.</param>
internal sealed class QuantityListValue<T>(QuantityValue<T> item) : PlanValue<ImmutableArray<Written<T>>>
    where T : struct, IComparable<T>
{
    public override bool IsAbsent(ImmutableArray<Written<T>> value) => value.IsDefaultOrEmpty;

    public override bool Read(PlanNode node, PlanProblems problems, out ImmutableArray<Written<T>> value)
    {
        value = [];
        if (node.Kind != PlanNodeKind.List)
        {
            WrongKind(node, problems, "a list in [ ]", Example(problems.Units));
            return false;
        }

        var read = ImmutableArray.CreateBuilder<Written<T>>();
        foreach (var child in node.Children)
        {
            if (item.Read(child, problems, out var quantity) && quantity is { } written)
                read.Add(written);
        }

        value = read.ToImmutable();
        return true;
    }

    public override void Write(ImmutableArray<Written<T>> value, Utf8JsonWriter writer)
    {
        writer.WriteStartArray();
        foreach (var quantity in value)
            item.Write(quantity, writer);
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
