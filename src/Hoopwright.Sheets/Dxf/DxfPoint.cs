namespace Hoopwright.Sheets.Dxf;

/// <summary>A point of a DXF file, in its units, y up.</summary>
internal readonly record struct DxfPoint(double X, double Y);
