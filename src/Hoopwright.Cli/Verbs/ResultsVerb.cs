using System.CommandLine;
using System.Text;
using System.Text.Json.Nodes;
using Hoopwright.Packets;
using Hoopwright.Plans;

namespace Hoopwright.Cli.Verbs;

/// <summary>Prints every computed number.</summary>
internal static class ResultsVerb
{
    public static Command Command(Terminal terminal)
    {
        var input = new PlanInput();
        var only = new Option<string?>("--only") { Description = "Only the part at this path, such as frame.bow or orders." };
        var command = new Command("results", """
            Prints every computed number as JSON: SI values with the unit in the name, and texts as the tape shows them.

            Examples:
              hoopwright results my-tunnel.json
              hoopwright results my-tunnel.json --only frame.bow
            """) { input.File, input.Prices, input.Json, only };
        command.SetAction(parsed =>
        {
            (PlanReading reading, PlannedTunnel planned) = input.Work(parsed, terminal);
            if (planned.Tunnel is null) return PlanInput.Refuse(terminal, reading, planned);
            byte[] results = ResultsJson.Write(planned);
            if (parsed.GetValue(only) is not { } path)
            {
                terminal.Out.Write(Encoding.UTF8.GetString(results));
                return ExitCode.Done;
            }
            JsonNode? part = JsonNode.Parse(results);
            foreach (string step in path.Replace("[", ".[", StringComparison.Ordinal).Split('.', StringSplitOptions.RemoveEmptyEntries))
            {
                part = part switch
                {
                    JsonObject group => group[step],
                    JsonArray list when int.TryParse(step.Trim('[', ']'), out int index) && index >= 0 && index < list.Count => list[index],
                    _ => null,
                };
                if (part is null)
                {
                    terminal.Messages.WriteLine($"There is nothing at {path} in the results.");
                    return ExitCode.WrongUsage;
                }
            }
            terminal.Out.WriteLine(part!.ToJsonString(JsonText.Indented));
            return ExitCode.Done;
        });
        return command;
    }
}
