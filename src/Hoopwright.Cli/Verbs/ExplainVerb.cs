using System.CommandLine;
using Hoopwright.Packets;
using Hoopwright.Plans;

namespace Hoopwright.Cli.Verbs;

/// <summary>Says why a result is what it is.</summary>
internal static class ExplainVerb
{
    public static Command Command(Terminal terminal)
    {
        var input = new PlanInput();
        var path = new Argument<string>("PATH") { Description = "The result, such as frame.bow.filmLine or ends.front.posts[0].topPoint; or a place in the plan." };
        var command = new Command("explain", """
            Says why a result is what it is: inputs, formula, source, and the assumptions it rests on.

            Examples:
              hoopwright explain my-tunnel.json frame.bow.filmLine
              hoopwright explain my-tunnel.json ground.holes[0].volume
              hoopwright explain my-tunnel.json frame.bowSpacing
            """) { input.File, path, input.Prices, input.Json };
        command.SetAction(parsed =>
        {
            (PlanReading reading, PlannedTunnel planned) = input.Work(parsed, terminal);
            if (planned.Tunnel is null) return PlanInput.Refuse(terminal, reading, planned);
            using var explainer = Explainer.Of(planned);
            string wanted = parsed.GetRequiredValue(path);
            if (explainer.Explain(wanted) is not { } explanation)
            {
                terminal.Messages.WriteLine($"There is no result {wanted}. Near it:");
                foreach (string near in explainer.Near(wanted)) terminal.Messages.WriteLine("  " + near.Replace("[*]", "[0]", StringComparison.Ordinal));
                return ExitCode.WrongUsage;
            }
            if (parsed.GetValue(input.Json)) terminal.Out.WriteLine(ExplanationJson.Of(explanation).ToJsonString(JsonText.Indented));
            else Print(terminal.Out, explanation);
            return ExitCode.Done;
        });
        return command;
    }

    private static void Print(TextWriter to, Explanation explanation)
    {
        to.WriteLine($"{explanation.Path} = {explanation.Value}");
        to.WriteLine($"  how      {explanation.Text}");
        to.WriteLine($"  source   {explanation.Source}");
        foreach (ExplainedInput each in explanation.Inputs) to.WriteLine($"  from     {each.Path} = {each.Value}");
        foreach (RuleUsed rule in explanation.Rules)
            to.WriteLine($"  {(rule.Given ? "given   " : rule.IsAssumption ? "assumed " : "usual   ")} {rule.Path} = {rule.Text}{(rule.Given ? "" : $"  ({rule.Source})")}");
    }
}
