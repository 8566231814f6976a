using System.Globalization;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>Bags of dry concrete for a volume.</summary>
public static class ConcreteBags
{
    /// <summary>
    /// What one pound of dry mix yields: 40, 50, 60 and 80 lb bags are printed with 0.30, 0.375, 0.45 and 0.60 ft³.
    /// </summary>
    public static Formula Formula { get; } = new("bags", "volume / (bag mass · 0.0075 ft³/lb)", "",
        new Citation("yields as printed on bags of dry concrete to ASTM C387; the printed bag decides", "0.0075 ft³/lb", Standing.CommonPractice));

    /// <summary>Placed concrete from one bag.</summary>
    /// <param name="bag">Mass of the dry bag; above 0.</param>
    public static Volume Yield(Mass bag)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(bag.Kilograms, 0, nameof(bag));
        // Divided last, so that 80 lb gives 0.6 ft³ and not a hair beside it.
        return Volume.FromCubicFeet(bag.Pounds * 75 / 10_000);
    }

    /// <summary>Bags for a volume, not yet whole.</summary>
    /// <param name="volume">Concrete in place; 0 or more.</param>
    /// <param name="bag">Mass of the dry bag; above 0.</param>
    public static Ratio Exactly(Volume volume, Mass bag) => Ratio.FromValue(volume / Yield(bag));

    /// <summary>Whole bags for a volume.</summary>
    /// <param name="volume">Concrete in place; 0 or more.</param>
    /// <param name="bag">Mass of the dry bag; above 0.</param>
    public static int Whole(Volume volume, Mass bag) => (int)Math.Ceiling(Exactly(volume, bag).Value - 1e-9);

    /// <summary>The size of a bag as the price book writes it: <c>80 lb bag</c>, or <c>25 kg bag</c> where that is the rounder number.</summary>
    /// <param name="bag">Mass of the dry bag.</param>
    public static string SizeName(Mass bag) => OffWhole(bag.Pounds) <= OffWhole(bag.Kilograms)
        ? FormattableString.Invariant($"{bag.Pounds:0.#} lb bag")
        : FormattableString.Invariant($"{bag.Kilograms:0.#} kg bag");

    /// <summary>The mass of a bag that is named as <see cref="SizeName"/> does; null for any other name.</summary>
    /// <param name="size">The name.</param>
    public static Mass? OfSize(string size)
    {
        ArgumentNullException.ThrowIfNull(size);
        string[] words = size.Split(' ');
        return words is [var number, "lb" or "kg", "bag"] && double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out double mass) && mass > 0
            ? words[1] == "lb" ? Mass.FromPounds(mass) : Mass.FromKilograms(mass)
            : null;
    }

    private static double OffWhole(double value) => Math.Abs(value - Math.Round(value));
}
