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
            JsonNode whole = JsonNode.Parse(results)!;
            if (At(whole, path) is { } part)
            {
                terminal.Out.WriteLine(part.ToJsonString(JsonText.Indented));
                return ExitCode.Done;
            }
            // A number may be asked for as 'explain' takes it, without the unit at the end of its name.
            if (NamedAlike(whole, path) is { Count: > 0 } alike)
            {
                terminal.Out.WriteLine(alike.ToJsonString(JsonText.Indented));
                return ExitCode.Done;
            }
            using var explainer = new Explainer(results, planned.Rules);
            terminal.Messages.WriteLine($"There is nothing at {path} in the results. Near it: {string.Join(", ", explainer.Near(path))}.");
            return ExitCode.WrongUsage;
        });
        return command;
    }

    private static JsonNode? At(JsonNode whole, string path)
    {
        JsonNode? part = whole;
        foreach (string step in path.Replace("[", ".[", StringComparison.Ordinal).Split('.', StringSplitOptions.RemoveEmptyEntries))
        {
            part = part switch
            {
                JsonObject group => group[step],
                JsonArray list when int.TryParse(step.Trim('[', ']'), out int index) && index >= 0 && index < list.Count => list[index],
                _ => null,
            };
        }
        return part;
    }

    private static JsonObject NamedAlike(JsonNode whole, string path)
    {
        int dot = path.LastIndexOf('.');
        var alike = new JsonObject();
        if ((dot < 0 ? whole : At(whole, path[..dot])) is not JsonObject group) return alike;
        foreach ((string name, JsonNode? value) in group.Where(field => Explainer.IsNamed(field.Key, path[(dot + 1)..]))) alike[name] = value?.DeepClone();
        return alike;
    }
}
