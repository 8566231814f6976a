using Hoopwright.Quantities;

namespace Hoopwright.Inside;

/// <summary>Light of a mean day on a piece of film.</summary>
/// <param name="Name">"strip 1" from the left foot, "front end", "back end".</param>
/// <param name="Slope">Against level: 90° for an upright piece.</param>
/// <param name="Facing">Where it slopes down to, clockwise from north.</param>
/// <param name="Year">Over the year.</param>
/// <param name="Winter">Over the four months around the shortest day.</param>
public sealed record FacetLight(string Name, Angle Slope, Angle Facing, LightSum Year, LightSum Winter);
