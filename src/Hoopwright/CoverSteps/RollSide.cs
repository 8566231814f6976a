using Hoopwright.Diagnostics;
using Hoopwright.Sources;

namespace Hoopwright.CoverSteps;

/// <summary>On which side the roof film is rolled out before it is pulled over.</summary>
/// <param name="IsLeft">True on the left as seen entering by the front end.</param>
/// <param name="Why">Why there.</param>
/// <param name="Source">Where that rule comes from.</param>
public sealed record RollSide(bool IsLeft, Phrase Why, Citation Source)
{
    /// <summary>"left" or "right".</summary>
    public string Name => IsLeft ? "left" : "right";
}
