using System.Globalization;

namespace Hoopwright.SiteBooks;

/// <summary>
/// Identities of entries and edits: the time to the millisecond, then eight letters that only this device drew, so that they sort by time
/// as plain text and two devices never make the same one (32^8, a million millions, to draw from within one millisecond).
/// </summary>
public static class SiteBookIds
{
    /// <summary>How the time is written, in universal time.</summary>
    public const string TimeForm = "yyyyMMdd'T'HHmmssfff'Z'";

    // Neither i, l, o nor u: they are read as something else (Crockford's base 32).
    private const string Letters = "0123456789abcdefghjkmnpqrstvwxyz";

    /// <summary>An identity that sorts after the ones there are.</summary>
    /// <param name="now">The time; a clock that was set back is put just after <paramref name="last"/>.</param>
    /// <param name="drawn">Forty bits that nobody else draws.</param>
    /// <param name="last">The last identity that this copy knows; null when it knows none.</param>
    public static string Next(DateTimeOffset now, long drawn, string? last = null)
    {
        if (last is not null && TimeOf(last) is { } latest && latest >= now) now = latest.AddMilliseconds(1);
        Span<char> letters = stackalloc char[8];
        for (int at = 0; at < letters.Length; at++) letters[at] = Letters[(int)((drawn >> (5 * at)) & 31)];
        string id = $"{now.UtcDateTime.ToString(TimeForm, CultureInfo.InvariantCulture)}-{letters}";
        // An identity in a form of its own, typed by hand.
        return last is null || string.CompareOrdinal(id, last) > 0 ? id : $"{last}-{letters}";
    }

    /// <summary>The time that an identity says; null when it says none.</summary>
    /// <param name="id">The identity, of this form or of the older one without milliseconds.</param>
    public static DateTimeOffset? TimeOf(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        string time = id.Split('-')[0];
        foreach (string form in (string[])[TimeForm, "yyyyMMdd'T'HHmmss", "yyyyMMdd'T'HHmm"])
        {
            if (DateTimeOffset.TryParseExact(time, form, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset read)) return read;
        }
        return null;
    }
}
