using System.Collections.Immutable;

namespace Hoopwright.Server.Api;

/// <summary>Two texts of one plan put together.</summary>
/// <param name="Text">The plan.</param>
/// <param name="Conflicts">Paths of fields that were changed differently, for a decision.</param>
internal sealed record MergedDocument(string Text, ImmutableArray<string> Conflicts);
