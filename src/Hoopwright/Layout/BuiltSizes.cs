using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>What was measured on a tunnel that is being built. It overrides what the plan says, name by name.</summary>
public sealed record BuiltSizes
{
    /// <summary>The tunnel as planned: how many bays, posts and pieces there are does not hang on what was measured.</summary>
    public required Tunnel Planned { get; init; }

    /// <summary>Measured lengths by the names of <see cref="MeasureNames"/>.</summary>
    public required ImmutableSortedDictionary<string, Length> Values { get; init; }

    /// <summary>What was measured under a name; null when nothing was.</summary>
    /// <param name="name">A name of <see cref="MeasureNames"/>.</param>
    public Length? Of(string name) => Values.TryGetValue(name, out Length value) ? value : null;

    /// <summary>How deep a post stands: as measured, or no deeper than the hole that was measured for it.</summary>
    /// <param name="postId">The post's id.</param>
    /// <param name="planned">How deep it is planned to stand.</param>
    internal Length DepthOf(string postId, Length planned) =>
        Of(MeasureNames.Depth(postId)) ?? (Of(MeasureNames.HoleDepth("hole-" + postId)) is { } hole ? Length.Min(hole, planned) : planned);
}
