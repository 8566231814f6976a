namespace Hoopwright.Sources;

/// <summary>A formula as people read it, with its source. Stands beside the function that computes it.</summary>
/// <param name="Symbol">What it gives.</param>
/// <param name="Text">The right-hand side.</param>
/// <param name="Unit">The unit of what it gives.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Formula(string Symbol, string Text, string Unit, Citation Source);
