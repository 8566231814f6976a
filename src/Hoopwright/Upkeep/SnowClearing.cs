using Hoopwright.Quantities;

namespace Hoopwright.Upkeep;

/// <summary>How deep a kind of snow may lie on the roof, where it lies deepest.</summary>
/// <param name="Kind">The kind of snow.</param>
/// <param name="ClearAt">Depth at which to begin to clear.</param>
/// <param name="AtLimit">Depth at which the first bow reaches its limit, at the weaker end of what is known.</param>
public sealed record SnowClearing(SnowKind Kind, Length ClearAt, Length AtLimit);
