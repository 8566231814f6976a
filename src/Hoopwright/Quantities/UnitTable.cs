using System.Collections.Immutable;

namespace Hoopwright.Quantities;

/// <summary>One unit: what it makes of a number, and its names. The first name is the one shown.</summary>
internal sealed record UnitName<T>(Func<double, T> From, bool ExactCase, ImmutableArray<string> Names)
{
    internal bool IsCalled(string word)
    {
        StringComparison how = ExactCase ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase;
        foreach (string name in Names)
            if (string.Equals(name, word, how))
                return true;
        return false;
    }
}

/// <summary>Reads a number followed by one unit of a list.</summary>
internal sealed record UnitTable<T>
    where T : struct, IComparable<T>
{
    /// <summary>The quantity with its article, such as "a speed".</summary>
    internal required string Noun { get; init; }

    /// <summary>How it may be written.</summary>
    internal required string Examples { get; init; }

    /// <summary>The smallest value that can be meant, itself included.</summary>
    internal required T Smallest { get; init; }

    /// <summary>The largest value that can be meant, itself included.</summary>
    internal required T Largest { get; init; }

    /// <summary>The units.</summary>
    internal required ImmutableArray<UnitName<T>> Units { get; init; }

    internal static UnitName<T> Unit(Func<double, T> from, params ReadOnlySpan<string> names) => new(from, false, [.. names]);

    internal static UnitName<T> ExactUnit(Func<double, T> from, params ReadOnlySpan<string> names) => new(from, true, [.. names]);

    internal Reading<T> Read(string? text)
    {
        (string? clean, string? problem, string? accepted) = CleanText.Of(text, Examples);
        if (clean is null) return Reading.Fault<T>(problem!, accepted!);

        var cursor = new TextCursor(clean);
        bool negative = cursor.Take('-');
        if (!negative) cursor.Take('+');
        cursor.SkipSpaces();
        ReadOnlySpan<char> before = cursor.Rest;
        if (cursor.TakeTapeNumber(out string? fault) is not ExactNumber number)
            return Reading.Fault<T>(fault ?? $"There is no number that can be read as {Noun}.", Examples);

        string written = before[..(before.Length - cursor.Rest.Length)].ToString();
        string word = OneSpaced(cursor.Rest);
        if (word.Length == 0)
            return Reading.Fault<T>($"The number has no unit.", string.Join(" or ", Units.Select(unit => $"{written} {unit.Names[0]}")));
        if (Units.FirstOrDefault(unit => unit.IsCalled(word)) is not UnitName<T> found)
            return Reading.Fault<T>(
                $"“{word}” is not a unit for {Noun}.", $"one of {string.Join(", ", Units.Select(unit => unit.Names[0]))}: {Examples}");

        double magnitude = ExactNumber.ToDouble(number.Value);
        T value = found.From(negative && magnitude != 0 ? -magnitude : magnitude);
        return value.CompareTo(Smallest) < 0 || value.CompareTo(Largest) > 0
            ? Reading.Fault<T>($"That is out of range for {Noun}.", Examples)
            : Reading.Of(value);
    }

    private static string OneSpaced(ReadOnlySpan<char> text) =>
        string.Join(' ', text.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
