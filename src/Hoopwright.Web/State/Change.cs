using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Hoopwright.Web.State;

/// <summary>A change of one value of a plan.</summary>
/// <param name="Path">The value's path, such as ends.front.doors[0].width.</param>
/// <param name="Json">The value as JSON; null leaves the field out.</param>
internal sealed partial record Change(string Path, string? Json)
{
    /// <summary>
    /// Makes the change in a plan. Groups are made on the way and empty ones go again: the same that the shelf does to the plan
    /// as it is stored.
    /// </summary>
    /// <param name="root">The plan.</param>
    public void MakeIn(JsonNode root)
    {
        string[] steps = [.. Step().Matches(Path).Select(match => match.Value)];
        Make(root, steps, Json is null ? null : JsonNode.Parse(Json));
    }

    private void Make(JsonNode node, ReadOnlySpan<string> steps, JsonNode? value)
    {
        string step = steps[0];
        if (steps.Length == 1)
        {
            if (Json is not null) Put(node, step, value);
            else if (node is JsonArray items && Index(step) < items.Count) items.RemoveAt(Index(step));
            else if (node is JsonObject group) group.Remove(step);
            return;
        }
        JsonNode? next = node is JsonArray list ? list.ElementAtOrDefault(Index(step)) : (node as JsonObject)?[step];
        if (next is not (JsonObject or JsonArray))
        {
            if (Json is null) return;
            next = steps[1][0] == '[' ? new JsonArray() : new JsonObject();
            Put(node, step, next);
        }
        Make(next, steps[1..], value);
        if (Json is null && next is JsonObject { Count: 0 } or JsonArray { Count: 0 } && node is JsonObject holder) holder.Remove(step);
    }

    private static void Put(JsonNode node, string step, JsonNode? value)
    {
        if (node is JsonObject group) group[step] = value;
        else if (node is JsonArray list)
        {
            if (Index(step) < list.Count) list[Index(step)] = value;
            else list.Add(value);
        }
    }

    private static int Index(string step) => int.Parse(step.AsSpan(1, step.Length - 2), NumberStyles.None, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"[^.[\]]+|\[\d+\]")]
    private static partial Regex Step();
}
