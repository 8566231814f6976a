namespace Hoopwright.Sheets.Packets;

/// <summary>A kind of file in the packet.</summary>
public enum PacketForm
{
    /// <summary>Pages to print.</summary>
    Pdf,

    /// <summary>Drawings to look at, to scale.</summary>
    Svg,

    /// <summary>Drawings to scale at true size, for drawing programs.</summary>
    Dxf,

    /// <summary>The tunnel in space.</summary>
    Gltf,

    /// <summary>Tables as plain text.</summary>
    Csv,

    /// <summary>Tables as a workbook.</summary>
    Xlsx,

    /// <summary>A calendar.</summary>
    Ics,

    /// <summary>Footprint and stakes on the map.</summary>
    GeoJson,

    /// <summary>All results, and the plan.</summary>
    Json,
}
