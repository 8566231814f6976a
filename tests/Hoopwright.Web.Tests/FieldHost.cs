using System.Text.Json.Nodes;
using Hoopwright.Web.Parts;
using Hoopwright.Web.State;

namespace Hoopwright.Web.Tests;

/// <summary>A page for fields, holding a plan in memory.</summary>
internal sealed class FieldHost(JsonNode root) : IFieldHost
{
    public JsonNode Root { get; set; } = root;

    public bool IsMetric => false;

    public List<Finding> Findings { get; init; } = [];

    public Rule? Rule { get; init; }

    public Task Set(string path, JsonNode? value)
    {
        string[] steps = path.Split('.');
        JsonObject group = Root.AsObject();
        foreach (string step in steps[..^1]) group = (group[step] ??= new JsonObject()).AsObject();
        if (value is null) group.Remove(steps[^1]);
        else group[steps[^1]] = value;
        return Task.CompletedTask;
    }

    public Task Focused(string path) => Task.CompletedTask;

    public IEnumerable<Finding> FindingsAt(string path) => Findings.Where(found => found.Path == path);

    public bool HasErrorUnder(string path) => Findings.Any(found => found.Path.StartsWith(path, StringComparison.Ordinal));

    public Rule? RuleAt(string path) => Rule?.Path == path ? Rule : null;

    public string? InOtherUnits(string path, string text) => Quantities.OtherUnits.Of(text);
}
