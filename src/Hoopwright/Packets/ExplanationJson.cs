using System.Text.Json.Nodes;

namespace Hoopwright.Packets;

/// <summary>An explanation as JSON.</summary>
public static class ExplanationJson
{
    /// <summary>The explanation: path, value, formula, source, inputs [path, value], rules [path, value, given, assumption, says, source].</summary>
    /// <param name="explanation">What to write.</param>
    public static JsonObject Of(Explanation explanation) => new()
    {
        ["path"] = explanation.Path,
        ["value"] = explanation.Value,
        ["formula"] = explanation.Text,
        ["source"] = explanation.Source.ToString(),
        ["inputs"] = new JsonArray([.. explanation.Inputs.Select(each => (JsonNode)new JsonObject { ["path"] = each.Path, ["value"] = each.Value })]),
        ["rules"] = new JsonArray([.. explanation.Rules.Select(rule => (JsonNode)new JsonObject
        {
            ["path"] = rule.Path, ["value"] = rule.Text, ["given"] = rule.Given, ["assumption"] = rule.IsAssumption, ["says"] = rule.Says, ["source"] = rule.Source.ToString(),
        })]),
    };
}
