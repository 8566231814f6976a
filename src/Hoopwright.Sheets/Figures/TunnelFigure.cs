using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Figures;

/// <summary>A drawing of the tunnel with the name its file takes.</summary>
/// <param name="Name">File name without its ending; sorts in the order of the packet.</param>
/// <param name="Chapter">The chapter of the packet that it belongs to.</param>
/// <param name="Drawing">The drawing.</param>
public sealed record TunnelFigure(string Name, FigureChapter Chapter, Drawing Drawing);
