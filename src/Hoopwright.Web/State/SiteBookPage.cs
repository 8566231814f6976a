using System.Security.Cryptography;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.SiteBooks;

namespace Hoopwright.Web.State;

/// <summary>The site book as the page keeps it: entries that sort by time.</summary>
public static class SiteBookPage
{
    /// <summary>How many entries there are.</summary>
    /// <param name="plan">The plan.</param>
    public static int Count(JsonNode plan) => (PlanPath.At(plan, "siteBook") as JsonArray)?.Count ?? 0;

    /// <summary>A new entry. Its identity sorts after that of every entry there is, so that the union of two copies is in order.</summary>
    /// <param name="document">The plan as text: a long site book is gone through without a tree of it.</param>
    /// <param name="now">The time.</param>
    public static JsonObject NewEntry(string document, DateTimeOffset now)
    {
        using JsonDocument plan = JsonDocument.Parse(document);
        string? last = Results.Items(Results.Find(plan.RootElement, "siteBook")).Select(entry => Results.Word(entry, "id")).Where(id => id.Length > 0).Max(StringComparer.Ordinal);
        return new JsonObject { ["id"] = NewId(now, last), ["kind"] = "note" };
    }

    /// <summary>An identity that nobody else has.</summary>
    /// <param name="now">The time.</param>
    /// <param name="last">The last one that this copy knows; null when it knows none.</param>
    public static string NewId(DateTimeOffset now, string? last = null) => SiteBookIds.Next(now, BitConverter.ToInt64(RandomNumberGenerator.GetBytes(sizeof(long))), last);
}
