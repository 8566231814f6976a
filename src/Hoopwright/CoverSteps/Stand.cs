using Hoopwright.Diagnostics;
using Hoopwright.Quantities;

namespace Hoopwright.CoverSteps;

/// <summary>Where a person stands while the roof film comes over.</summary>
/// <param name="Id">The person's name in the drawing.</param>
/// <param name="Does">What they do.</param>
/// <param name="Along">From the middle of the first bow towards the back; below 0 in front of it.</param>
/// <param name="IsLeft">True on the left side.</param>
/// <param name="RopeNumber">The rope they pull, from the front; 0 for none.</param>
public sealed record Stand(string Id, Phrase Does, Length Along, bool IsLeft, int RopeNumber);
