namespace Hoopwright.Cutting.TwoStage;

/// <summary>A way that a piece can lie.</summary>
/// <param name="Type">The piece, as the engine numbers them.</param>
/// <param name="Across">Its size across the sheet.</param>
/// <param name="Along">Its size along it.</param>
/// <param name="Turned">True when it lies the other way than it is given.</param>
internal readonly record struct Lay(int Type, long Across, long Along, bool Turned);
