using Hoopwright.Server.Storage;
using Hoopwright.Server.Storage.Postgres;
using Hoopwright.Sharing;

namespace Hoopwright.Server.Tests.Storage;

public sealed class PostgresFaultTests(PostgresServer postgres)
{
    [Fact]
    public async Task A_database_that_may_only_be_read_is_told_and_can_still_be_read()
    {
        string schema = await postgres.NewSchemaAsync(), key;
        TestClock clock = new();
        await using (PostgresDatabase writable = new(schema))
        {
            await writable.MigrateAsync(clock);
            key = await new ShareStore(writable, clock).CreateAsync(Host.Plan, "Ada");
        }
        await using Host host = await Host.StartAsync(new PostgresDatabase(schema + ";Options=-c default_transaction_read_only=on"), new TestFolder(), clock);

        SharingException refused = await Assert.ThrowsAsync<SharingException>(() => host.With(key).PushAsync(Entries.Push(Entries.Measured(1))));

        Assert.Equal(("storage-read-only", 503), (refused.Problem.Code, refused.Problem.Status));
        Assert.Equal(1, (await host.With(key).GetAsync()).Version);
    }

    [Fact]
    public async Task A_database_out_of_reach_is_told()
    {
        await using PostgresDatabase nowhere = new("Host=/nowhere;Username=nobody;Database=none");
        StorageException refused = await Assert.ThrowsAsync<StorageException>(() => nowhere.MigrateAsync(new TestClock()));
        Assert.Equal(StorageFault.Unreachable, refused.Fault);
    }

    [Fact]
    public async Task Links_that_are_revoked_while_their_plan_is_deleted_do_not_wait_for_each_other()
    {
        await using Host host = await Host.StartAsync(StoredIn.Postgres, postgres);
        for (int time = 0; time < 10; time++)
        {
            SharedPlanClient keeper = await host.ShareAsync();
            NewLinkAnswer[] links = await Task.WhenAll(Enumerable.Range(0, 5).Select(_ => keeper.MakeLinkAsync(new NewLink(LinkKind.Edit))));
            string?[] refused = await Task.WhenAll([.. links.Select(link => CodeAsync(keeper.RevokeLinkAsync(link.Id))), CodeAsync(keeper.DeleteEverythingAsync())]);
            Assert.All(refused, code => Assert.True(code is null or "link-unknown" or "not-found", code));
        }
    }

    private static async Task<string?> CodeAsync(Task task)
    {
        try
        {
            await task;
            return null;
        }
        catch (SharingException refused)
        {
            return refused.Problem.Code;
        }
    }
}
