using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Tables;

/// <summary>A column of a table.</summary>
/// <param name="Name">Its heading.</param>
/// <param name="Share">Its share of the width, against the other columns; above 0.</param>
/// <param name="Align">Where its cells lie: words begin at the left, numbers end at the right.</param>
public sealed record Column(string Name, double Share, TextAlign Align = TextAlign.Start);
