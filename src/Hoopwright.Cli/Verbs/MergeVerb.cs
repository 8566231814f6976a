using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Security.Cryptography;
using System.Text.Encodings.Web;
using System.Text.Json;
using Hoopwright.Diagnostics;
using Hoopwright.SiteBooks;

namespace Hoopwright.Cli.Verbs;

/// <summary>Puts two copies of a plan together.</summary>
internal static class MergeVerb
{
    public static Command Command(Terminal terminal)
    {
        var first = new Argument<string>("PLAN") { Description = "One copy; - reads standard input." };
        var second = new Argument<string>("OTHER") { Description = "The other copy." };
        var to = new Option<string>("--out") { HelpName = "FILE", Description = "The plan file to write; may be one of the two.", Required = true };
        var decide = new Option<string[]>("--decide") { HelpName = "PATH=VALUE", Description = "A field and its value, such as frame.span=\"30 ft\", for one of which the copies say different things; may be given several times.", DefaultValueFactory = _ => [] };
        decide.Validators.Add(result =>
        {
            foreach (string given in result.GetValueOrDefault<string[]>() ?? [])
            {
                if (given.IndexOf('=', StringComparison.Ordinal) <= 0) result.AddError($"'{given}' says no value; write a field, = and its value, such as frame.span=\"30 ft\".");
            }
        });
        var by = new Option<string?>("--by") { HelpName = "NAME", Description = "Who decides, as it is to stand in the plan." };
        var json = new Option<bool>("--json") { Description = "For machines: one JSON document on standard output." };
        var command = new Command("merge", """
            Puts two copies of a plan together: every entry of both site books, and of each field what was written last knowing of the
            other copy. Where neither knew of the other, both values are kept and shown for a decision. The order of the copies does not
            matter. Comments in the files are not kept.

            Examples:
              hoopwright merge office.json phone.json --out plan.json
              hoopwright merge office.json phone.json --out plan.json --decide frame.span="30 ft" --by "crew lead"
            """) { first, second, to, decide, by, json };
        command.SetAction(parsed =>
        {
            (string one, string other) = (parsed.GetRequiredValue(first), parsed.GetRequiredValue(second));
            if (one == "-" && other == "-")
            {
                terminal.Messages.WriteLine("Only one of the two plans can come from standard input; see 'hoopwright merge --help'.");
                return ExitCode.WrongUsage;
            }
            MergedPlan merged = PlanMerge.Merge(Files.Read(one, terminal), Files.Read(other, terminal));
            if (!merged.IsMerged)
            {
                Refuse(terminal, one, merged.FirstDiagnostics);
                Refuse(terminal, other, merged.SecondDiagnostics);
                terminal.Messages.WriteLine("Nothing was written.");
                return ExitCode.InputErrors;
            }
            ReadOnlyMemory<byte> document = merged.Document;
            foreach (string decision in parsed.GetValue(decide) ?? [])
            {
                string[] parts = decision.Split('=', 2);
                if (merged.Undecided.FirstOrDefault(field => field.Path == parts[0]) is not { } field)
                {
                    terminal.Messages.WriteLine($"The copies do not differ in {parts[0]}: {(merged.Undecided.IsEmpty ? "they differ in nothing that waits for a decision" : "they differ in " + string.Join(", ", merged.Undecided.Select(each => each.Path)))}. Nothing was written.");
                    return ExitCode.InputErrors;
                }
                document = PlanEdits.Decide(document, field.Path, AsJson(parts[1]), new(SiteBookIds.Next(DateTimeOffset.UtcNow, BitConverter.ToInt64(RandomNumberGenerator.GetBytes(8))), parsed.GetValue(by), null))!;
            }
            Files.Write(parsed.GetRequiredValue(to), document.Span);
            merged = merged with { Undecided = PlanMerge.Undecided(document) };
            if (parsed.GetValue(json)) terminal.Out.WriteLine(Json(merged));
            else Print(terminal, merged, parsed.GetRequiredValue(to));
            return ExitCode.Done;
        });
        return command;
    }

    private static void Print(Terminal terminal, MergedPlan merged, string file)
    {
        terminal.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{file}: {merged.EntriesAlready + merged.EntriesOfFirst + merged.EntriesOfSecond} entries of the site book; {merged.EntriesOfFirst} only the first had, {merged.EntriesOfSecond} only the second."));
        foreach (UndecidedField field in merged.Undecided)
        {
            terminal.Out.WriteLine();
            terminal.Out.WriteLine($"{field.Path}: the copies say different things. The plan goes by the first until somebody decides:");
            foreach (SaidValue said in field.Said)
            {
                string who = string.Join(", ", ((string?[])[said.By, said.Device]).OfType<string>());
                terminal.Out.WriteLine($"    {said.Json ?? "(nothing)"}{(who.Length > 0 ? $"  ({who})" : "")}");
            }
        }
        if (!merged.Undecided.IsEmpty) terminal.Out.WriteLine("Decide in the app, with --decide, or by typing a value into the file.");
    }

    private static void Refuse(Terminal terminal, string file, ImmutableArray<Diagnostic> found)
    {
        if (found.IsEmpty) return;
        terminal.Messages.WriteLine($"{file}:");
        DiagnosticPrinter.Print(terminal.Messages, terminal, found, reading: null);
    }

    // A value as it stands in the file; a text may come without its quotes.
    private static string? AsJson(string typed)
    {
        if (typed.Length == 0) return null;
        try
        {
            using JsonDocument read = JsonDocument.Parse(typed);
            return read.RootElement.ValueKind == JsonValueKind.Number ? Text(typed) : typed;
        }
        catch (JsonException)
        {
            return Text(typed);
        }

        static string Text(string typed) => $"\"{JavaScriptEncoder.UnsafeRelaxedJsonEscaping.Encode(typed)}\"";
    }

    private static string Json(MergedPlan merged)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, JsonText.Written))
        {
            writer.WriteStartObject();
            writer.WriteNumber("entriesAlready", merged.EntriesAlready);
            writer.WriteNumber("entriesOfFirst", merged.EntriesOfFirst);
            writer.WriteNumber("entriesOfSecond", merged.EntriesOfSecond);
            writer.WriteStartArray("undecided");
            foreach (UndecidedField field in merged.Undecided)
            {
                writer.WriteStartObject();
                writer.WriteString("path", field.Path);
                writer.WriteStartArray("said");
                foreach (SaidValue said in field.Said)
                {
                    writer.WriteStartObject();
                    writer.WriteString("value", said.Json);
                    writer.WriteString("by", said.By);
                    writer.WriteString("device", said.Device);
                    writer.WriteEndObject();
                }
                writer.WriteEndArray();
                writer.WriteEndObject();
            }
            writer.WriteEndArray();
            writer.WriteEndObject();
        }
        return System.Text.Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }
}
