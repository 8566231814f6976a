using System.Text.Encodings.Web;
using System.Text.Json;

namespace Hoopwright.ModelFiles;

/// <summary>How answers to model and job files are written.</summary>
internal static class AnswerJson
{
    /// <summary>Two blanks a level, lines ending in \n, letters of any script as they are.</summary>
    internal static JsonWriterOptions Indented { get; } = new() { Indented = true, IndentSize = 2, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
}
