using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.CoverSteps;

/// <summary>Where film of an end is held on its bow, as distances along the film line from the left ground line.</summary>
/// <param name="End">The end, "front" or "back".</param>
/// <param name="From">Where the fastening over the ridge begins on the left.</param>
/// <param name="To">Where it ends on the right.</param>
/// <param name="Temporary">Where short pieces of wire hold it for the time being, from the left.</param>
public sealed record EndHold(string End, Length From, Length To, ImmutableArray<Length> Temporary);
