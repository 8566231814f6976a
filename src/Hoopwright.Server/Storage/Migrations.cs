using System.Reflection;

namespace Hoopwright.Server.Storage;

/// <summary>The numbered SQL files beside the databases. They are built in, run once each in order, and never changed afterwards.</summary>
internal static class Migrations
{
    /// <summary>The files of one kind of database.</summary>
    /// <param name="folder">Sqlite or Postgres.</param>
    public static IReadOnlyList<(long Number, string Name, string Sql)> Of(string folder)
    {
        Assembly assembly = typeof(Migrations).Assembly;
        string prefix = $"migrations.{folder}.";
        return [.. assembly.GetManifestResourceNames().Where(name => name.StartsWith(prefix, StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(name =>
        {
            using StreamReader reader = new(assembly.GetManifestResourceStream(name)!);
            string file = name[prefix.Length..];
            return (long.Parse(file[..4], System.Globalization.CultureInfo.InvariantCulture), file, reader.ReadToEnd());
        })];
    }

    /// <summary>Runs those that this database has not had, within one transaction.</summary>
    /// <exception cref="StorageException">A newer program has been at this database.</exception>
    public static async Task RunAsync(Session session, string folder, TimeProvider clock)
    {
        await session.ExecuteAsync("CREATE TABLE IF NOT EXISTS migration (number BIGINT NOT NULL PRIMARY KEY, name TEXT NOT NULL, run_at BIGINT NOT NULL)");
        long had = await session.GetAsync<long>("SELECT coalesce(max(number), 0) FROM migration");
        IReadOnlyList<(long Number, string Name, string Sql)> all = Of(folder);
        if (had > all[^1].Number)
            throw new StorageException(StorageFault.Unusable, $"The database was made by a newer version of this program (its tables are number {had}, this program knows {all[^1].Number}). Use the newer program.");
        foreach ((long number, string name, string sql) in all.Where(each => each.Number > had))
        {
            await session.ExecuteAsync(sql);
            await session.ExecuteAsync("INSERT INTO migration (number, name, run_at) VALUES (@number, @name, @now)", new { number, name, now = clock.GetUtcNow().ToUnixTimeMilliseconds() });
        }
        await session.ExecuteAsync("INSERT INTO store (name, value) VALUES ('epoch', @epoch) ON CONFLICT (name) DO NOTHING", new { epoch = Token.NewId() });
    }
}
