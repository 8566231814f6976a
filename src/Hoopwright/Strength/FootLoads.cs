using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Strength;

/// <summary>
/// The most that the feet of some bows put on their posts, each of its kind, over the combinations that posts are held against and
/// over both feet, with the feet as they were taken.
/// </summary>
/// <param name="OnEnds">True for the two end bows, false for all between.</param>
/// <param name="Pull">Hardest pull upwards; null where no foot is pulled.</param>
/// <param name="Press">Hardest push downwards; null where no foot presses.</param>
/// <param name="Across">Hardest push across the tunnel, either way.</param>
/// <param name="Turning">Greatest moment at the ground, either way.</param>
/// <param name="Buckles">Combinations, in words, under which a bow buckles before it carries them, so that there are no forces.</param>
public sealed record FootLoads(bool OnEnds, FootForce? Pull, FootForce? Press, FootForce? Across, FootMoment? Turning, ImmutableArray<string> Buckles);

/// <summary>A force of a foot.</summary>
/// <param name="Size">How great; above 0.</param>
/// <param name="Bow">Number of the bow.</param>
/// <param name="IsRight">True for its right foot.</param>
/// <param name="LoadCode">The combination.</param>
/// <param name="LoadWords">The combination in words.</param>
public sealed record FootForce(Force Size, int Bow, bool IsRight, string LoadCode, string LoadWords);

/// <summary>A moment of a foot.</summary>
/// <param name="Size">How great; above 0.</param>
/// <param name="Bow">Number of the bow.</param>
/// <param name="IsRight">True for its right foot.</param>
/// <param name="LoadCode">The combination.</param>
/// <param name="LoadWords">The combination in words.</param>
public sealed record FootMoment(Moment Size, int Bow, bool IsRight, string LoadCode, string LoadWords);
