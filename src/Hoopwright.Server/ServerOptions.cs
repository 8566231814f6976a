using Hoopwright.Server.Api;
using Hoopwright.Server.Storage;
using Hoopwright.Server.Storage.Postgres;
using Hoopwright.Server.Storage.Sqlite;

namespace Hoopwright.Server;

/// <summary>How the server runs, from the command line and the environment.</summary>
internal sealed record ServerOptions
{
    /// <summary>`--app FOLDER`: where the app was published.</summary>
    public required string App { get; init; }

    /// <summary>`--urls ADDRESS`: where it listens.</summary>
    public required string Urls { get; init; }

    /// <summary>`--data FILE`: the SQLite database.</summary>
    public required string Data { get; init; }

    /// <summary>`HOOPWRIGHT_POSTGRES` in the environment, since it may hold a password: connection string of a PostgreSQL database, instead of the file.</summary>
    public string? Postgres { get; init; }

    /// <summary>`--limits:addressPerSecond NUMBER` and so on.</summary>
    public RateOptions Rates { get; init; } = new();

    public static ServerOptions From(IConfiguration configuration) => new()
    {
        App = configuration["app"] ?? AppFiles.DefaultFolder(),
        Urls = configuration["urls"] ?? "http://localhost:5080",
        Data = configuration["data"] ?? DefaultData(),
        Postgres = configuration["HOOPWRIGHT_POSTGRES"],
        Rates = configuration.GetSection("limits").Get<RateOptions>() ?? new RateOptions(),
    };

    /// <summary>Opens the database and brings it up to date.</summary>
    /// <exception cref="StorageException">It cannot be opened.</exception>
    public async Task<IDatabase> OpenAsync(TimeProvider clock)
    {
        IDatabase database = Postgres is { Length: > 0 } connection ? new PostgresDatabase(connection) : new SqliteDatabase(Data);
        try
        {
            await database.MigrateAsync(clock);
            return database;
        }
        catch
        {
            await database.DisposeAsync();
            throw;
        }
    }

    // Where this user's programs keep their data.
    private static string DefaultData() =>
        Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "hoopwright", "shared-plans.db");
}
