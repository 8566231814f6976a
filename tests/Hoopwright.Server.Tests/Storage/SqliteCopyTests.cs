using Hoopwright.Server.Storage;
using Hoopwright.Server.Storage.Sqlite;
using Hoopwright.Sharing;

namespace Hoopwright.Server.Tests.Storage;

public sealed class SqliteCopyTests(PostgresServer postgres)
{
    [Fact]
    public async Task A_backup_made_while_devices_push_holds_all_that_was_confirmed_before_it_began()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        using TestFolder folder = new();
        SharedPlanClient keeper = await host.ShareAsync();
        for (int number = 0; number < 50; number++) await keeper.PushAsync(Entries.Push(Entries.Measured(number)));
        using CancellationTokenSource enough = new();
        Task pushing = Task.Run(async () =>
        {
            for (int number = 50; !enough.IsCancellationRequested; number++) await keeper.PushAsync(Entries.Push(Entries.Measured(number)));
        });

        Assert.Equal(1, SqliteCopy.Backup(host.DatabaseFile, folder.At("backup.db")));
        await enough.CancelAsync();
        await pushing;

        Assert.False(File.Exists(folder.At("backup.db-wal")));
        await using SqliteDatabase backup = new(folder.At("backup.db"));
        IReadOnlyList<string> ids = await backup.ReadAsync(session => session.ListAsync<string>("SELECT id FROM entry ORDER BY cursor"));
        Assert.True(ids.Count >= 50, $"The backup holds {ids.Count} entries.");
        Assert.Equal(Enumerable.Range(0, ids.Count).Select(Entries.Id), ids);
    }

    [Fact]
    public async Task Restoring_while_the_server_runs_brings_back_what_was_and_tells_devices_to_send_the_rest_again()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        using TestFolder folder = new();
        SharedPlanClient keeper = await host.ShareAsync();
        await keeper.PushAsync(Entries.Push(Entries.Measured(1)));
        SqliteCopy.Backup(host.DatabaseFile, folder.At("backup.db"));
        await keeper.PushAsync(Entries.Push(Entries.Measured(2)));
        PlanState before = await keeper.GetAsync();

        Assert.Equal(1, await SqliteCopy.RestoreAsync(folder.At("backup.db"), host.DatabaseFile, host.Clock));

        PlanState after = await keeper.GetAsync(before.Cursor, before.Version);
        Assert.NotEqual(before.Epoch, after.Epoch);
        Assert.True(after.Cursor < before.Cursor, "The cursor follows what the server has.");
        // A device that sees a new epoch starts over, and pushes what it has.
        await keeper.PushAsync(Entries.Push(Entries.Measured(1), Entries.Measured(2)));
        Assert.Equal([Entries.Id(1), Entries.Id(2)], (await keeper.GetAsync()).Entries.Select(Entries.IdOf));
        Assert.Equal("ok", await host.Database.ReadAsync(session => session.GetAsync<string>("PRAGMA integrity_check")));
        Assert.False(File.Exists(host.DatabaseFile + ".restoring"));
    }

    [Fact]
    public async Task A_backup_never_writes_over_a_file_and_a_restore_takes_only_a_backup()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        using TestFolder folder = new();
        SharedPlanClient keeper = await host.ShareAsync();
        await File.WriteAllTextAsync(folder.At("there.txt"), "mine");

        Assert.Contains("exists already", Assert.Throws<StorageException>(() => SqliteCopy.Backup(host.DatabaseFile, folder.At("there.txt"))).Message, StringComparison.Ordinal);
        Assert.Contains("There is no database", Assert.Throws<StorageException>(() => SqliteCopy.Backup(folder.At("none.db"), folder.At("backup.db"))).Message, StringComparison.Ordinal);
        await Assert.ThrowsAsync<StorageException>(() => SqliteCopy.RestoreAsync(folder.At("there.txt"), host.DatabaseFile, host.Clock));
        await Assert.ThrowsAsync<StorageException>(() => SqliteCopy.RestoreAsync(folder.At("none.db"), host.DatabaseFile, host.Clock));

        Assert.Equal("mine", await File.ReadAllTextAsync(folder.At("there.txt")));
        await keeper.GetAsync();
    }
}
