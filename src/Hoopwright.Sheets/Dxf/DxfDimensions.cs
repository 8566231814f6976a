namespace Hoopwright.Sheets.Dxf;

/// <summary>How dimensions go into a DXF file.</summary>
public enum DxfDimensions
{
    /// <summary>As dimensions, each with the block that shows it.</summary>
    Entities,

    /// <summary>As plain lines and texts.</summary>
    Exploded,
}
