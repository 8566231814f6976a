using Hoopwright.Sharing;

namespace Hoopwright.Server.Tests.Api;

public sealed class DocumentTests(PostgresServer postgres)
{
    [Theory, OnBoth]
    public async Task A_changed_plan_has_the_next_version_and_comes_to_the_others_as_typed(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        string changed = Host.Plan.Replace("26 ft", "30 ft", StringComparison.Ordinal);

        DocumentPushAnswer answer = await keeper.PushAsync(new DocumentPush(changed, 1, "Ada"));

        Assert.Equal((2, changed), (answer.Version, answer.Document));
        Assert.Empty(answer.Conflicts);
        PlanState state = await keeper.GetAsync(version: 1);
        Assert.Equal((2, changed), (state.Version, state.Document));
    }

    [Theory, OnBoth]
    public async Task The_same_plan_again_is_no_change(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        Assert.Equal(1, (await keeper.PushAsync(new DocumentPush(Host.Plan, 1))).Version);
        Assert.Single((await keeper.AuditAsync()).Rows);
    }

    [Theory, OnBoth]
    public async Task Of_many_changes_at_once_none_is_put_over_another_unseen(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();

        DocumentPushAnswer[] answers = await Task.WhenAll(Enumerable.Range(0, 10).Select(device => keeper.PushAsync(new DocumentPush($$"""{ "frame": { "span": "{{20 + device}} ft" } }""", 1))));

        Assert.Single(answers, answer => answer.Conflicts.IsEmpty);
    }
}
