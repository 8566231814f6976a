using Hoopwright.Diagnostics;

namespace Hoopwright.BuildSteps;

/// <summary>A step that must be done before another starts.</summary>
/// <param name="StepId">The step that comes first.</param>
/// <param name="Wait">Time by the clock from its end, nights included; zero for none.</param>
/// <param name="Why">What the time is for; null without one.</param>
public sealed record StepWait(string StepId, TimeSpan Wait, Phrase? Why)
{
    internal static StepWait For(string stepId) => new(stepId, TimeSpan.Zero, null);
}
