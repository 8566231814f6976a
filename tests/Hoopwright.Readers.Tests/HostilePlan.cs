using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Testing;

namespace Hoopwright.Readers.Tests;

/// <summary>The gothic example with a place on the map and with words that try to break each form of the packet.</summary>
internal static class HostilePlan
{
    /// <summary>A name with everything in it, and ten thousand letters more.</summary>
    public static string Name { get; } =
        "=HYPERLINK(\"http://example.invalid\";\"x\") </script><script>alert(1)</script> <img src=x onerror=alert(2)> ../../up/..\\down C:\\dir %%c%%u \\U+0041 {\\H9;big} שלום \u202Egnp.exe 🌾 ]]> \u0007\u001b[31m & ' \" "
        + new string('n', 10_000);

    /// <summary>Names of lines added to the order, each a trap for a table.</summary>
    public static string[] Items { get; } =
    [
        "=1+1", "+1+1", "-1+1", "@SUM(A1:A9)", "\t=2+2", "\r=3+3", "=cmd|'/c calc'!A1", "\"quoted\", and, commas", "two\nlines", "שלום עולם", "🌾 wheat 👩‍🌾", "<b>&amp;</b></script>",
        "../../../etc/passwd", "\u0001control\u001f", "\ufffe\uffff", "_x0041_ escaped", "' leading quote", new string('w', 10_000),
    ];

    /// <summary>The plan's text.</summary>
    public static string Text { get; } = Make();

    private static string Make()
    {
        JsonNode plan = JsonNode.Parse(SamplePlans.ExampleBytes("gothic-26ft"), documentOptions: new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true })!;
        plan["name"] = Name;
        plan["note"] = Name;
        plan["site"]!["place"] = Name;
        plan["site"]!["soil"] = Name;
        plan["site"]!["latitude"] = "42.9°";
        plan["site"]!["longitude"] = "-78.7°";
        plan["site"]!["frontFaces"] = "120°";
        plan["prices"] = new JsonObject { ["currency"] = "=USD", ["note"] = "=1+1" };
        plan["orders"] = new JsonObject
        {
            ["extras"] = new JsonArray([.. Items.Select(item => new JsonObject { ["item"] = item, ["quantity"] = "2", ["unit"] = item, ["price"] = "1.25", ["stage"] = "frame" })]),
        };
        return plan.ToJsonString();
    }
}
