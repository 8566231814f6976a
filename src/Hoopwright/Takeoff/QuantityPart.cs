using System.Collections.Immutable;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>A part of a quantity: so much, by this rule, for these.</summary>
/// <param name="Quantity">How much, in the unit of the line.</param>
/// <param name="Rule">The rule, in words.</param>
/// <param name="Source">Where the rule comes from.</param>
/// <param name="TraceIds">The members, film pieces, runs or holes it counts for.</param>
public sealed record QuantityPart(decimal Quantity, string Rule, Citation Source, ImmutableArray<string> TraceIds);
