using System.Collections.Immutable;

namespace Hoopwright.Sheets.Drawings;

/// <summary>Weight and dashes of a line on paper. Every writer takes them from here.</summary>
/// <param name="WeightMm">Width of the line, mm.</param>
/// <param name="DashesMm">Lengths of dash and gap in turn, mm; empty for an unbroken line.</param>
public sealed record LineStyle(double WeightMm, ImmutableArray<double> DashesMm)
{
    private static readonly LineStyle CutStyle = new(0.50, []), OutlineStyle = new(0.35, []), HiddenStyle = new(0.18, [2, 1]),
        DimensionStyle = new(0.18, []), CentreStyle = new(0.13, [6, 1, 0.8, 1]), TextureStyle = new(0.13, []);

    /// <summary>The style of a role.</summary>
    public static LineStyle Of(LineRole role) => role switch
    {
        LineRole.Cut => CutStyle,
        LineRole.Outline => OutlineStyle,
        LineRole.Hidden => HiddenStyle,
        LineRole.Dimension => DimensionStyle,
        LineRole.Centre => CentreStyle,
        LineRole.Texture => TextureStyle,
    };
}
