using Hoopwright.Diagnostics;

namespace Hoopwright.Comparisons;

/// <summary>What is told of one plan and not of the other, or of both in other words.</summary>
/// <param name="Before">What is told of the first plan; null when it appears.</param>
/// <param name="After">What is told of the second plan; null when it vanishes.</param>
public sealed record ComparedDiagnostic(Diagnostic? Before, Diagnostic? After)
{
    /// <summary>The one that says where: that of the second plan where there is one.</summary>
    public Diagnostic Told => After ?? Before ?? throw new InvalidOperationException("A compared diagnostic is told of one of the two plans.");
}
