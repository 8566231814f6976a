using Hoopwright.Sharing;

namespace Hoopwright.Server.Tests.Api;

public sealed class EntryTests(PostgresServer postgres)
{
    [Theory, OnBoth]
    public async Task Entries_pushed_by_one_device_come_to_another_in_the_order_in_which_the_server_got_them(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        SharedPlanClient phone = await host.LinkAsync(keeper, LinkKind.Add), office = await host.LinkAsync(keeper, LinkKind.Read);

        await phone.PushAsync(Entries.Push(Entries.Measured(3), Entries.Measured(1)));
        await phone.PushAsync(Entries.Push(Entries.Measured(2)));

        PlanState state = await office.GetAsync();
        Assert.Equal([Entries.Id(3), Entries.Id(1), Entries.Id(2)], state.Entries.Select(Entries.IdOf));
        Assert.Equal([1, 2, 3], state.Entries.Select(entry => entry.Cursor));
        Assert.Equal(3, state.Cursor);
        Assert.False(state.More);
        Assert.Contains("26 ft", state.Document, StringComparison.Ordinal);
        Assert.Equal("26' 0-1/2\"", state.Entries[0].Entry.GetProperty("value").GetString());

        PlanState later = await office.GetAsync(after: 2, state.Version);
        Assert.Equal([Entries.Id(2)], later.Entries.Select(Entries.IdOf));
        Assert.Null(later.Document);
    }

    [Theory, OnBoth]
    public async Task The_same_entry_sent_again_is_there_once_even_with_its_fields_in_another_order(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        await keeper.PushAsync(Entries.Push(Entries.Of($$"""{"id":"{{Entries.Id(1)}}","kind":"note","note":"gate"}""")));

        EntryPushAnswer again = await keeper.PushAsync(Entries.Push(Entries.Of($$"""{"note":"gate",  "kind":"note","id":"{{Entries.Id(1)}}"}""")));

        Assert.Equal([EntryOutcome.AlreadyHere], again.Receipts.Select(each => each.Outcome));
        Assert.Single((await keeper.GetAsync()).Entries);
    }

    [Theory, OnBoth]
    public async Task The_same_id_with_other_content_keeps_both_and_says_so(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();

        EntryPushAnswer answer = await keeper.PushAsync(Entries.Push(Entries.Measured(1, "26 ft"), Entries.Measured(1, "27 ft"), Entries.Measured(1, "26 ft")));

        Assert.Equal([EntryOutcome.Added, EntryOutcome.KeptBoth, EntryOutcome.AlreadyHere], answer.Receipts.Select(each => each.Outcome));
        Assert.Equal(["26 ft", "27 ft"], (await keeper.GetAsync()).Entries.Select(each => each.Entry.GetProperty("value").GetString()));
    }

    [Theory, OnBoth]
    public async Task An_entry_from_the_future_is_kept_and_tells_by_how_much_the_clock_is_ahead(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        string soon = Entries.Id(host.Clock.Now.AddMinutes(1), 1), later = Entries.Id(host.Clock.Now.AddHours(2), 2);

        EntryPushAnswer answer = await keeper.PushAsync(Entries.Push([.. new[] { soon, later }.Select(id => Entries.Of($$"""{"id":"{{id}}","kind":"note","note":"n"}"""))]));

        Assert.Equal([null, 7_200], answer.Receipts.Select(each => each.AheadSeconds));
        Assert.Equal([EntryOutcome.Added, EntryOutcome.Added], answer.Receipts.Select(each => each.Outcome));
        Assert.Equal(host.Clock.Now, answer.ServerTime);
        Assert.Equal([null, 7_200], (await keeper.GetAsync()).Entries.Select(each => each.AheadSeconds));
    }

    [Theory, OnBoth]
    public async Task A_long_site_book_comes_in_several_answers_without_a_gap(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        // 60 entries of 80 KB each are more than two answers' worth.
        string note = new('x', 80_000);
        for (int push = 0; push < 6; push++)
            await keeper.PushAsync(Entries.Push([.. Enumerable.Range(push * 10, 10).Select(number => Entries.Of($$"""{"id":"{{Entries.Id(number)}}","kind":"note","note":"{{note}}"}"""))]));

        List<string> ids = [];
        int answers = 0;
        PlanState state = await keeper.GetAsync();
        while (true)
        {
            answers++;
            ids.AddRange(state.Entries.Select(Entries.IdOf));
            if (!state.More) break;
            state = await keeper.GetAsync(state.Cursor, state.Version);
        }

        Assert.Equal(Enumerable.Range(0, 60).Select(Entries.Id), ids);
        Assert.True(answers > 2, $"There were only {answers} answers, so nothing was divided.");
    }

