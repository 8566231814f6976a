using Hoopwright.Sharing;
using Hoopwright.Testing;

namespace Hoopwright.Server.Tests.Api;

public sealed class DocumentTests(PostgresServer postgres)
{
    [Theory, OnBoth]
    public async Task A_changed_plan_has_the_next_version_and_comes_to_the_others(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();

        DocumentPushAnswer answer = await keeper.PushAsync(new DocumentPush("""{ "hoopwright": "1.0", "frame": { "length": "72 ft" } }""", "Ada"));

        Assert.Equal(2, answer.Version);
        Assert.Empty(answer.Undecided);
        PlanState state = await keeper.GetAsync(version: 1);
        Assert.Equal((2, answer.Document), (state.Version, state.Document));
        Assert.Contains("26 ft", state.Document, StringComparison.Ordinal);
        Assert.Contains("72 ft", state.Document, StringComparison.Ordinal);
    }

    [Theory, OnBoth]
    public async Task The_same_plan_again_is_no_change(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        Assert.Equal(1, (await keeper.PushAsync(new DocumentPush(Host.Plan))).Version);
        Assert.Equal(1, (await keeper.PushAsync(new DocumentPush((await keeper.GetAsync()).Document!))).Version);
        Assert.Single((await keeper.AuditAsync()).Rows);
    }

    [Theory, OnBoth]
    public async Task What_many_devices_change_at_once_is_all_kept_and_waits_for_a_decision_where_it_differs(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync("{ \"hoopwright\": \"1.0\" }");

        await Task.WhenAll(Enumerable.Range(0, 10).Select(device => keeper.PushAsync(new DocumentPush($$"""{ "hoopwright": "1.0", "frame": { "span": "{{20 + device}} ft" } }"""))));

        DocumentPushAnswer all = await keeper.PushAsync(new DocumentPush("{ \"hoopwright\": \"1.0\" }"));
        Assert.Equal(["frame.span"], all.Undecided);
        Assert.All(Enumerable.Range(0, 10), device => Assert.Contains($"{20 + device} ft", all.Document, StringComparison.Ordinal));
        Assert.Equal(11, all.Version);
    }

    [Theory, OnBoth]
    public async Task Two_devices_that_push_and_take_over_come_to_the_same_bytes(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync(System.Text.Encoding.UTF8.GetString(SamplePlans.ExampleBytes("gothic-26ft")));
        string one = (await keeper.PushAsync(new DocumentPush("""{ "hoopwright": "1.0", "site": { "name": "one" } }"""))).Document;
        string other = (await keeper.PushAsync(new DocumentPush("""{ "hoopwright": "1.0", "site": { "name": "other" } }"""))).Document;
        Assert.NotEqual(one, other);
        Assert.Equal(other, (await keeper.PushAsync(new DocumentPush(one))).Document);
    }
}
