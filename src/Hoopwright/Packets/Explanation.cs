using System.Collections.Immutable;
using Hoopwright.Plans;
using Hoopwright.Sources;

namespace Hoopwright.Packets;

/// <summary>Why a result is what it is.</summary>
/// <param name="Path">The result.</param>
/// <param name="Value">Its value, as people read it.</param>
/// <param name="Text">The formula or rule.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Inputs">What it was computed from, with values.</param>
/// <param name="Rules">The answers of the plan, or the usual values, that it rests on.</param>
public sealed record Explanation(
    string Path, string Value, string Text, Citation Source, ImmutableArray<ExplainedInput> Inputs, ImmutableArray<RuleUsed> Rules)
{
    /// <summary>The assumptions among the rules.</summary>
    public ImmutableArray<RuleUsed> Assumptions => [.. Rules.Where(rule => rule.IsAssumption)];
}

/// <summary>A result that another was computed from.</summary>
/// <param name="Path">The result.</param>
/// <param name="Value">Its value, as people read it.</param>
public sealed record ExplainedInput(string Path, string Value);
