using Hoopwright.Server.Storage;

namespace Hoopwright.Server.Commands;

/// <summary>Runs the server until it is stopped.</summary>
internal static class ServeCommand
{
    public static async Task<int> RunAsync(string[] args)
    {
        ServerOptions options = ServerOptions.From(CommandLine.Read(args));
        if (!AppFiles.IsComplete(options.App))
        {
            Console.Error.WriteLine($"The app is not in {options.App}. Build the server without -p:SkipApp=true, or say where the app was published: --app FOLDER.");
            return 1;
        }
        try
        {
            await using IDatabase database = await options.OpenAsync(TimeProvider.System);
            await using WebApplication app = ServerApp.Create(options, database, TimeProvider.System);
            app.Lifetime.ApplicationStarted.Register(() => Console.WriteLine($"Hoopwright is at {app.Urls.First()} — the example tunnel is one click away. Stop with Ctrl+C."));
            await app.RunAsync();
            return 0;
        }
        catch (StorageException fault)
        {
            Console.Error.WriteLine($"The server could not start: {fault.Message} Shared plans are kept in {(options.Postgres is null ? options.Data : "the PostgreSQL database of HOOPWRIGHT_POSTGRES")}; choose another file with --data FILE.");
            return 1;
        }
        catch (IOException fault)
        {
            Console.Error.WriteLine($"The server could not start: {fault.Message} Another program may be using the address; choose another with --urls http://localhost:5081.");
            return 1;
        }
    }
}
