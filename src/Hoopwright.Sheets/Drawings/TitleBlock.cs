using Hoopwright.Quantities;
using Hoopwright.Sheets.Words;

namespace Hoopwright.Sheets.Drawings;

/// <summary>What the strip along the foot of a sheet says. It is alike on every sheet.</summary>
/// <param name="Project">The tunnel's name.</param>
/// <param name="Sheet">Which sheet, such as "3 of 12".</param>
/// <param name="Date">The day it was drawn, as it is to be printed.</param>
/// <param name="Units">Which units the scale bar is in.</param>
/// <param name="North">Where north lies on the paper, anticlockwise from up; null on sheets that are not seen from above.</param>
public sealed record TitleBlock(string Project, string Sheet, string Date, UnitSystem Units, Angle? North = null)
{
    /// <summary>The paper that the sheet is at its scale on, by name; null where it is not said.</summary>
    public string? Paper { get; init; }

    /// <summary>Which revision of the drawing it is, as it is to be printed; null for none.</summary>
    public string? Revision { get; init; }

    /// <summary>The language of the strip's own words.</summary>
    internal CrewWords Words { get; init; } = CrewWords.English;
}
