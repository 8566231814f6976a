namespace Hoopwright.Server.Commands;

/// <summary>Says what can be typed.</summary>
internal static class HelpCommand
{
    private const string Text = """
        Serves the app and keeps shared plans.

          Hoopwright.Server [--urls http://localhost:5080] [--app FOLDER] [--data FILE]
          Hoopwright.Server backup FILE [--data FILE]     copies the shared plans to a new file, also while the server runs
          Hoopwright.Server restore FILE [--data FILE]    puts such a copy in their place, also while the server runs

        --data is the SQLite database. For PostgreSQL, put a connection string into HOOPWRIGHT_POSTGRES.
        Limits: --limits:addressPerSecond 100 --limits:linkPerSecond 50 --limits:sharesPerHour 60 --limits:waitingPerLink 100
        More is in docs/sharing.md.
        """;

    /// <returns>0 where help was asked for, 2 where a command lacks its file.</returns>
    public static int Run(string word)
    {
        if (word is not ("backup" or "restore"))
        {
            Console.WriteLine(Text);
            return 0;
        }
        Console.Error.WriteLine($"{word} needs the name of a file.\n\n{Text}");
        return 2;
    }
}
