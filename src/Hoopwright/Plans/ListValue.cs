using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A list of values of one kind.</summary>
/// <typeparam name="TRead">One of them as it is read, with a form for not given.</typeparam>
/// <typeparam name="TItem">One of them in the list.</typeparam>
/// <param name="item">How one of them is read and written.</param>
/// <param name="wanted">What the list is, for someone who gave something else.</param>
internal abstract class ListValue<TRead, TItem>(PlanValue<TRead> item, string wanted) : PlanValue<ImmutableArray<TItem>>
{
    public override bool IsAbsent(ImmutableArray<TItem> value) => value.IsDefaultOrEmpty;

    public override bool Read(PlanNode node, PlanProblems problems, out ImmutableArray<TItem> value)
    {
        value = [];
        if (node.Kind != PlanNodeKind.List)
        {
            WrongKind(node, problems, wanted, Example(problems.Units));
            return false;
        }

        var read = ImmutableArray.CreateBuilder<TItem>();
        foreach (var child in node.Children)
        {
            if (item.Read(child, problems, out var one) && !item.IsAbsent(one))
                read.Add(Given(one));
        }

        value = read.ToImmutable();
        return true;
    }

    public override void Write(ImmutableArray<TItem> value, Utf8JsonWriter writer)
    {
        writer.WriteStartArray();
        foreach (var one in value)
            item.Write(Read(one), writer);
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

    /// <summary>A value that was read and is not absent.</summary>
    protected abstract TItem Given(TRead read);

    /// <summary>A value of the list as it would be read.</summary>
    protected abstract TRead Read(TItem one);
}
