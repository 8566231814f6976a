using System.Net;
using Hoopwright.Sharing;

namespace Hoopwright.Server.Tests.Api;

public sealed class LinkTests(PostgresServer postgres)
{
    [Theory, OnBoth]
    public async Task Each_kind_of_link_allows_what_it_says_and_no_more(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        (LinkKind Needed, Func<SharedPlanClient, Task> Do)[] acts =
        [
            (LinkKind.Read, link => link.GetAsync()),
            (LinkKind.Read, async link => { await foreach (PlanChange _ in link.ChangesAsync(TimeProvider.System)) break; }),
            (LinkKind.Add, link => link.PushAsync(Entries.Push(Entries.Measured(1)))),
            (LinkKind.Edit, link => link.PushAsync(new DocumentPush(Host.Plan.Replace("26 ft", "30 ft", StringComparison.Ordinal)))),
            (LinkKind.Keeper, link => link.LinksAsync()),
            (LinkKind.Keeper, link => link.MakeLinkAsync(new NewLink(LinkKind.Read))),
            (LinkKind.Keeper, link => link.RevokeLinkAsync("none")),
            (LinkKind.Keeper, link => link.AuditAsync()),
            (LinkKind.Keeper, link => link.ExportAsync()),
            (LinkKind.Keeper, link => link.DeleteEverythingAsync()),
        ];
        foreach (LinkKind has in new[] { LinkKind.Read, LinkKind.Add, LinkKind.Edit })
        {
            SharedPlanClient link = await host.LinkAsync(keeper, has);
            foreach ((LinkKind needed, Func<SharedPlanClient, Task> act) in acts)
            {
                if (has >= needed) await act(link);
                else Assert.Equal("link-too-weak", (await Assert.ThrowsAsync<SharingException>(() => act(link))).Problem.Code);
            }
        }
        Assert.Equal(LinkKind.Keeper, (await keeper.GetAsync()).Link);
    }

    [Theory, OnBoth]
    public async Task Unknown_revoked_deleted_and_misshapen_tokens_get_the_very_same_answer(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        NewLinkAnswer revoked = await keeper.MakeLinkAsync(new NewLink(LinkKind.Edit, "the crew"));
        await keeper.RevokeLinkAsync(revoked.Id);
        string deleted = (await SharedPlanClient.ShareAsync(host.Http, new NewShare(Host.Plan))).KeeperKey;
        await host.With(deleted).DeleteEverythingAsync();

        HashSet<string> answers = [];
        foreach (string token in new[] { new string('A', 43), revoked.Token, deleted, revoked.Id, "x", "' OR 1=1 --", new string('A', 4_000) })
        {
            foreach (string address in new[] { "api/v1/plan", "api/v1/plan/audit", "api/v1/plan/events" })
            {
                using HttpResponseMessage answer = await host.SendAsync(HttpMethod.Get, address, token);
                answers.Add($"{answer.StatusCode} {string.Join(';', answer.Headers.Where(header => header.Key != "Date").Select(header => header.Key + "=" + string.Join(',', header.Value)))} {await answer.Content.ReadAsStringAsync()}");
            }
        }

        string one = Assert.Single(answers);
        Assert.StartsWith("NotFound", one, StringComparison.Ordinal);
    }

    [Theory, OnBoth]
    public async Task One_plan_cannot_reach_another(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient mine = await host.ShareAsync(), theirs = await host.ShareAsync("{ \"hoopwright\": \"1.0\", \"name\": \"theirs\" }");
        NewLinkAnswer link = await theirs.MakeLinkAsync(new NewLink(LinkKind.Add));
        await host.With(link.Token).PushAsync(Entries.Push(Entries.Measured(1)));

        Assert.Equal("not-found", (await Assert.ThrowsAsync<SharingException>(() => mine.RevokeLinkAsync(link.Id))).Problem.Code);
        Assert.Empty((await mine.GetAsync()).Entries);
        Assert.Contains("theirs", (await theirs.GetAsync()).Document, StringComparison.Ordinal);
        Assert.DoesNotContain("theirs", (await mine.GetAsync()).Document, StringComparison.Ordinal);
        Assert.Empty(await mine.LinksAsync());
        Assert.Equal(["shared"], (await mine.AuditAsync()).Rows.Select(row => row.What));
        await mine.DeleteEverythingAsync();
        Assert.Single((await host.With(link.Token).GetAsync()).Entries);
    }

    [Theory, OnBoth]
    public async Task Links_are_listed_without_their_secret_and_the_keeper_key_is_not_among_them(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        NewLinkAnswer first = await keeper.MakeLinkAsync(new NewLink(LinkKind.Read, "the neighbours")), second = await keeper.MakeLinkAsync(new NewLink(LinkKind.Edit));
        host.Clock.Now = host.Clock.Now.AddMinutes(5);
        await keeper.RevokeLinkAsync(first.Id);
        await keeper.RevokeLinkAsync(first.Id);

        SharedLink[] links = [.. (await keeper.LinksAsync()).OrderBy(link => link.Kind)];

        Assert.Equal([first.Id, second.Id], links.Select(link => link.Id));
        Assert.Equal([host.Clock.Now, null], links.Select(link => link.Revoked));
        Assert.Equal(["the neighbours", null], links.Select(link => link.Label));
    }

    [Fact]
    public async Task No_second_keeper_key_can_be_made()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        Assert.Equal("malformed", (await Assert.ThrowsAsync<SharingException>(() => keeper.MakeLinkAsync(new NewLink(LinkKind.Keeper)))).Problem.Code);
    }

    [Fact]
    public async Task Tokens_are_long_random_and_only_their_hash_is_in_the_database()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        List<string> tokens = [];
        for (int number = 0; number < 50; number++)
        {
            string key = (await SharedPlanClient.ShareAsync(host.Http, new NewShare(Host.Plan))).KeeperKey;
            tokens.Add(key);
            tokens.Add((await host.With(key).MakeLinkAsync(new NewLink(LinkKind.Read))).Token);
        }

        Assert.All(tokens, token => Assert.Matches("^[A-Za-z0-9_-]{43}$", token));
        // 256 bits each: 43 letters of 6 bits, the last of which holds 4.
        Assert.Equal(tokens.Count, tokens.Select(token => token[..8]).Distinct().Count());
        await host.Database.ForgetDeletedAsync();
        string file = System.Text.Encoding.Latin1.GetString(await ReadSharedAsync(host.DatabaseFile)) + System.Text.Encoding.Latin1.GetString(await ReadSharedAsync(host.DatabaseFile + "-wal"));
        Assert.Contains("hoopwright", file, StringComparison.Ordinal);
        Assert.All(tokens, token => Assert.DoesNotContain(token, file, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Without_a_token_a_request_is_asked_for_one()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        using HttpResponseMessage answer = await host.SendAsync(HttpMethod.Get, "api/v1/plan", token: null);
        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
        Assert.Equal("Bearer", answer.Headers.WwwAuthenticate.ToString());
    }

    [Fact]
    public async Task A_token_in_the_address_opens_nothing()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        string key = (await SharedPlanClient.ShareAsync(host.Http, new NewShare(Host.Plan))).KeeperKey;
        using HttpResponseMessage answer = await host.SendAsync(HttpMethod.Get, $"api/v1/plan?access_token={key}&token={key}", token: null);
        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
    }

    private static async Task<byte[]> ReadSharedAsync(string file)
    {
        await using FileStream stream = new(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using MemoryStream all = new();
        await stream.CopyToAsync(all);
        return all.ToArray();
    }
}
