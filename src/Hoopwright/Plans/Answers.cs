using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>
/// Answers questions from the plan, or with the usual value where the plan is silent, and remembers every answer, so
/// that no default is ever silent.
/// </summary>
public sealed class Answers(UnitSystem units)
{
    private readonly Dictionary<string, RuleUsed> used = new(StringComparer.Ordinal);
    private readonly List<string> order = [];

    /// <summary>The units in which answers are written down.</summary>
    public UnitSystem Units { get; } = units;

    /// <summary>Every answer so far, in the order first asked.</summary>
    public ImmutableArray<RuleUsed> Rules => [.. order.Select(path => used[path])];

    /// <summary>The answers that the grower should confirm.</summary>
    public ImmutableArray<Diagnostic> Assumptions =>
        [.. Rules.Where(rule => rule.IsAssumption).Select(rule => new Diagnostic(
            "assumed." + CodeOf(rule.Path), Severity.Assumption, rule.Path, rule.Says, null, rule.Text))];

    /// <summary>A quantity: as given, or the usual one, which is on a metric mark where a length of a metric plan is asked for.</summary>
    /// <param name="path">Where in the plan it stands.</param>
    /// <param name="usual">What is taken when it is not given.</param>
    /// <param name="given">As given.</param>
    public T Take<T>(string path, Usual<T> usual, Written<T>? given)
        where T : struct
    {
        if (usual is Usual<Length> length) usual = (Usual<T>)(object)length.In(Units);
        Note(path, usual, given is { } written ? written.Text : Show(usual.Value), given is not null);
        return given?.Value ?? usual.Value;
    }

    /// <summary>A count or a choice: as given, or the usual one.</summary>
    public T Take<T>(string path, Usual<T> usual, T? given)
        where T : struct
    {
        T value = given ?? usual.Value;
        Note(path, usual, Show(value), given is not null);
        return value;
    }

    /// <summary>A word: as given, or the usual one.</summary>
    public string Take(string path, Usual<string> usual, string? given)
    {
        Note(path, usual, given ?? usual.Value, given is not null);
        return given ?? usual.Value;
    }

    /// <summary>Takes in what another collector was asked after this one; what was asked of both stays as it was first answered.</summary>
    internal void Add(Answers later)
    {
        foreach (string path in later.order.Where(path => used.TryAdd(path, later.used[path]))) order.Add(path);
    }

    private static string CodeOf(string path)
    {
        var code = new System.Text.StringBuilder();
        bool inIndex = false;
        foreach (char c in path)
        {
            if (c == '[') inIndex = true;
            if (!inIndex)
            {
                if (char.IsAsciiLetterUpper(c)) code.Append('-').Append(char.ToLowerInvariant(c));
                else code.Append(c);
            }
            if (c == ']') inIndex = false;
        }
        return code.ToString();
    }

    private void Note<T>(string path, Usual<T> usual, string text, bool given)
        where T : notnull
    {
        if (used.TryAdd(path, new RuleUsed(path, usual.Says, text, given, usual.Matters, usual.Source))) order.Add(path);
    }

    private string Show<T>(T value)
        where T : struct => value switch
        {
            Length length => TapeText.OfThickness(length, Units),
            Ratio ratio => ratio.Value.ToString("0.####", CultureInfo.InvariantCulture),
            Mass mass => TapeText.Of(mass, Units),
            Angle angle => TapeText.Of(angle),
            Money money => money.ToString(),
            // A yield strength is a pressure that no load comes near.
            Pressure pressure => pressure.Pascals >= 1e6 ? TapeText.OfStress(pressure, Units) : TapeText.Of(pressure, Units),
            Speed speed => TapeText.Of(speed, Units),
            Temperature temperature => TapeText.Of(temperature, Units),
            Force force => TapeText.Of(force, Units),
            ForcePerLength force => TapeText.Of(force, Units),
            int count => count.ToString(CultureInfo.InvariantCulture),
            bool yes => yes ? "yes" : "no",
            Enum choice => PlanChoices.Word(choice),
            _ => string.Create(CultureInfo.InvariantCulture, $"{value}"),
        };
}
