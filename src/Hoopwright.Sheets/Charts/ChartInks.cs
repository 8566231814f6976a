using Hoopwright.Sheets.Drawings;
using OxyPlot;

namespace Hoopwright.Sheets.Charts;

/// <summary>Inks and line weights of the drawings as the plotting library has them, there and back.</summary>
internal static class ChartInks
{
    private static readonly Dictionary<OxyColor, Ink> Inks = Enum.GetValues<Ink>().ToDictionary(Of);

    /// <summary>An ink as a colour of the library.</summary>
    public static OxyColor Of(Ink ink)
    {
        InkColour colour = InkColour.Of(ink);
        return OxyColor.FromRgb(colour.Red, colour.Green, colour.Blue);
    }

    /// <summary>The ink of a colour; null for none.</summary>
    public static Ink? InkOf(OxyColor colour) => Inks.TryGetValue(colour, out Ink ink) ? ink : null;

    /// <summary>The weight of a role, mm.</summary>
    public static double WeightMm(LineRole role) => Drawings.LineStyle.Of(role).WeightMm;

    /// <summary>The role of a line of that weight.</summary>
    public static LineRole RoleOf(double weightMm, bool isDashed) => isDashed
        ? weightMm < WeightMm(LineRole.Hidden) ? LineRole.Centre : LineRole.Hidden
        : ((LineRole[])[LineRole.Cut, LineRole.Outline, LineRole.Dimension, LineRole.Texture]).MinBy(role => Math.Abs(WeightMm(role) - weightMm));
}
