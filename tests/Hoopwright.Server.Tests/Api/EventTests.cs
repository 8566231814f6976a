using Hoopwright.Sharing;

namespace Hoopwright.Server.Tests.Api;

public sealed class EventTests(PostgresServer postgres)
{
    [Theory, OnBoth]
    public async Task An_open_page_is_told_of_entries_and_of_a_changed_plan(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        SharedPlanClient page = await host.LinkAsync(keeper, LinkKind.Read);
        await using IAsyncEnumerator<PlanChange> changes = page.ChangesAsync(TimeProvider.System).GetAsyncEnumerator();

        Assert.Equal(new PlanChange(1, 0), await NextAsync(changes));
        await keeper.PushAsync(Entries.Push(Entries.Measured(1)));
        Assert.Equal(new PlanChange(1, 1), await NextAsync(changes));
        await keeper.PushAsync(new DocumentPush(Host.Plan.Replace("26 ft", "30 ft", StringComparison.Ordinal)));
        Assert.Equal(new PlanChange(2, 1), await NextAsync(changes));
    }

    [Theory, OnBoth]
    public async Task A_revoked_link_and_a_deleted_plan_end_the_waiting(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        NewLinkAnswer link = await keeper.MakeLinkAsync(new NewLink(LinkKind.Read));
        await using IAsyncEnumerator<PlanChange> changes = host.With(link.Token).ChangesAsync(TimeProvider.System).GetAsyncEnumerator(), own = keeper.ChangesAsync(TimeProvider.System).GetAsyncEnumerator();
        await NextAsync(changes);
        await NextAsync(own);

        await keeper.RevokeLinkAsync(link.Id);
        Assert.False(await changes.MoveNextAsync());
        await keeper.DeleteEverythingAsync();
        Assert.False(await own.MoveNextAsync());
    }

    [Fact]
    public async Task Of_another_plan_nothing_is_told()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        SharedPlanClient mine = await host.ShareAsync(), theirs = await host.ShareAsync();
        await using IAsyncEnumerator<PlanChange> changes = mine.ChangesAsync(TimeProvider.System).GetAsyncEnumerator();
        await NextAsync(changes);

        await theirs.PushAsync(Entries.Push(Entries.Measured(1)));
        await mine.PushAsync(new DocumentPush(Host.Plan.Replace("26 ft", "30 ft", StringComparison.Ordinal)));

        Assert.Equal(new PlanChange(2, 0), await NextAsync(changes));
    }

    private static async Task<PlanChange> NextAsync(IAsyncEnumerator<PlanChange> changes)
    {
        Assert.True(await changes.MoveNextAsync(), "The stream ended.");
        return changes.Current;
    }
}
