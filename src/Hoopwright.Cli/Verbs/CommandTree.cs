using System.CommandLine;

namespace Hoopwright.Cli.Verbs;

/// <summary>The verbs and what they have in common.</summary>
internal static class CommandTree
{
    /// <summary>Runs one command line.</summary>
    public static int Run(string[] args, Terminal terminal)
    {
        try
        {
            ParseResult parsed = Root(terminal).Parse(args);
            if (parsed.Errors.Count > 0)
            {
                foreach (var error in parsed.Errors) terminal.Messages.WriteLine(error.Message);
                terminal.Messages.WriteLine("See 'hoopwright --help', or a verb's own: 'hoopwright packet --help'.");
                return ExitCode.WrongUsage;
            }
            return parsed.Invoke(new InvocationConfiguration { Output = terminal.Out, Error = terminal.Messages, EnableDefaultExceptionHandler = false });
        }
        catch (FileFault fault)
        {
            terminal.Messages.WriteLine(fault.Message);
            return ExitCode.InputErrors;
        }
#pragma warning disable CA1031 // A fault of ours must end in a request to report it, not in a trace.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            terminal.Messages.WriteLine($"This is a fault of the program, not of your plan: {fault.GetType().Name}: {fault.Message}");
            terminal.Messages.WriteLine("Please report it, with the plan if you can share it. Your plan file was not changed.");
            return ExitCode.Fault;
        }
    }

    private static RootCommand Root(Terminal terminal)
    {
        var root = new RootCommand("""
            Plans a film-covered growing tunnel from bare ground to the next re-cover.

            Examples:
              hoopwright new my-tunnel.json
              hoopwright check my-tunnel.json
              hoopwright packet my-tunnel.json --out packet
            """);
        root.Subcommands.Add(NewVerb.Command(terminal));
        root.Subcommands.Add(CheckVerb.Command(terminal));
        root.Subcommands.Add(ResultsVerb.Command(terminal));
        root.Subcommands.Add(ExplainVerb.Command(terminal));
        root.Subcommands.Add(PacketVerb.Command(terminal));
        root.Subcommands.Add(SweepVerb.Command(terminal));
        root.Subcommands.Add(CompareVerb.Command(terminal));
        root.Subcommands.Add(MergeVerb.Command(terminal));
        root.Subcommands.Add(DaysVerb.Command(terminal));
        root.Subcommands.Add(InsideVerb.Command(terminal));
        root.Subcommands.Add(UpkeepVerb.Command(terminal));
        root.Subcommands.Add(WeatherVerb.Command(terminal));
        root.Subcommands.Add(FrameVerb.Command(terminal));
        root.Subcommands.Add(CutVerb.Command(terminal));
        root.Subcommands.Add(ScheduleVerb.Command(terminal));
        root.Subcommands.Add(SchemaVerb.Command(terminal));
        return root;
    }
}
