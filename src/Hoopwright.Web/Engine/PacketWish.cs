namespace Hoopwright.Web.Engine;

/// <summary>What of a packet someone wants to take away, in the words that go to the engine.</summary>
/// <param name="Document">The plan as text.</param>
/// <param name="Paper">letter or a4.</param>
/// <param name="Date">The day on the sheets, as 2026-03-01.</param>
/// <param name="What">
/// pdf for the PDF alone, crew for the crew sheets alone, cards or cards-recover for the step cards alone, xlsx for the workbook, glb for the model,
/// geojson for footprint and stakes on the map, dxf for a zip of the drawings at true size, zip for everything.
/// </param>
/// <param name="Crew">The language of crew sheets and cards.</param>
public sealed record PacketWish(string Document, string Paper, string Date, string What, string Crew)
{
    /// <summary>A weather file, whose pages go with it; empty for none.</summary>
    public string Weather { get; init; } = "";

    /// <summary>The clock on the wall, as -04:00, by which hours are told; empty for that of the file.</summary>
    public string Clock { get; init; } = "";

    /// <summary>The paper of the drawings, tabloid or a3; empty for that of the pages.</summary>
    public string Drawings { get; init; } = "";

    /// <summary>How dimensions go into DXF files: exploded for lines and texts, empty for dimensions.</summary>
    public string Dimensions { get; init; } = "";

    /// <summary>Which revision it is, as the title strips print it; empty for none.</summary>
    public string Revision { get; init; } = "";
}
