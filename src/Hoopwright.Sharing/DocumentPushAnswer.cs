using System.Collections.Immutable;

namespace Hoopwright.Sharing;

/// <summary>The plan as it stands after a push.</summary>
/// <param name="Version">Its version now.</param>
/// <param name="Document">The plan as text, without its site book: what was pushed put together with what others changed.</param>
/// <param name="Conflicts">Paths of fields that two people changed differently, for a decision; none where nothing clashed.</param>
public sealed record DocumentPushAnswer(long Version, string Document, ImmutableArray<string> Conflicts);
