using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using Hoopwright.Plans;
using Hoopwright.Strength;
using Hoopwright.Sweeps;

namespace Hoopwright.Cli.Verbs;

/// <summary>Works out many designs of one tunnel and ranks them.</summary>
internal static class SweepVerb
{
    private static readonly TimeSpan BetweenKeeping = TimeSpan.FromSeconds(2);

    public static Command Command(Terminal terminal)
    {
        var input = new PlanInput();
        var vary = new Option<string[]>("--vary") { HelpName = "PATH=a,b,c", Description = "A field of the plan and the values to try: PATH=a,b,c. More than once for every combination.", AllowMultipleArgumentsPerToken = false };
        var keep = new Option<int?>("--keep") { HelpName = "COUNT", Description = "Only the first so many of the ranking." };
        var csv = new Option<bool>("--csv") { Description = "For spreadsheets: a CSV table on standard output." };
        var resume = new Option<string?>("--resume") { HelpName = "FILE", Description = "Keeps the designs worked out in this file; a later run goes on from it." };
        var cores = new Option<int?>("--cores") { HelpName = "COUNT", Description = "How many designs are worked out at once; as many as there are cores when left out. The answer does not depend on it." };
        var changes = new Option<bool>("--changes") { Description = "Instead of --vary: what would make the tunnel stronger, ranked by gain and cost." };
        var steps = new Option<int>("--steps") { HelpName = "COUNT", Description = "With --changes: how many changes are made one after the other, the best of each round, to see what it takes to stand; 0 for none.", DefaultValueFactory = _ => 4 };
        var folder = new Option<string?>("--out") { HelpName = "FOLDER", Description = "With --changes: a folder for drawings of the bow before and after the first of the ranking." };
        var date = new DayOption();
        keep.Validators.Add(result => AtLeastOne(result, "--keep"));
        cores.Validators.Add(result => AtLeastOne(result, "--cores"));
        vary.Validators.Add(result =>
        {
            foreach (string text in result.Tokens.Select(token => token.Value).Where(text => Field(text) is null))
                result.AddError($"--vary takes a field and its values, such as \"frame.bowSpacing=4 ft,3 ft\"; this is {text}.");
        });
        var command = new Command("sweep", """
            Works out every combination of the values given and ranks the designs: by cost among those that stand the entered
            loads, then the marginal ones, then the rest by what they stand. For planning and comparison; local codes and a
            licensed engineer decide. Ctrl-C stops; with --resume the next run goes on. See docs/sweeps.md.

            Examples:
              hoopwright sweep my-tunnel.json --vary "frame.bowSpacing=4 ft,3 ft" --vary "frame.bowTube.wall=0.083 in,0.095 in"
              hoopwright sweep my-tunnel.json --vary "ground.legBase=pinned,fixed" --csv > designs.csv
              hoopwright sweep my-tunnel.json --vary "frame.bowSpacing=6 ft,5 ft,4 ft" --resume designs.kept --keep 10
              hoopwright sweep my-tunnel.json --changes --out drawings
            """) { input.File, vary, changes, steps, folder, date.Option, keep, csv, input.Json, resume, cores, input.Prices };
        command.Validators.Add(result =>
        {
            bool asked = result.GetValue(changes);
            if (asked && (result.GetResult(vary) is { Tokens.Count: > 0 } || result.GetValue(resume) is not null)) result.AddError("--changes finds its own changes and is done in seconds: leave out --vary and --resume.");
            if (!asked && result.GetValue(folder) is not null) result.AddError("--out draws what --changes finds; ask for --changes too.");
            if (result.GetValue(steps) is < 0 or > 20) result.AddError("--steps takes a number from 0 to 20.");
        });
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(changes))
            {
                OutputForm form = parsed.GetValue(input.Json) ? OutputForm.Json : parsed.GetValue(csv) ? OutputForm.Csv : OutputForm.Text;
                return new ChangesRun(terminal, parsed.GetValue(cores)).Run(
                    Files.Read(parsed.GetRequiredValue(input.File), terminal), PlanInput.BookOf(parsed.GetValue(input.Prices), terminal), parsed.GetValue(steps), parsed.GetValue(keep) ?? int.MaxValue, form,
                    parsed.GetValue(folder) is { } to ? (to, date.Of(parsed)) : null);
            }
            ImmutableArray<VariedField> fields = [.. (parsed.GetValue(vary) ?? []).Select(text => Field(text)!)];
            if (fields.IsEmpty)
            {
                terminal.Messages.WriteLine("Say what to vary, such as --vary \"frame.bowSpacing=4 ft,3 ft\", or ask for --changes; see 'hoopwright sweep --help'.");
                return ExitCode.WrongUsage;
            }
            byte[] plan = Files.Read(parsed.GetRequiredValue(input.File), terminal);
            (Prices? book, var wrong) = PlanInput.BookOf(parsed.GetValue(input.Prices), terminal);
            SweepReading reading = Sweep.Read(plan, fields, book);
            if (reading.Sweep is not { } sweep || !wrong.IsEmpty)
            {
                DiagnosticPrinter.Print(terminal.Messages, terminal, [.. wrong, .. reading.Diagnostics], reading: null);
                return ExitCode.InputErrors;
            }
            if (Run(sweep, parsed.GetValue(resume), parsed.GetValue(cores), terminal) is not { } done) return ExitCode.InputErrors;
            ImmutableArray<SweptDesign> ranked = [.. SweepRank.Order(done).Take(parsed.GetValue(keep) ?? int.MaxValue)];
            if (parsed.GetValue(input.Json)) terminal.Out.Write(Encoding.UTF8.GetString(SweepText.Json(sweep, ranked, done.Length)));
            else if (parsed.GetValue(csv)) terminal.Out.Write(SweepText.Csv(sweep, ranked));
            else
            {
                TextTable.Print(terminal.Out, SweepText.Heads(sweep), [.. ranked.Select(design => SweepText.Cells(sweep, design))]);
                terminal.Out.WriteLine(StrengthCaution.Text);
            }
            return ExitCode.Done;
        });
        return command;
    }

    private static ImmutableArray<SweptDesign>? Run(Sweep sweep, string? resume, int? cores, Terminal terminal)
    {
        var done = new ConcurrentDictionary<int, SweptDesign>();
        if (resume is not null && File.Exists(resume))
        {
            (ImmutableArray<SweptDesign> before, var wrong) = SweepRecord.Read(sweep, Files.Read(resume, terminal));
            if (!wrong.IsEmpty)
            {
                DiagnosticPrinter.Print(terminal.Messages, terminal, wrong, reading: null);
                return null;
            }
            foreach (SweptDesign design in before) done[design.Number] = design;
        }
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(terminal.Stop);
        ConsoleCancelEventHandler interrupted = (_, pressed) =>
        {
            pressed.Cancel = true;
            stop.Cancel();
        };
        Console.CancelKeyPress += interrupted;
        var clock = Stopwatch.StartNew();
        TimeSpan keptAt = TimeSpan.Zero;
        var writing = new Lock();
        try
        {
            Parallel.ForEach(Enumerable.Range(0, sweep.Designs).Where(number => !done.ContainsKey(number)).ToArray(), new ParallelOptions { MaxDegreeOfParallelism = cores ?? Environment.ProcessorCount, CancellationToken = stop.Token }, number =>
            {
                done[number] = sweep.Work(number);
                lock (writing)
                {
                    if (terminal.Interactive) terminal.Messages.Write(string.Create(CultureInfo.InvariantCulture, $"\r{done.Count} of {sweep.Designs} designs, {clock.Elapsed.TotalSeconds:0} s "));
                    if (resume is null || clock.Elapsed - keptAt < BetweenKeeping) return;
                    Files.Write(resume, SweepRecord.Write(sweep, done.Values));
                    keptAt = clock.Elapsed;
                }
            });
        }
        catch (OperationCanceledException)
        {
            terminal.Messages.WriteLine($"Stopped after {done.Count} of {sweep.Designs} designs{(resume is null ? "; without --resume they are not kept." : $"; the next run with --resume {resume} goes on from there.")}");
        }
        catch (AggregateException many) when (many.InnerException is FileFault fault)
        {
            throw fault;
        }
        finally
        {
            Console.CancelKeyPress -= interrupted;
            if (terminal.Interactive) terminal.Messages.WriteLine();
        }
        if (resume is not null) Files.Write(resume, SweepRecord.Write(sweep, done.Values));
        return [.. done.Values];
    }

    /// <summary>PATH=a,b,c; commas within [ ] and { } do not part values.</summary>
    private static VariedField? Field(string text)
    {
        int equals = text.IndexOf('=', StringComparison.Ordinal);
        if (equals <= 0) return null;
        var values = ImmutableArray.CreateBuilder<string>();
        int depth = 0, from = equals + 1;
        for (int at = from; at <= text.Length; at++)
        {
            if (at == text.Length || (text[at] == ',' && depth == 0))
            {
                values.Add(text[from..at].Trim());
                from = at + 1;
            }
            else if (text[at] is '[' or '{') depth++;
            else if (text[at] is ']' or '}') depth--;
        }
        return values.Contains("") ? null : new VariedField(text[..equals].Trim(), [.. values.Distinct()]);
    }

    private static void AtLeastOne(System.CommandLine.Parsing.OptionResult result, string name)
    {
        if (result.Tokens is [var token] && int.TryParse(token.Value, CultureInfo.InvariantCulture, out int count) && count < 1) result.AddError($"{name} takes a number from 1.");
    }
}
