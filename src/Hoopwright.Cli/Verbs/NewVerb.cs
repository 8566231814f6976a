using System.CommandLine;
using System.Text;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Cli.Verbs;

/// <summary>Writes a starter plan.</summary>
internal static class NewVerb
{
    public static Command Command(Terminal terminal)
    {
        var file = new Argument<string>("FILE") { Description = "The plan file to make." };
        var shape = new Option<BowKind?>("--shape") { HelpName = "gothic|offsets|peaked|round", Description = "Which shape of bow; gothic when left out." };
        var metric = new Option<bool>("--metric") { Description = "In metres and millimetres." };
        var overwrite = new Option<bool>("--overwrite") { Description = "Write over a file that is there." };
        var command = new Command("new", """
            Writes a starter plan with comments.

            Examples:
              hoopwright new my-tunnel.json
              hoopwright new --shape round --metric garden.json
            """) { file, shape, metric, overwrite };
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(file);
            if (File.Exists(path) && !parsed.GetValue(overwrite)) throw new FileFault($"{path} is there already; give another name, or --overwrite.");
            UnitSystem units = parsed.GetValue(metric) ? UnitSystem.Metric : UnitSystem.UsCustomary;
            Files.Write(path, Encoding.UTF8.GetBytes(StarterPlan.Write(parsed.GetValue(shape) ?? BowKind.Gothic, units)));
            terminal.Messages.WriteLine($"Wrote {path}. Open it in any text editor, then: hoopwright check {path}");
            return ExitCode.Done;
        });
        return command;
    }
}
