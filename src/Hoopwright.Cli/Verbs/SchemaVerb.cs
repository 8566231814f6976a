using System.CommandLine;
using System.Text;
using Hoopwright.Plans;

namespace Hoopwright.Cli.Verbs;

/// <summary>Prints the JSON Schema of the plan.</summary>
internal static class SchemaVerb
{
    public static Command Command(Terminal terminal)
    {
        var command = new Command("schema", """
            Prints the JSON Schema of the plan, by which editors complete and check it.

            Example:
              hoopwright schema > hoopwright.schema.json
            """);
        command.SetAction(_ =>
        {
            terminal.Out.Write(Encoding.UTF8.GetString(PlanSchema.Write()));
            return ExitCode.Done;
        });
        return command;
    }
}
