using System.Collections.Immutable;

namespace Hoopwright.Frames;

/// <summary>A large-displacement run.</summary>
/// <param name="Points">The points it came through.</param>
/// <param name="Last">The frame at the last of them; section forces along the members' axes as they then lie.</param>
internal sealed record PathRun(ImmutableArray<PathPoint> Points, FrameState Last);
