using System.Globalization;
using Hoopwright.Quantities;

namespace Hoopwright.Orders;

/// <summary>Amounts of an order line in words.</summary>
public static class OrderAmount
{
    /// <summary>How much is needed, as a counter hand would say it: "12 boards", "162 ft", "372".</summary>
    /// <param name="line">The line.</param>
    /// <param name="units">Units of what is bought by the length.</param>
    public static string Needed(OrderLine line, UnitSystem units) =>
        IsRun(line) ? Of(line, line.Needed, units) : $"{Of(line, line.Needed, units)} {UnitOf(line.Unit, line.Needed)}".TrimEnd();

    /// <summary>An amount in the unit of the line, without naming a unit that is counted.</summary>
    /// <param name="line">The line.</param>
    /// <param name="amount">How much, in the unit of the line.</param>
    /// <param name="units">Units of what is bought by the length.</param>
    public static string Of(OrderLine line, decimal amount, UnitSystem units) => IsRun(line)
        ? TapeText.OfRun(Length.FromMetres((double)amount), units)
        : decimal.Round(amount, 2).ToString("0.##", CultureInfo.InvariantCulture);

    private static bool IsRun(OrderLine line) => line.Unit == "m";

    private static string UnitOf(string unit, decimal count) => unit switch
    {
        "each" => "",
        "board" or "post" or "sheet" or "length" or "stick" or "roll" or "reel" or "piece" or "bag" => count == 1 ? unit : unit + "s",
        _ => unit,
    };
}
