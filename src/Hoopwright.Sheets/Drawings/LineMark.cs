namespace Hoopwright.Sheets.Drawings;

/// <summary>A drawn line.</summary>
/// <param name="Layer">The named layer it lies on.</param>
/// <param name="Path">Where it runs.</param>
/// <param name="Role">What it says, which sets its weight and dashes.</param>
/// <param name="Colour">Its colour; black unless said.</param>
public sealed record LineMark(string Layer, SheetPath Path, LineRole Role, Ink Colour = Ink.Black) : Mark(Layer);
