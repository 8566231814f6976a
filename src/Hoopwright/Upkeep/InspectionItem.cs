using Hoopwright.Diagnostics;
using Hoopwright.Sources;

namespace Hoopwright.Upkeep;

/// <summary>One thing to look at on a round.</summary>
/// <param name="Id">Its stable name, under which the site book says when it was looked at.</param>
/// <param name="What">What to look at, and what to do.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record InspectionItem(string Id, Phrase What, Citation Source);
