using Hoopwright.Server.Storage;

namespace Hoopwright.Server.Commands;

/// <summary>Does something with the SQLite database and says how it went.</summary>
internal static class DatabaseCommand
{
    public static async Task<int> RunAsync(string[] args, Func<ServerOptions, Task<string>> work)
    {
        ServerOptions options = ServerOptions.From(CommandLine.Read(args));
        if (options.Postgres is { Length: > 0 })
        {
            await Console.Error.WriteLineAsync("The plans are in PostgreSQL: use its own pg_dump and pg_restore, as docs/sharing.md shows.");
            return 1;
        }
        try
        {
            await Console.Out.WriteLineAsync(await work(options));
            return 0;
        }
        catch (StorageException fault)
        {
            await Console.Error.WriteLineAsync(fault.Message);
            return 1;
        }
    }

    /// <summary>Counts plans.</summary>
    public static string Plans(long count) => count == 1 ? "1 shared plan is" : $"{count} shared plans are";
}
