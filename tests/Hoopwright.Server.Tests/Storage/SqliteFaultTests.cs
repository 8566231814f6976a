using Hoopwright.Server.Storage;
using Hoopwright.Server.Storage.Sqlite;
using Hoopwright.Sharing;

namespace Hoopwright.Server.Tests.Storage;

public sealed class SqliteFaultTests
{
    [Fact]
    public async Task A_full_disk_is_told_and_loses_nothing_that_was_confirmed()
    {
        await using Host host = await StartAsync(new TestFolder());
        SharedPlanClient keeper = await host.ShareAsync();
        // SQLite's own limit gives the very result that a full disk gives (SQLITE_FULL).
        await host.Database.WriteAsync(session => session.ExecuteAsync("PRAGMA max_page_count = 60"));
        List<string> confirmed = [];
        SharingException? full = null;
        for (int number = 0; full is null && number < 1_000; number++)
        {
            try
            {
                EntryPushAnswer answer = await keeper.PushAsync(Entries.Push(Entries.Measured(number, new string('x', 5_000))));
                confirmed.Add(answer.Receipts.Single().Id!);
            }
            catch (SharingException refused)
            {
                full = refused;
            }
        }

        Assert.Equal(("storage-full", 507), (full!.Problem.Code, full.Problem.Status));
        Assert.Contains("Nothing that was confirmed is lost", full.Problem.Detail, StringComparison.Ordinal);
        Assert.NotEmpty(confirmed);
        Assert.Equal(confirmed, await AllAsync(keeper));

        // With room again, it goes on.
        await host.Database.WriteAsync(session => session.ExecuteAsync("PRAGMA max_page_count = 1000000"));
        await keeper.PushAsync(Entries.Push(Entries.Measured(confirmed.Count, new string('x', 5_000))));
        confirmed.Add(Entries.Id(confirmed.Count));
        Assert.Equal(confirmed, await AllAsync(keeper));
        Assert.Equal("ok", await host.Database.ReadAsync(session => session.GetAsync<string>("PRAGMA integrity_check")));
    }

    [Fact]
    public async Task A_disk_that_comes_to_be_read_only_is_told_and_can_still_be_read()
    {
        await using Host host = await StartAsync(new TestFolder());
        SharedPlanClient keeper = await host.ShareAsync();
        await keeper.PushAsync(Entries.Push(Entries.Measured(1)));
        // SQLite's own switch gives the very result that a disk gives that was made read-only (SQLITE_READONLY).
        await host.Database.WriteAsync(session => session.ExecuteAsync("PRAGMA query_only = ON"));

        SharingException refused = await Assert.ThrowsAsync<SharingException>(() => keeper.PushAsync(Entries.Push(Entries.Measured(2))));

        Assert.Equal(("storage-read-only", 503), (refused.Problem.Code, refused.Problem.Status));
        Assert.Equal([Entries.Id(1)], await AllAsync(keeper));
    }

    [Fact]
    public async Task One_write_that_fails_takes_none_of_those_beside_it_with_it()
    {
        using TestFolder folder = new();
        await using SqliteDatabase database = new(folder.Database);
        await database.MigrateAsync(new TestClock());

        // Many at once, so that they share transactions; every third throws after it wrote.
        bool[] kept = await Task.WhenAll(Enumerable.Range(0, 300).Select(async number =>
        {
            try
            {
                return await database.WriteAsync(async session =>
                {
                    await session.ExecuteAsync("INSERT INTO store (name, value) VALUES (@name, '')", new { name = $"n{number}" });
                    return number % 3 == 0 ? throw new InvalidOperationException("invented") : true;
                });
            }
            catch (InvalidOperationException)
            {
                return false;
            }
        }));

        IReadOnlyList<string> names = await database.ReadAsync(session => session.ListAsync<string>("SELECT name FROM store WHERE name LIKE 'n%'"));
        Assert.Equal(Enumerable.Range(0, 300).Where(number => kept[number]).Select(number => $"n{number}").Order(StringComparer.Ordinal), names.Order(StringComparer.Ordinal));
        Assert.Equal(200, names.Count);
    }

    [Fact]
    public void A_file_that_is_no_database_is_refused_in_words()
    {
        using TestFolder folder = new();
        File.WriteAllText(folder.Database, new string('x', 5_000));
        StorageException refused = Assert.Throws<StorageException>(() => new SqliteDatabase(folder.Database));
        Assert.Equal(StorageFault.Unusable, refused.Fault);
    }

    [Fact]
    public void A_place_that_cannot_be_is_refused_in_words()
    {
        using TestFolder folder = new();
        File.WriteAllText(folder.At("file"), "");
        StorageException refused = Assert.Throws<StorageException>(() => new SqliteDatabase(folder.At("file/shared.db")));
        Assert.Contains(folder.At("file/shared.db"), refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_confirmed_was_flushed_to_the_disk()
    {
        using TestFolder folder = new();
        await using SqliteDatabase database = new(folder.Database);
        await database.MigrateAsync(new TestClock());
        (long synchronous, string journal) = await database.WriteAsync(async session => (await session.GetAsync<long>("PRAGMA synchronous"), await session.GetAsync<string>("PRAGMA journal_mode")));
        // 2 is FULL: the log is flushed at each commit (SQLite documentation, PRAGMA synchronous).
        Assert.Equal((2, "wal"), (synchronous, journal));
    }

    private static async Task<Host> StartAsync(TestFolder folder)
    {
        TestClock clock = new();
        SqliteDatabase database = new(folder.Database);
        await database.MigrateAsync(clock);
        return await Host.StartAsync(database, folder, clock);
    }

    private static async Task<string[]> AllAsync(SharedPlanClient client)
    {
        List<string> ids = [];
        PlanState state;
        long cursor = 0;
        do
        {
            state = await client.GetAsync(cursor, 1);
            ids.AddRange(state.Entries.Select(Entries.IdOf));
            cursor = state.Cursor;
        }
        while (state.More);
        return [.. ids];
    }
}
