using System.Text.Json.Nodes;
using Hoopwright.Plans;

namespace Hoopwright.SiteBooks;

/// <summary>The order in which the plan format writes fields, for documents that are put together field by field.</summary>
internal sealed class FieldOrder
{
    private static readonly Lazy<FieldOrder> Whole = new(() => new(JsonNode.Parse(PlanSchema.Write())));

    private readonly Dictionary<string, (int Rank, JsonNode? Schema)> fields = new(StringComparer.Ordinal);

    private FieldOrder(JsonNode? schema)
    {
        JsonNode? group = schema?["items"] ?? schema;
        foreach ((string name, JsonNode? field) in group?["properties"] as JsonObject ?? []) fields[name] = (fields.Count, field);
    }

    /// <summary>The order of the plan itself.</summary>
    public static FieldOrder Plan => Whole.Value;

    /// <summary>Fields in the order of the format; those that it does not know come last, by name.</summary>
    public IOrderedEnumerable<T> Sort<T>(IEnumerable<T> each, Func<T, string> name) =>
        each.OrderBy(one => fields.TryGetValue(name(one), out var known) ? known.Rank : int.MaxValue).ThenBy(name, StringComparer.Ordinal);

    /// <summary>The order within a field.</summary>
    public FieldOrder Within(string name) => new(fields.GetValueOrDefault(name).Schema);
}
