namespace Hoopwright.Weather;

/// <summary>Reads lengths of time as ISO 8601 writes them, of days, hours and minutes: P1DT6H, PT30M.</summary>
internal static class IsoDuration
{
    private const int MostDigits = 6;

    /// <summary>The length; null when it is none, or has years, months or fractions, which have no fixed number of hours here.</summary>
    internal static TimeSpan? Read(string text)
    {
        if (text.Length < 3 || text[0] != 'P') return null;
        var span = TimeSpan.Zero;
        bool inTime = false, any = false;
        int digits = 0, number = 0;
        foreach (char c in text.AsSpan(1))
        {
            if (char.IsAsciiDigit(c) && digits < MostDigits) (number, digits) = ((number * 10) + (c - '0'), digits + 1);
            else if (c == 'T' && !inTime && digits == 0) inTime = true;
            else if (digits > 0 && Unit(c, inTime) is { } unit) (span, any, digits, number) = (span + (unit * number), true, 0, 0);
            else return null;
        }
        return any && digits == 0 ? span : null;
    }

    private static TimeSpan? Unit(char c, bool inTime) => (c, inTime) switch
    {
        ('W', false) => TimeSpan.FromDays(7),
        ('D', false) => TimeSpan.FromDays(1),
        ('H', true) => TimeSpan.FromHours(1),
        ('M', true) => TimeSpan.FromMinutes(1),
        ('S', true) => TimeSpan.FromSeconds(1),
        _ => null,
    };
}
