using System.CommandLine;
using System.Text;
using System.Text.Json;
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
        var only = new Option<string?>("--only") { HelpName = "PATH", Description = "Only the part at this path, such as frame.bow or orders." };
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
            using JsonDocument whole = JsonDocument.Parse(results);
            if (ResultPath.Find(whole.RootElement, path) is { ValueKind: not JsonValueKind.Null } part)
            {
                terminal.Out.WriteLine(JsonSerializer.SerializeToNode(part)!.ToJsonString(JsonText.Indented));
                return ExitCode.Done;
            }
            // A number may be asked for as 'explain' takes it, without the unit at the end of its name.
            if (NamedAlike(whole.RootElement, path) is { Count: > 0 } alike)
            {
                terminal.Out.WriteLine(alike.ToJsonString(JsonText.Indented));
                return ExitCode.Done;
            }
            using var explainer = Explainer.Of(planned);
            terminal.Messages.WriteLine($"There is nothing at {path} in the results. Near it: {string.Join(", ", explainer.Near(path))}.");
            return ExitCode.WrongUsage;
        });
        return command;
    }

    private static JsonObject NamedAlike(JsonElement whole, string path)
    {
        int dot = path.LastIndexOf('.');
        var alike = new JsonObject();
        if ((dot < 0 ? whole : ResultPath.Find(whole, path[..dot])) is not { ValueKind: JsonValueKind.Object } group) return alike;
        foreach (JsonProperty field in group.EnumerateObject().Where(field => Explainer.IsNamed(field.Name, path[(dot + 1)..]))) alike[field.Name] = JsonSerializer.SerializeToNode(field.Value);
        return alike;
    }
}
