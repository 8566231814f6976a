using System.Globalization;
using Hoopwright.Cli.Verbs;

namespace Hoopwright.Cli.Tests;

/// <summary>Runs the command as a terminal would that nobody watches.</summary>
internal static class CommandLine
{
    internal static (int Code, string Output, string Messages) Run(params string[] args) => Run([], args);

    internal static (int Code, string Output, string Messages) Run(byte[] input, string[] args)
    {
        using StringWriter output = new(CultureInfo.InvariantCulture), messages = new(CultureInfo.InvariantCulture);
        int code = CommandTree.Run(args, new Terminal { Out = output, Messages = messages, Input = () => new MemoryStream(input), Colour = false, Interactive = false });
        return (code, output.ToString(), messages.ToString());
    }
}
