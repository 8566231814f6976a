using System.Text.Json.Nodes;
using Hoopwright.Web.State;

namespace Hoopwright.Web.Parts;

/// <summary>The page that fields stand on: where their values come from and go to.</summary>
public interface IFieldHost
{
    /// <summary>The plan.</summary>
    JsonNode Root { get; }

    /// <summary>True when quantities are written in metres.</summary>
    bool IsMetric { get; }

    /// <summary>Changes a value; null leaves the field out.</summary>
    Task Set(string path, JsonNode? value);

    /// <summary>The keyboard is on a field.</summary>
    Task Focused(string path);

    /// <summary>What was found at this path, or below it where the page has no field of its own.</summary>
    IEnumerable<Finding> FindingsAt(string path);

    /// <summary>True when an error was found at a path or below it.</summary>
    bool HasErrorUnder(string path);

    /// <summary>The value results rest on; null when nothing rests on it.</summary>
    Rule? RuleAt(string path);

    /// <summary>The same quantity written in the other system of units; null when it cannot be read.</summary>
    string? InOtherUnits(string path, string text);
}
