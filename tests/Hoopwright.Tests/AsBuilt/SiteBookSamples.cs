using System.Collections.Immutable;
using Hoopwright.Plans;

namespace Hoopwright.Tests.AsBuilt;

/// <summary>Site books for tests: one entry after another, ten minutes apart.</summary>
internal static class SiteBookSamples
{
    /// <summary>A plan with measurements added: names and readings.</summary>
    public static Plan With(Plan plan, params (string Of, string Value)[] readings) =>
        plan with { SiteBook = [.. plan.SiteBook, .. Entries(readings, plan.SiteBook.Length)] };

    /// <summary>Measurements as entries.</summary>
    public static ImmutableArray<SiteBookEntry> Entries(IEnumerable<(string Of, string Value)> readings, int from = 0) =>
        [.. readings.Select((reading, index) => new SiteBookEntry { Id = IdOf(from + index), Kind = SiteBookKind.Measurement, Of = reading.Of, Value = reading.Value, By = "Invented crew" })];

    /// <summary>The identity of an entry by its place in the book.</summary>
    public static string IdOf(int at) => new DateTime(2026, 4, 18, 8, 0, 0, DateTimeKind.Utc).AddMinutes(10.0 * at).ToString("yyyyMMdd'T'HHmmssfff'Z'", System.Globalization.CultureInfo.InvariantCulture) + "-abcdefgh";
}
