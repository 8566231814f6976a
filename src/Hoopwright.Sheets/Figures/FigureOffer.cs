using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Figures;

/// <summary>A drawing that can be had.</summary>
/// <param name="Name">Its name without a number, such as front-end.</param>
/// <param name="Chapter">The chapter of the packet that it belongs to.</param>
/// <param name="NeedsWorks">True when it shows more than the layout: loads, film or cuts.</param>
/// <param name="Draw">Draws it.</param>
public sealed record FigureOffer(string Name, FigureChapter Chapter, bool NeedsWorks, Func<Drawing> Draw);
