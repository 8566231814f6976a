using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>Where one bow stands.</summary>
/// <param name="Number">1 at the front end.</param>
/// <param name="Along">Distance along the string from the middle of the first bow; the running mark.</param>
/// <param name="Base">Height of the bow's ground line over the datum.</param>
/// <param name="GroundLeft">Height of the ground at the left leg over the datum.</param>
/// <param name="GroundRight">Height of the ground at the right leg over the datum.</param>
public sealed record BowStation(int Number, Length Along, Length Base, Length GroundLeft, Length GroundRight);
