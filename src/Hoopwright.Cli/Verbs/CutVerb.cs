using System.CommandLine;
using System.Diagnostics;
using System.Text;
using Hoopwright.Cutting;
using Hoopwright.Diagnostics;

namespace Hoopwright.Cli.Verbs;

/// <summary>Cuts a list of pieces, given as a file, from bars at the least cost.</summary>
internal static class CutVerb
{
    public static Command Command(Terminal terminal)
    {
        var file = new Argument<string>("JOB") { Description = "The job file; - reads standard input." };
        var asJson = new Option<bool>("--json") { Description = "For machines: one JSON document on standard output." };
        Option<double?> limit = LimitOption.Make();
        var earlier = new Option<string?>("--earlier") { Description = "An earlier answer (--json) with 'done' and 'bad' added to its patterns: plans the rest, changing as little as possible.", HelpName = "FILE" };
        var command = new Command("cut", """
            Cuts a list of pieces from boards, tubes or anything else that comes in lengths at the least cost, and says whether that
            is proven. The format is in docs/cut-job.md.

            Examples:
              hoopwright cut examples/cut-job.json
              hoopwright cut my-job.json --limit 10 --json > answer.json
              hoopwright cut my-job.json --earlier answer.json
            """) { file, asJson, limit, earlier };
        command.SetAction(parsed => Cut(
            Files.Read(parsed.GetRequiredValue(file), terminal), parsed.GetValue(earlier) is { } answer ? Files.Read(answer, terminal) : null,
            parsed.GetValue(asJson), parsed.GetValue(limit), terminal));
        return command;
    }

    private static int Cut(byte[] file, byte[]? earlier, bool asJson, double? limitSeconds, Terminal terminal)
    {
        var clock = Stopwatch.StartNew();
        CutEffort effort = limitSeconds is null ? CutEffort.Usual : new CutEffort(long.MaxValue);
        CutFileAnswer answer = CutFile.Solve(file, effort, () => terminal.Stop.IsCancellationRequested || clock.Elapsed.TotalSeconds > limitSeconds, earlier is null ? default(ReadOnlyMemory<byte>?) : earlier.AsMemory());
        if (asJson)
        {
            terminal.Out.Write(Encoding.UTF8.GetString(CutFileJson.Of(answer, clock.Elapsed)));
        }
        else
        {
            terminal.Out.Write(CutFileSheet.Of(answer));
            DiagnosticPrinter.Print(terminal.Messages, terminal, answer.Diagnostics, reading: null);
        }
        return answer.Diagnostics.Any(each => each.Severity == Severity.Error) ? ExitCode.InputErrors : ExitCode.Done;
    }
}
