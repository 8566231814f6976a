namespace Hoopwright.Sheets.Xlsx;

/// <summary>A column of a worksheet.</summary>
/// <param name="Name">Its heading, with the unit.</param>
/// <param name="WidthEm">Its width in characters.</param>
/// <param name="Kind">What it holds.</param>
/// <param name="HasTotal">True when the row under the table sums it up.</param>
internal sealed record SheetColumn(string Name, double WidthEm, NumberKind Kind = NumberKind.Words, bool HasTotal = false);
