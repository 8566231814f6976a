using System.Collections.Immutable;

namespace Hoopwright.Sweeps;

/// <summary>A field of the plan with the values that are tried for it.</summary>
/// <param name="Path">Where in the plan, as dotted names and [index].</param>
/// <param name="Values">The values as typed; the word null leaves the field out.</param>
public sealed record VariedField(string Path, ImmutableArray<string> Values);
