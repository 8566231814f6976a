using System.Globalization;
using Hoopwright.Quantities;

namespace Hoopwright.Takeoff;

/// <summary>Amounts of material as one says them.</summary>
public static class MaterialText
{
    /// <summary>A count, a length, an area or a volume.</summary>
    /// <param name="quantity">How much, in the unit.</param>
    /// <param name="unit">The unit.</param>
    /// <param name="units">The units to show it in.</param>
    public static string Amount(decimal quantity, MaterialUnit unit, UnitSystem units) => unit switch
    {
        MaterialUnit.Each or MaterialUnit.CutLengths => Count(quantity),
        MaterialUnit.Metres => TapeText.OfRun(Length.FromMetres((double)quantity), units),
        MaterialUnit.CubicMetres => TapeText.Of(Volume.FromCubicMetres((double)quantity), units),
        MaterialUnit.SquareMetres => TapeText.Of(Area.FromSquareMetres((double)quantity), units),
    };

    /// <summary>How much of a line to load: as <see cref="Amount"/>, but dry concrete in bags, up to a whole one.</summary>
    /// <param name="line">The line, or a part of it.</param>
    /// <param name="units">The units to show it in.</param>
    public static string Load(MaterialLine line, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.Item == Items.DryConcrete && ConcreteBags.OfSize(line.Size) is { } bag
            ? Count(ConcreteBags.Whole(Volume.FromCubicMetres((double)line.Quantity), bag))
            : Amount(line.Quantity, line.Unit, units);
    }

    /// <summary>A count, which may be a part of a package.</summary>
    /// <param name="quantity">How many.</param>
    public static string Count(decimal quantity) => decimal.Round(quantity, 2).ToString("0.##", CultureInfo.InvariantCulture);
}
