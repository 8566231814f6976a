using System.Text.Encodings.Web;
using System.Text.Json;

namespace Hoopwright.Cli;

/// <summary>How the program writes JSON: indented, lines ending in \n, and inch marks and accents as people read them.</summary>
internal static class JsonText
{
    /// <summary>For documents that are made node by node.</summary>
    public static JsonSerializerOptions Indented { get; } = new() { WriteIndented = true, IndentSize = 2, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The same for documents that are written straight out.</summary>
    public static JsonWriterOptions Written { get; } = new() { Indented = true, IndentSize = 2, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
}
