using System.CommandLine;
using System.Diagnostics;
using System.Text;
using Hoopwright.Diagnostics;
using Hoopwright.Frames;

namespace Hoopwright.Cli.Verbs;

/// <summary>Solves a beam frame given as a file.</summary>
internal static class FrameVerb
{
    public static Command Command(Terminal terminal)
    {
        var file = new Argument<string>("MODEL") { Description = "The model file; - reads standard input." };
        var asJson = new Option<bool>("--json") { Description = "For machines: one JSON document on standard output." };
        var command = new Command("frame", """
            Solves a frame of beams: linear, second order, or buckling. For planning and comparison; local codes and a licensed
            engineer decide. The format is in docs/frame-file.md.

            Examples:
              hoopwright frame examples/frame-portal.json
              hoopwright frame my-frame.json --json > answer.json
            """) { file, asJson };
        command.SetAction(parsed => Solve(Files.Read(parsed.GetRequiredValue(file), terminal), parsed.GetValue(asJson), terminal));
        return command;
    }

    private static int Solve(byte[] file, bool asJson, Terminal terminal)
    {
        var clock = Stopwatch.StartNew();
        FrameAnswer answer = FrameFile.Solve(file);
        TimeSpan took = clock.Elapsed;
        if (asJson)
        {
            terminal.Out.Write(Encoding.UTF8.GetString(FrameAnswerText.Json(answer, took)));
        }
        else
        {
            terminal.Out.Write(FrameAnswerText.Table(answer));
            DiagnosticPrinter.Print(terminal.Messages, terminal, answer.Diagnostics, reading: null);
        }
        return answer.Diagnostics.Any(each => each.Severity == Severity.Error) ? ExitCode.InputErrors : ExitCode.Done;
    }
}
