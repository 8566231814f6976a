using System.Text.RegularExpressions;
using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Figures;

/// <summary>A drawing of the tunnel with the name its file takes.</summary>
/// <param name="Name">File name without its ending; sorts in the order of the packet.</param>
/// <param name="Chapter">The chapter of the packet that it belongs to.</param>
/// <param name="Drawing">The drawing.</param>
public sealed partial record TunnelFigure(string Name, FigureChapter Chapter, Drawing Drawing)
{
    /// <summary>What it shows, by the name that tables give, such as front-end or cut-lists: without its place in the packet, and one for all sheets in a row.</summary>
    public string Shows => ShownBy(Rank().Replace(Name, ""));

    /// <summary>The name without the number of a sheet in a row.</summary>
    internal static string ShownBy(string name) => Row().Replace(name, "$1");

    [GeneratedRegex("^[0-9]+-")]
    private static partial Regex Rank();

    [GeneratedRegex("^(film-cuts|cut-lists)-[0-9].*$")]
    private static partial Regex Row();
}
