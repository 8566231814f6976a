using System.Collections.Immutable;

namespace Hoopwright.Sheets.Drawings;

/// <summary>A finished drawing, or a finished page: marks on paper of a stated size.</summary>
public sealed record Drawing
{
    /// <summary>Its name, as in the title block and the list of drawings.</summary>
    public required string Title { get; init; }

    /// <summary>One sentence for those who cannot see it.</summary>
    public required string Description { get; init; }

    /// <summary>Width of the paper, mm.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Height of the paper, mm.</summary>
    public required double HeightMm { get; init; }

    /// <summary>The marks, in the order they are drawn; later ones lie on top.</summary>
    public required ImmutableArray<Mark> Marks { get; init; }

    /// <summary>The scale of the main figure; null when nothing is to scale.</summary>
    public DrawingScale? Scale { get; init; }

    /// <summary>Its number in its set, as in the title block; null for one that is in no set.</summary>
    public string? Sheet { get; init; }

    /// <summary>Where each figure's own zero lies on the paper, in the order the figures were asked for; the scale is one for all.</summary>
    public ImmutableArray<ModelView> Views { get; init; } = [];

    /// <summary>What is measured, for writers that have dimensions of their own.</summary>
    public ImmutableArray<Dimension> Dimensions { get; init; } = [];

    /// <summary>Names of the layers, in the order they are first drawn on.</summary>
    public ImmutableArray<string> Layers => [.. Marks.Select(mark => mark.Layer).Distinct()];

    /// <summary>The paper as a box.</summary>
    public SheetBox Paper => new(0, 0, WidthMm, HeightMm);
}
