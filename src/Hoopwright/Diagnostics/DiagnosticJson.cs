using System.Text.Json;

namespace Hoopwright.Diagnostics;

/// <summary>Diagnostics as machines read them.</summary>
public static class DiagnosticJson
{
    /// <summary>Writes diagnostics as a list, in their order: severity, code, path, message, and what was seen and accepted, null where there is none.</summary>
    /// <param name="json">Where to; after a property's name, or where a value may stand.</param>
    /// <param name="diagnostics">What was found.</param>
    public static void Write(Utf8JsonWriter json, IEnumerable<Diagnostic> diagnostics)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(diagnostics);
        json.WriteStartArray();
        foreach (Diagnostic found in diagnostics)
        {
            json.WriteStartObject();
            json.WriteString("severity", found.Severity switch { Severity.Error => "error", Severity.Warning => "warning", Severity.Assumption => "assumption" });
            json.WriteString("code", found.Code);
            json.WriteString("path", found.Path);
            json.WriteString("message", found.Message);
            json.WriteString("seen", found.Seen);
            json.WriteString("accepted", found.Accepted);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }
}
