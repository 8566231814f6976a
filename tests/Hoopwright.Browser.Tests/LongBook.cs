using System.Globalization;
using System.Text.Json.Nodes;

namespace Hoopwright.Browser.Tests;

/// <summary>The small example with a long invented site book.</summary>
internal static class LongBook
{
    /// <summary>The plan as text.</summary>
    /// <param name="entries">How many entries.</param>
    /// <param name="first">When the first was written.</param>
    /// <param name="apart">The time from one to the next.</param>
    /// <param name="entry">What stands in each, besides its identity.</param>
    public static string Text(int entries, DateTime first, TimeSpan apart, Func<int, JsonObject> entry)
    {
        JsonObject plan = JsonNode.Parse(File.ReadAllBytes(Visit.Example("round-14ft")))!.AsObject();
        JsonArray book = [];
        for (int number = 0; number < entries; number++)
        {
            JsonObject written = entry(number);
            written.Insert(0, "id", string.Create(CultureInfo.InvariantCulture, $"{first + (apart * number):yyyyMMdd'T'HHmmssfff'Z'}-abcdefgh"));
            book.Add(written);
        }
        plan["siteBook"] = book;
        return plan.ToJsonString();
    }
}
