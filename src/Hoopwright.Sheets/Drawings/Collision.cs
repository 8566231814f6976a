namespace Hoopwright.Sheets.Drawings;

/// <summary>A place where a drawing cannot be read.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Text">The text that is hurt; empty when a line leaves the paper.</param>
/// <param name="Other">The other text, or the layer of the line.</param>
/// <param name="Where">About where on the paper.</param>
public sealed record Collision(CollisionKind Kind, string Text, string Other, SheetPoint Where);
