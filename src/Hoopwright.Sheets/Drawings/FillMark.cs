namespace Hoopwright.Sheets.Drawings;

/// <summary>An area filled with one colour, without an edge.</summary>
/// <param name="Layer">The named layer it lies on.</param>
/// <param name="Path">Its outline, taken as closed.</param>
/// <param name="Colour">Its colour.</param>
public sealed record FillMark(string Layer, SheetPath Path, Ink Colour) : Mark(Layer);
