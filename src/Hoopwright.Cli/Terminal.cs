namespace Hoopwright.Cli;

/// <summary>Where the program reads and writes. Results go to one stream, messages to the other, so that results can be piped.</summary>
internal sealed class Terminal
{
    public required TextWriter Out { get; init; }

    public required TextWriter Messages { get; init; }

    public required Func<Stream> Input { get; init; }

    /// <summary>True when messages may be coloured.</summary>
    public required bool Colour { get; init; }

    /// <summary>True when progress may be shown.</summary>
    public required bool Interactive { get; init; }

    /// <summary>Asks long work to stop; Ctrl-C is heard besides it by the verbs that can stop in the middle.</summary>
    public CancellationToken Stop { get; init; }

    public static Terminal OfProcess()
    {
        // NO_COLOR: any value but the empty one turns colour off (no-color.org).
        bool noColour = !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));
        return new Terminal
        {
            Out = Console.Out,
            Messages = Console.Error,
            Input = Console.OpenStandardInput,
            Colour = !noColour && !Console.IsErrorRedirected && Environment.GetEnvironmentVariable("TERM") != "dumb",
            Interactive = !Console.IsErrorRedirected,
        };
    }

    /// <summary>A word in a colour where colour is on.</summary>
    public string Paint(string text, TerminalColour colour) => Colour ? $"\u001b[{(int)colour}m{text}\u001b[0m" : text;

    /// <summary>Says what is being done; only where someone watches.</summary>
    public void Progress(string text)
    {
        if (Interactive) Messages.WriteLine(text);
    }
}

/// <summary>Colours of messages, as ANSI codes.</summary>
internal enum TerminalColour
{
    Red = 31,
    Green = 32,
    Yellow = 33,
    Cyan = 36,
}
