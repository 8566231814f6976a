using Hoopwright.Geometry;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Words;

namespace Hoopwright.Sheets.Figures;

/// <summary>What every sheet of a set shares: paper, project, date, units.</summary>
/// <param name="WidthMm">Width of a sheet, mm.</param>
/// <param name="HeightMm">Height of a sheet, mm.</param>
/// <param name="Project">The tunnel's name.</param>
/// <param name="Date">The day as printed.</param>
/// <param name="Units">Whose scales and tape.</param>
public sealed record FigureSheet(double WidthMm, double HeightMm, string Project, string Date, UnitSystem Units)
{
    /// <summary>The paper that the sheets are at their scale on, by name; null where it is not said.</summary>
    public string? Paper { get; init; }

    /// <summary>Which revision of the drawings this is; null for none.</summary>
    public string? Revision { get; init; }

    /// <summary>True when remarks stand in a column of their own.</summary>
    internal bool InColumn { get; init; }

    /// <summary>The code of the language of the sheets that a crew reads; English unless said.</summary>
    public string Language
    {
        get => Words.Language;
        init => Words = CrewWords.Of(value);
    }

    /// <summary>The words of that language.</summary>
    internal CrewWords Words { get; init; } = CrewWords.English;

    /// <summary>A new sheet of the set.</summary>
    internal DrawingBuilder Start(string title, string description, string number, Angle? north = null) =>
        new(title, description, WidthMm, HeightMm, new TitleBlock(Project, number, Date, Units, north) { Words = Words, Paper = Paper, Revision = Revision });

    /// <summary>A length as the tape shows it.</summary>
    internal string Tape(Length length) => TapeText.Of(length, Units);

    /// <summary>A path of the tunnel as the drawing model takes it.</summary>
    internal static ModelPath Trace(PlanePath path)
    {
        ModelPath model = ModelPath.From(path.Start);
        foreach (PathSegment segment in path.Segments) model = segment is ArcSegment arc ? model.ArcAbout(arc.Centre, arc.Sweep) : model.LineTo(segment.End);
        return model;
    }

    /// <summary>A point.</summary>
    internal static PlanePoint At(Length across, Length up) => new(across, up);
}