    [Theory, OnBoth]
    public async Task Ten_devices_that_push_and_ask_at_once_all_come_to_see_every_entry(StoredIn kind)
    {
        const int Devices = 10, Each = 20;
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        List<string>[] seen = [.. Enumerable.Range(0, Devices).Select(_ => new List<string>())];
        long[] cursors = new long[Devices];

        await Task.WhenAll(Enumerable.Range(0, Devices).Select(async device =>
        {
            for (int number = 0; number < Each; number++)
            {
                await keeper.PushAsync(Entries.Push(Entries.Measured((device * Each) + number)));
                await PullAsync(device);
            }
        }));
        foreach (int device in Enumerable.Range(0, Devices)) await PullAsync(device);

        // No device ever passes over an entry that was given a lower cursor but became visible later.
        string[] all = [.. Enumerable.Range(0, Devices * Each).Select(Entries.Id)];
        foreach (List<string> ids in seen) Assert.Equal(all, ids.Order(StringComparer.Ordinal));

        async Task PullAsync(int device)
        {
            PlanState state = await keeper.GetAsync(cursors[device], 1);
            cursors[device] = state.Cursor;
            seen[device].AddRange(state.Entries.Select(Entries.IdOf));
        }
    }

    [Theory]
    [InlineData("""[1]""", "braces")]
    [InlineData("""{"kind":"note"}""", "id")]
    [InlineData("""{"id":7,"kind":"note"}""", "id")]
    [InlineData("""{"id":"","kind":"note"}""", "id")]
    [InlineData("""{"id":"two words","kind":"note"}""", "id")]
    [InlineData("""{"id":"20260418T101500Z-abcdefgh"}""", "kind")]
    [InlineData("""{"id":"20260418T101500Z-abcdefgh","kind":"no te"}""", "kind")]
    [InlineData("""{"id":"20260418T101500Z-abcdefgh","kind":"note","x":[[[[[[[[[[1]]]]]]]]]]}""", "deep")]
    [InlineData("""{"id":"20260418T101500Z-abcdefgh","kind":"photo","value":"hello"}""", "no picture")]
    [InlineData("""{"id":"20260418T101500Z-abcdefgh","kind":"photo","value":"data:image/jpeg;base64,aGVsbG8gd29ybGQh"}""", "picture")]
    [InlineData("""{"id":"20260418T101500Z-abcdefgh","kind":"note","note":"data:text/html;base64,PHNjcmlwdD4="}""", "picture")]
    public async Task An_entry_that_cannot_be_kept_is_refused_with_the_reason_and_the_others_are_kept(string entry, string reason)
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        SharedPlanClient keeper = await host.ShareAsync();

        EntryPushAnswer answer = await keeper.PushAsync(Entries.Push(Entries.Measured(1), Entries.Of(entry), Entries.Measured(2)));

        Assert.Equal([EntryOutcome.Added, EntryOutcome.Refused, EntryOutcome.Added], answer.Receipts.Select(each => each.Outcome));
        Assert.Contains(reason, answer.Receipts[1].Why, StringComparison.Ordinal);
        Assert.Equal(2, (await keeper.GetAsync()).Entries.Length);
    }

    [Fact]
    public async Task An_entry_of_more_than_96_KiB_is_refused_and_a_picture_as_the_app_makes_it_is_kept()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        string picture = "data:image/jpeg;base64," + Convert.ToBase64String([0xFF, 0xD8, 0xFF, 0xE0, .. new byte[44_000]]);

        EntryPushAnswer answer = await keeper.PushAsync(Entries.Push(
            Entries.Of($$"""{"id":"{{Entries.Id(1)}}","kind":"note","note":"{{new string('x', 100_000)}}"}"""),
            Entries.Of($$"""{"id":"{{Entries.Id(2)}}","kind":"photo","value":"{{picture}}"}""")));

        Assert.Equal([EntryOutcome.Refused, EntryOutcome.Added], answer.Receipts.Select(each => each.Outcome));
        Assert.Equal(picture, (await keeper.GetAsync()).Entries.Single().Entry.GetProperty("value").GetString());
    }

    [Fact]
    public async Task Older_ids_ids_typed_by_hand_and_fields_of_a_newer_version_are_kept()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        SharedPlanClient keeper = await host.ShareAsync();

        EntryPushAnswer answer = await keeper.PushAsync(Entries.Push(Entries.Of("""{"id":"20260418T101500Z-abcdefgh","kind":"survey","reading":{"unit":"m","list":[1.50,2]}}"""), Entries.Of("""{"id":"m-1","kind":"note"}""")));

        Assert.All(answer.Receipts, receipt => Assert.Equal((EntryOutcome.Added, null), (receipt.Outcome, receipt.AheadSeconds)));
        Assert.Equal("""{"id":"20260418T101500Z-abcdefgh","kind":"survey","reading":{"list":[1.50,2],"unit":"m"}}""", (await keeper.GetAsync()).Entries[0].Entry.GetRawText());
    }
}
