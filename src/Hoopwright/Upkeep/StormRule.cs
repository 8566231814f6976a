using Hoopwright.Diagnostics;
using Hoopwright.Sources;

namespace Hoopwright.Upkeep;

/// <summary>A rule of the storm card.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Text">What to do.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record StormRule(string Id, Phrase Text, Citation Source);
