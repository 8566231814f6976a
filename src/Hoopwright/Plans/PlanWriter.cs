using System.Text.Encodings.Web;
using System.Text.Json;

namespace Hoopwright.Plans;

/// <summary>
/// Writes plan documents: JSON in UTF-8 without a mark, two spaces, <c>\n</c>, fields in one order, quantities as they were
/// typed, fields that are not given left out. The same plan gives the same bytes everywhere.
/// </summary>
public static class PlanWriter
{
    internal static JsonWriterOptions Indented { get; } = new()
    {
        // An inch mark reads \" instead of \u0022, a prime stays a prime; the file is never put into a web page as it is.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Indented = true,
        IndentSize = 2,
        NewLine = "\n",
    };

    /// <summary>The same without white space, for values that are kept unread.</summary>
    internal static JsonWriterOptions Compact { get; } = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes a plan.</summary>
    /// <param name="plan">The plan; read from a file or made by hand.</param>
    /// <returns>The bytes of the file.</returns>
    public static byte[] Write(Plan plan) => Write(PlanFormats.Plan, plan);

    /// <summary>Writes a price book as a file of its own.</summary>
    /// <param name="prices">The price book.</param>
    /// <returns>The bytes of the file.</returns>
    public static byte[] Write(Prices prices) => Write(OrderFormats.Prices, prices);

    private static byte[] Write<TSection>(PlanFormat<TSection> format, TSection section)
        where TSection : PlanSection, new()
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, Indented))
        {
            format.Write(section, writer);
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }
}
