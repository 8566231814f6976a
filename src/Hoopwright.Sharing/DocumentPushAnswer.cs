using System.Collections.Immutable;

namespace Hoopwright.Sharing;

/// <summary>The plan as it stands after a push.</summary>
/// <param name="Version">Its version now.</param>
/// <param name="Document">The plan as text, without its site book: what was pushed put together with what others changed.</param>
/// <param name="Undecided">Paths of fields of which copies say different things, for a decision; none where there are none.</param>
public sealed record DocumentPushAnswer(long Version, string Document, ImmutableArray<string> Undecided);
