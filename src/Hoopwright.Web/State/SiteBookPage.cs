using System.Globalization;
using System.Text.Json.Nodes;

namespace Hoopwright.Web.State;

/// <summary>The site book as the page keeps it: entries that sort by time.</summary>
public static class SiteBookPage
{
    /// <summary>How many entries there are.</summary>
    /// <param name="plan">The plan.</param>
    public static int Count(JsonNode plan) => (PlanPath.At(plan, "siteBook") as JsonArray)?.Count ?? 0;

    /// <summary>A new entry. Its identity sorts after that of every entry there is, so that the union of two copies is in order.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="now">The time.</param>
    public static JsonObject NewEntry(JsonNode plan, DateTimeOffset now)
    {
        string last = (PlanPath.At(plan, "siteBook") as JsonArray)?.Select((_, index) => PlanPath.TextAt(plan, $"siteBook[{index}].id")).Max(StringComparer.Ordinal) ?? "";
        string id = now.UtcDateTime.ToString("yyyyMMdd'T'HHmmss", CultureInfo.InvariantCulture);
        // A clock that was set back, or two entries within a second.
        if (string.CompareOrdinal(id, last) <= 0) id = last + "a";
        return new JsonObject { ["id"] = id, ["kind"] = "note" };
    }
}
