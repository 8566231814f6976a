using System.Globalization;

namespace Hoopwright.Quantities;

/// <summary>An amount of money in the plan's own currency. Exact decimal; a plan has one currency.</summary>
/// <param name="Amount">The amount in whole units of the currency; parts of a cent are kept.</param>
public readonly record struct Money(decimal Amount) : IComparable<Money>
{
    /// <summary>No money.</summary>
    public static Money Zero => default;

    /// <summary>The amount to two places, halves away from zero, as a price list prints it.</summary>
    public Money RoundToCents() => new(decimal.Round(Amount, 2, MidpointRounding.AwayFromZero));

    /// <summary>Sum.</summary>
    public static Money operator +(Money left, Money right) => new(left.Amount + right.Amount);

    /// <summary>Difference.</summary>
    public static Money operator -(Money left, Money right) => new(left.Amount - right.Amount);

    /// <summary>So many times.</summary>
    public static Money operator *(Money each, decimal times) => new(each.Amount * times);

    /// <summary>So many times.</summary>
    public static Money operator *(decimal times, Money each) => new(each.Amount * times);

    /// <summary>Compares by size.</summary>
    public static bool operator <(Money left, Money right) => left.Amount < right.Amount;

    /// <summary>Compares by size.</summary>
    public static bool operator >(Money left, Money right) => left.Amount > right.Amount;

    /// <summary>Compares by size.</summary>
    public static bool operator <=(Money left, Money right) => left.Amount <= right.Amount;

    /// <summary>Compares by size.</summary>
    public static bool operator >=(Money left, Money right) => left.Amount >= right.Amount;

    /// <inheritdoc/>
    public int CompareTo(Money other) => Amount.CompareTo(other.Amount);

    /// <summary>Two decimals, no currency sign.</summary>
    public override string ToString() => RoundToCents().Amount.ToString("0.00", CultureInfo.InvariantCulture);
}
