using System.Collections.Immutable;

namespace Hoopwright.SiteBooks;

/// <summary>A field of which copies of a plan say different things.</summary>
/// <param name="Path">The field, as a path in the plan.</param>
/// <param name="Said">What they say, the value that the plan goes by first.</param>
public sealed record UndecidedField(string Path, ImmutableArray<SaidValue> Said);
