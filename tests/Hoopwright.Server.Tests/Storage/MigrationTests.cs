using System.Text.RegularExpressions;
using Hoopwright.Server.Storage;
using Hoopwright.Server.Storage.Postgres;
using Hoopwright.Server.Storage.Sqlite;

namespace Hoopwright.Server.Tests.Storage;

public sealed partial class MigrationTests(PostgresServer postgres)
{
    [Theory, OnBoth]
    public async Task Opening_again_changes_nothing_and_a_database_of_a_newer_program_is_refused(StoredIn kind)
    {
        using TestFolder folder = new();
        string schema = kind == StoredIn.Postgres ? await postgres.NewSchemaAsync() : "";
        for (int time = 0; time < 2; time++)
        {
            await using IDatabase database = Open();
            await database.MigrateAsync(new TestClock());
            Assert.Equal(1, await database.ReadAsync(session => session.GetAsync<long>("SELECT count(*) FROM migration")));
            Assert.Equal(1, await database.ReadAsync(session => session.GetAsync<long>("SELECT count(*) FROM store")));
        }

        await using IDatabase newer = Open();
        await newer.WriteAsync(session => session.ExecuteAsync("INSERT INTO migration (number, name, run_at) VALUES (9999, 'later', 0)"));
        StorageException refused = await Assert.ThrowsAsync<StorageException>(() => newer.MigrateAsync(new TestClock()));
        Assert.Contains("newer", refused.Message, StringComparison.Ordinal);

        IDatabase Open() => kind == StoredIn.Sqlite ? new SqliteDatabase(folder.Database) : new PostgresDatabase(schema);
    }

    [Fact]
    public void Both_databases_have_the_same_migrations_with_the_same_tables_and_columns()
    {
        var sqlite = Migrations.Of("Sqlite");
        var postgresFiles = Migrations.Of("Postgres");
        Assert.Equal(sqlite.Select(file => (file.Number, file.Name)), postgresFiles.Select(file => (file.Number, file.Name)));
        Assert.Equal(Enumerable.Range(1, sqlite.Count).Select(number => (long)number), sqlite.Select(file => file.Number));
        Assert.Equal(sqlite.Select(file => Names(file.Sql)), postgresFiles.Select(file => Names(file.Sql)));
        Assert.All(sqlite, file => Assert.Contains("share", Names(file.Sql), StringComparison.Ordinal));
    }

    private static string Names(string sql) => string.Join(' ', Name().Matches(sql).Select(match => match.Groups["name"].Value));

    [GeneratedRegex(@"(?:^  |CREATE \w+ )(?<name>[a-z_]+)", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Name();
}
