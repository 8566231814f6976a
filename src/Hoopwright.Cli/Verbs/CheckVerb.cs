using System.CommandLine;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Strength;

namespace Hoopwright.Cli.Verbs;

/// <summary>Lists everything that was found in a plan.</summary>
internal static class CheckVerb
{
    public static Command Command(Terminal terminal)
    {
        var input = new PlanInput();
        var command = new Command("check", """
            Checks a plan: errors, what to look at again, and what was assumed.

            Examples:
              hoopwright check my-tunnel.json
              hoopwright check my-tunnel.json --json
            """) { input.File, input.Prices, input.Json };
        command.SetAction(parsed =>
        {
            (PlanReading reading, PlannedTunnel planned) = input.Work(parsed, terminal);
            if (parsed.GetValue(input.Json))
            {
                terminal.Out.Write(DiagnosticPrinter.Json(planned.Diagnostics));
            }
            else
            {
                DiagnosticPrinter.Print(terminal.Out, terminal, planned.Diagnostics, reading);
                terminal.Out.WriteLine(DiagnosticPrinter.Count(planned.Diagnostics));
                if (planned.Strength?.Verdict is StrengthVerdict.DoesNotStand or StrengthVerdict.Marginal)
                    terminal.Out.WriteLine($"What each of the usual changes would do, and cost: hoopwright sweep {parsed.GetValue(input.File)} --changes");
            }
            return planned.Diagnostics.Any(each => each.Severity == Severity.Error) ? ExitCode.InputErrors : ExitCode.Done;
        });
        return command;
    }
}
