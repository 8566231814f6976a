using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Takeoff;
using static Hoopwright.Sheets.Figures.FigureSheet;

namespace Hoopwright.Sheets.Figures;

/// <summary>What sheets of details have in common: parts cut open, curves within a window, and values as the plan has them.</summary>
/// <param name="planned">A plan worked out to its orders.</param>
/// <param name="tunnel">Its tunnel.</param>
internal sealed class DetailPanels(PlannedTunnel planned, Tunnel tunnel)
{
    private const int Chords = 400;

    /// <summary>A rule's value as the tape has it, by the end of its path; null where the rule was not asked for.</summary>
    public string? Rule(string endsWith) => planned.Rules.FirstOrDefault(rule => rule.Path.EndsWith("." + endsWith, StringComparison.Ordinal))?.Text;

    /// <summary>A rule's length, by the end of its path; null where the rule was not asked for.</summary>
    public Length? LengthOf(string endsWith) => QuantityText.ReadLength(Rule(endsWith)) is { IsRead: true, Value: var length } ? length : null;

    /// <summary>The size of an item that the cover takes, as the takeoff writes it; empty where it takes none.</summary>
    public string SizeOf(string item) => planned.Takeoff?.Lines.FirstOrDefault(line => line.Stage == BuildStage.Cover && line.Item == item)?.Size ?? "";

    /// <summary>A board cut across its grain or along it, with its texture.</summary>
    public static void Board(Figure figure, PlanePoint low, PlanePoint high, bool isCut = true)
    {
        ModelPath outline = ModelPath.Rectangle(low, high);
        figure.On("boards").Fill(outline, Ink.LumberTint).Hatch(outline, Hatch.Wood).Path(outline, isCut ? LineRole.Cut : LineRole.Outline, Ink.Lumber);
    }

    /// <summary>A tube cut along its middle: both walls.</summary>
    public static void Tube(Figure figure, string layer, PlanePoint low, PlanePoint high, TubeSection tube)
    {
        figure.On(layer).Fill(ModelPath.Rectangle(low, high), Ink.ZincTint).Rectangle(low, high, LineRole.Outline);
        foreach (Length wall in (ReadOnlySpan<Length>)[low.Across + tube.Wall, high.Across - tube.Wall])
            figure.On(layer).Line(At(wall, low.Up), At(wall, high.Up), LineRole.Dimension);
    }

    /// <summary>The tube of the left half of a bow between two heights.</summary>
    public void Bow(Figure figure, Length from, Length to)
    {
        PlanePoint[] outer = [.. Between(tunnel.Bow.FilmLine, from, to)], inner = [.. Between(tunnel.Bow.Underside, from, to)], middle = [.. Between(tunnel.Bow.CentreLine, from, to)];
        if (outer.Length < 2 || inner.Length < 2) return;
        figure.On("bow").Fill(ModelPath.Around(outer.Concat(inner.Reverse())), Ink.ZincTint)
            .Path(ModelPath.Through(outer), LineRole.Outline).Path(ModelPath.Through(inner), LineRole.Outline);
        if (middle.Length > 1) figure.On("centre").Path(ModelPath.Through(middle), LineRole.Centre);
    }

    /// <summary>Points of the left half of a curve between two heights.</summary>
    public static ImmutableArray<PlanePoint> Between(PlanePath path, Length from, Length to) =>
        [.. Enumerable.Range(0, Chords + 1).Select(step => path.PointAt(path.Length / 2 * ((double)step / Chords))).Where(point => point.Up >= from && point.Up <= to)];

    /// <summary>Lock channel on the outside of a board, cut across, with as many wires as it holds; its size is common practice, no source.</summary>
    public static void Channel(Figure figure, Length face, Length up, int wires)
    {
        Length half = ChannelHalf, deep = ChannelDeep;
        figure.On("channel").Path(ModelPath.Through(At(face - deep, up + half), At(face, up + half), At(face, up - half), At(face - deep, up - half)), LineRole.Cut);
        for (int wire = 0; wire < wires; wire++) figure.On("wire").Circle(At(face - (deep * 0.5), up + (half * (wires == 1 ? 0 : 0.5 - wire))), Length.FromMillimetres(2), LineRole.Outline, Ink.Zinc);
    }

    /// <summary>Half the width of lock channel as it is commonly sold, 1-1/4 in; from memory.</summary>
    public static Length ChannelHalf { get; } = Length.FromInches(0.625);

    /// <summary>Depth of lock channel as it is commonly sold; from memory.</summary>
    public static Length ChannelDeep { get; } = Length.FromInches(0.4375);
}
