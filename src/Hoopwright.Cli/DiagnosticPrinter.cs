using System.Collections.Immutable;
using System.Text.Json;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;

namespace Hoopwright.Cli;

/// <summary>Prints diagnostics for people and for machines.</summary>
internal static class DiagnosticPrinter
{
    /// <summary>One block a diagnostic: where, what, seen, what would do.</summary>
    public static void Print(TextWriter to, Terminal terminal, IEnumerable<Diagnostic> diagnostics, PlanReading? reading)
    {
        foreach (Diagnostic diagnostic in diagnostics)
        {
            string word = diagnostic.Severity switch
            {
                Severity.Error => terminal.Paint("error", TerminalColour.Red),
                Severity.Warning => terminal.Paint("look again", TerminalColour.Yellow),
                Severity.Assumption => terminal.Paint("assumed", TerminalColour.Cyan),
            };
            string place = diagnostic.Severity != Severity.Assumption && reading?.PlaceOf(diagnostic.Path) is { } at ? $", {at}" : "";
            to.WriteLine($"{word}  {diagnostic.Path}{place}");
            to.WriteLine($"    {diagnostic.Message}");
            if (diagnostic.Seen is { } seen) to.WriteLine($"    seen: {seen}");
            if (diagnostic.Accepted is { } accepted) to.WriteLine(diagnostic.Severity == Severity.Assumption ? $"    taken: {accepted}" : $"    would do: {accepted}");
            to.WriteLine($"    [{diagnostic.Code}]");
        }
    }

    /// <summary>How many of each.</summary>
    public static string Count(ImmutableArray<Diagnostic> diagnostics)
    {
        int errors = Of(Severity.Error), warnings = Of(Severity.Warning), assumptions = Of(Severity.Assumption);
        return $"{errors} {(errors == 1 ? "error" : "errors")}, {warnings} to look at again, {assumptions} {(assumptions == 1 ? "assumption" : "assumptions")} to confirm.";

        int Of(Severity severity) => diagnostics.Count(diagnostic => diagnostic.Severity == severity);
    }

    /// <summary>As a JSON list.</summary>
    public static string Json(IEnumerable<Diagnostic> diagnostics)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, JsonText.Written)) DiagnosticJson.Write(json, diagnostics);
        return System.Text.Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }
}
