namespace Hoopwright.Sheets.Drawings;

/// <summary>An area with the texture of a material, without an edge.</summary>
/// <param name="Layer">The named layer it lies on.</param>
/// <param name="Path">Its outline, taken as closed.</param>
/// <param name="Kind">The material.</param>
public sealed record HatchMark(string Layer, SheetPath Path, Hatch Kind) : Mark(Layer);
