using System.Globalization;
using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Dxf;

/// <summary>An ink as a DXF file names it: by number for old readers, by red, green and blue for others.</summary>
internal static class DxfColour
{
    /// <summary>The nearest colour of the numbered ones. Black is 7, which shows white on a dark screen.</summary>
    public static int Index(Ink ink) => ink switch
    {
        Ink.Black => 7,
        Ink.Paper => 255,
        Ink.Zinc => 8,
        Ink.Lumber => 34,
        Ink.Film => 144,
        Ink.Earth => 36,
        Ink.Leaf => 96,
        Ink.Amber => 44,
        Ink.Brick => 24,
        Ink.FilmTint or Ink.LumberTint or Ink.EarthTint or Ink.ZincTint => 254,
    };

    /// <summary>Adds both forms; black has its number alone, so that it shows on any ground.</summary>
    public static DxfPairs InInk(this DxfPairs pairs, Ink ink)
    {
        pairs.Add(62, Index(ink));
        InkColour colour = InkColour.Of(ink);
        return ink == Ink.Black ? pairs : pairs.Add(420, ((colour.Red << 16) | (colour.Green << 8) | colour.Blue).ToString(CultureInfo.InvariantCulture));
    }
}
