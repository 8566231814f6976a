using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;

namespace Hoopwright.Packets;

/// <summary>Explains results from the JSON that people are shown, so that no number can be shown that cannot be asked about.</summary>
public sealed partial class Explainer : IDisposable
{
    private static readonly string[] UnitEndings = ["NPerM", "MolPerM2", "M3PerS", "W", "M", "M2", "M3", "Deg", "KgM3", "Kg", "Pa", "Mps", "N", "Nm", "K", "H", "Text"];

    private readonly JsonDocument results;
    private readonly ImmutableArray<RuleUsed> rules;

    /// <summary>An explainer of results.</summary>
    /// <param name="resultsJson">As <see cref="ResultsJson"/> writes them.</param>
    /// <param name="rules">The answers used.</param>
    public Explainer(byte[] resultsJson, ImmutableArray<RuleUsed> rules)
    {
        results = JsonDocument.Parse(resultsJson);
        this.rules = rules;
    }

    /// <summary>An explainer of everything that was worked out from a plan.</summary>
    public static Explainer Of(PlannedTunnel planned)
    {
        ArgumentNullException.ThrowIfNull(planned);
        return new(ResultsJson.Write(planned), [.. planned.Rules.Concat(planned.CoverDay?.Rules ?? []).Concat(planned.Inside?.Rules ?? []).DistinctBy(rule => rule.Path)]);
    }

    /// <summary>Why the result at a path is what it is; null when there is no result or answer there.</summary>
    /// <param name="path">Dotted names and [index], with or without the unit at the end; or a place in the plan.</param>
    public Explanation? Explain(string path)
    {
        string bare = Bare(path);
        if (ValueOf(bare) is { } value && WorkingOf(bare) is { } working)
        {
            int[] places = [.. Place().Matches(bare).Select(match => int.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture))];
            return new Explanation(bare, value, working.Text, working.Source,
                [.. working.Inputs.Select(input => Fill(input, places)).Select(input => new ExplainedInput(input, ValueOf(input) ?? "")).Where(input => input.Value.Length > 0)],
                [.. rules.Where(rule => working.Rules.Any(wanted => rule.Path == wanted || rule.Path.StartsWith(wanted + ".", StringComparison.Ordinal) || Matches(wanted, rule.Path)))]);
        }
        if (rules.FirstOrDefault(rule => rule.Path == path) is not { } answer) return null;
        return new Explanation(path, answer.Text, (answer.Given ? "Given in the plan. " : "Not given in the plan, so the usual value was taken. ") + answer.Says, answer.From, [], [answer]);
    }

    /// <summary>Every path that has a number, without unit endings, in the order of the results.</summary>
    public ImmutableArray<string> NumberPaths()
    {
        var paths = ImmutableArray.CreateBuilder<string>();
        Collect(results.RootElement, "", paths);
        return [.. paths.Distinct()];
    }

    /// <summary>Paths that begin alike or are near in spelling, for someone who asked for one that is not there.</summary>
    public ImmutableArray<string> Near(string path)
    {
        string bare = Place().Replace(Bare(path), "[*]");
        ImmutableArray<string> patterns = [.. NumberPaths().Select(each => Place().Replace(each, "[*]")).Concat(rules.Select(rule => rule.Path)).Distinct()];
        ImmutableArray<string> under = [.. patterns.Where(pattern => pattern.StartsWith(bare, StringComparison.OrdinalIgnoreCase)).Take(12)];
        return under.IsEmpty ? [.. patterns.OrderBy(pattern => NearestWord.Distance(pattern, bare)).ThenBy(pattern => pattern, StringComparer.Ordinal).Take(5)] : under;
    }

    /// <summary>The working for a path; null when nobody has said.</summary>
    public static Working? WorkingOf(string path)
    {
        string pattern = Place().Replace(Bare(path), "[*]");
        return Workings.All.FirstOrDefault(working => Matches(working.Pattern, pattern));
    }

    /// <inheritdoc/>
    public void Dispose() => results.Dispose();

    private static bool Matches(string pattern, string path)
    {
        string[] wanted = pattern.Split('.'), steps = path.Split('.');
        if (wanted.Length != steps.Length) return false;
        for (int index = 0; index < steps.Length; index++)
        {
            if (wanted[index] != "*" && wanted[index] != steps[index]) return false;
        }
        return true;
    }

    private static string Fill(string pattern, int[] places)
    {
        int next = 0;
        return Any().Replace(pattern, _ => next < places.Length ? string.Create(CultureInfo.InvariantCulture, $"[{places[next++]}]") : "[0]");
    }

    /// <summary>True when a name in the results is another one with its unit, or with Text, at the end.</summary>
    public static bool IsNamed(string name, string bare) => UnitEndings.Any(ending => name == bare + ending);

    private static string Bare(string path)
    {
        foreach (string ending in UnitEndings)
        {
            if (path.Length > ending.Length + 1 && path.EndsWith(ending, StringComparison.Ordinal) && char.IsAsciiLetterLower(path[^(ending.Length + 1)]) && ending != "Text") return path[..^ending.Length];
        }
        return path.EndsWith("Text", StringComparison.Ordinal) ? path[..^4] : path;
    }

    private string? ValueOf(string bare)
    {
        foreach (string ending in (IEnumerable<string>)["Text", "", .. UnitEndings])
        {
            if (ResultPath.Find(results.RootElement, bare + ending) is { } element)
            {
                return element.ValueKind switch
                {
                    JsonValueKind.String => element.GetString(),
                    JsonValueKind.Number => element.GetRawText(),
                    JsonValueKind.True => "yes",
                    JsonValueKind.False => "no",
                    _ => null,
                };
            }
        }
        return null;
    }

    private static void Collect(JsonElement element, string path, ImmutableArray<string>.Builder paths)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (JsonProperty property in element.EnumerateObject()) Collect(property.Value, path.Length == 0 ? property.Name : path + "." + property.Name, paths);
                break;
            case JsonValueKind.Array:
                int index = 0;
                foreach (JsonElement item in element.EnumerateArray()) Collect(item, string.Create(CultureInfo.InvariantCulture, $"{path}[{index++}]"), paths);
                break;
            case JsonValueKind.Number:
                paths.Add(Bare(path));
                break;
        }
    }

    [GeneratedRegex(@"\[(\d{1,6})\]", RegexOptions.CultureInvariant)]
    private static partial Regex Place();

    [GeneratedRegex(@"\[\*\]", RegexOptions.CultureInvariant)]
    private static partial Regex Any();

}
