using System.CommandLine;
using System.Diagnostics;
using System.Text;
using Hoopwright.Diagnostics;
using Hoopwright.Scheduling;

namespace Hoopwright.Cli.Verbs;

/// <summary>Plans a list of activities, given as a file, so that it ends as early as can be.</summary>
internal static class ScheduleVerb
{
    public static Command Command(Terminal terminal)
    {
        var file = new Argument<string>("JOB") { Description = "The job file; - reads standard input." };
        var asJson = new Option<bool>("--json") { Description = "For machines: one JSON document on standard output." };
        Option<double?> limit = LimitOption.Make();
        var command = new Command("schedule", """
            Plans a list of activities with crews and tools, working days and good days, so that it ends as early as can be, and says
            whether that is proven. The format is in docs/schedule-job.md.

            Examples:
              hoopwright schedule examples/schedule-job.json
              hoopwright schedule my-job.json --limit 10 --json > answer.json
            """) { file, asJson, limit };
        command.SetAction(parsed => Plan(Files.Read(parsed.GetRequiredValue(file), terminal), parsed.GetValue(asJson), parsed.GetValue(limit), terminal));
        return command;
    }

    private static int Plan(byte[] file, bool asJson, double? limitSeconds, Terminal terminal)
    {
        var clock = Stopwatch.StartNew();
        ScheduleEffort effort = limitSeconds is null ? ScheduleEffort.Usual : new ScheduleEffort(long.MaxValue);
        ScheduleFileAnswer answer = ScheduleFile.Solve(file, effort, () => terminal.Stop.IsCancellationRequested || clock.Elapsed.TotalSeconds > limitSeconds);
        if (asJson)
        {
            terminal.Out.Write(Encoding.UTF8.GetString(ScheduleFileText.Json(answer, clock.Elapsed)));
        }
        else
        {
            terminal.Out.Write(ScheduleFileText.Table(answer));
            DiagnosticPrinter.Print(terminal.Messages, terminal, answer.Diagnostics, reading: null);
        }
        return answer.Diagnostics.Any(each => each.Severity == Severity.Error) ? ExitCode.InputErrors : ExitCode.Done;
    }
}
