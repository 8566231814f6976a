using System.Globalization;

namespace Hoopwright.Quantities;

/// <summary>Walks through cleaned text from left to right. A copy looks ahead.</summary>
internal ref struct TextCursor(ReadOnlySpan<char> text)
{
    private const int MostWholeDigits = 9;
    private const int MostDecimals = 15;

    /// <summary>What is still to be read.</summary>
    internal ReadOnlySpan<char> Rest { get; private set; } = text;

    /// <summary>True when nothing but spaces is left.</summary>
    internal readonly bool AtEnd => Rest.Trim(' ').IsEmpty;

    /// <summary>Passes over spaces.</summary>
    internal void SkipSpaces() => Rest = Rest.TrimStart(' ');

    /// <summary>Passes over one sign of the kind asked for, if it comes next.</summary>
    internal bool Take(char sign)
    {
        if (Rest.IsEmpty || Rest[0] != sign) return false;
        Rest = Rest[1..];
        return true;
    }

    /// <summary>Takes a run of letters, which may be empty; a full stop that closes an abbreviation goes with it.</summary>
    internal ReadOnlySpan<char> TakeWord()
    {
        int length = 0;
        while (length < Rest.Length && char.IsLetter(Rest[length])) length++;
        ReadOnlySpan<char> word = Rest[..length];
        Rest = Rest[length..];
        if (length > 0 && Rest is ['.'] or ['.', ' ', ..]) Rest = Rest[1..];
        return word;
    }

    /// <summary>Takes a plain decimal number such as <c>26</c>, <c>5.25</c> or <c>.5</c>; null when none comes next.</summary>
    internal ExactNumber? TakeDecimal()
    {
        int whole = DigitsAt(Rest), decimals = 0;
        if (Rest.Length > whole && Rest[whole] == '.') decimals = DigitsAt(Rest[(whole + 1)..]);
        if (whole + decimals == 0 || whole > MostWholeDigits || decimals > MostDecimals) return null;
        int length = decimals == 0 ? whole : whole + 1 + decimals;
        decimal value = decimal.Parse(Rest[..length], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        Rest = Rest[length..];
        return new ExactNumber(value, decimals == 0 ? NumberForm.Whole : NumberForm.Decimal);
    }

    /// <summary>
    /// Takes a number as a tape reads it: decimal, fraction, or whole number and fraction. Sets <paramref name="fault"/>
    /// when a fraction is there but cannot be a tape fraction.
    /// </summary>
    internal ExactNumber? TakeTapeNumber(out string? fault)
    {
        fault = null;
        TextCursor alone = this;
        if (alone.TakeFraction(properOnly: false, out fault) is decimal fraction)
        {
            this = alone;
            return new ExactNumber(fraction, NumberForm.Fraction);
        }

        if (fault is not null || TakeDecimal() is not ExactNumber number) return null;
        if (number.Form != NumberForm.Whole) return number;

        TextCursor ahead = this;
        ahead.SkipSpaces();
        if (ahead.Take('-')) ahead.SkipSpaces();
        if (ahead.TakeFraction(properOnly: true, out fault) is not decimal part) return fault is null ? number : null;
        this = ahead;
        return new ExactNumber(number.Value + part, NumberForm.Fraction);
    }

    private decimal? TakeFraction(bool properOnly, out string? fault)
    {
        fault = null;
        int top = DigitsAt(Rest);
        if (top == 0 || top >= Rest.Length || Rest[top] != '/') return null;
        int bottom = DigitsAt(Rest[(top + 1)..]);
        if (bottom == 0 || top > 3 || bottom > 3)
        {
            fault = "The fraction cannot be read.";
            return null;
        }

        int numerator = int.Parse(Rest[..top], NumberStyles.None, CultureInfo.InvariantCulture);
        int denominator = int.Parse(Rest.Slice(top + 1, bottom), NumberStyles.None, CultureInfo.InvariantCulture);
        if (denominator is not (2 or 4 or 8 or 16 or 32 or 64))
            fault = "A tape has halves, quarters, eighths, sixteenths, 32nds and 64ths; this fraction is none of them.";
        else if (properOnly && numerator >= denominator)
            fault = "The fraction after a whole number must be less than one.";
        if (fault is not null) return null;
        Rest = Rest[(top + 1 + bottom)..];
        return (decimal)numerator / denominator;
    }

    private static int DigitsAt(ReadOnlySpan<char> text)
    {
        int count = 0;
        while (count < text.Length && char.IsAsciiDigit(text[count])) count++;
        return count;
    }
}
