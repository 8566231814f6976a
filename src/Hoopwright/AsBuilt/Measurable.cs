using Hoopwright.Quantities;

namespace Hoopwright.AsBuilt;

/// <summary>Something on this tunnel that can be measured.</summary>
/// <param name="Name">Its name in the site book.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Number">Number of the bow, from 1 at the front; 0 for what is no bow's.</param>
/// <param name="About">The id of the bow, post, door, hole or side it is a measure of.</param>
/// <param name="What">What it is, in words.</param>
/// <param name="How">How to measure it.</param>
/// <param name="Planned">What the plan says.</param>
/// <param name="Tolerance">How near is near enough.</param>
/// <param name="TolerancePath">Where in the plan that can be changed.</param>
public sealed record Measurable(
    string Name, MeasurableKind Kind, int Number, string About, string What, string How, Length Planned, Length Tolerance, string TolerancePath);
