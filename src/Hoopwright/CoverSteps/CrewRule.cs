using Hoopwright.Diagnostics;
using Hoopwright.Sources;

namespace Hoopwright.CoverSteps;

/// <summary>A reason for so many people.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Says">What they do.</param>
/// <param name="People">How many that takes.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record CrewRule(string Id, Phrase Says, int People, Citation Source);
