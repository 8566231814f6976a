using System.Net;
using System.Text.Json;
using Hoopwright.Server.Api;
using Hoopwright.Sharing;

namespace Hoopwright.Server.Tests.Api;

public sealed class BadRequestTests(PostgresServer postgres)
{
    [Theory]
    [InlineData("plan/entries", """{"entries":[""", "malformed")]
    [InlineData("plan/entries", """{"entries":7}""", "malformed")]
    [InlineData("plan/entries", """{}""", "malformed")]
    [InlineData("plan/entries", "null", "malformed")]
    [InlineData("plan/entries", "", "malformed")]
    [InlineData("plan/entries", "\u0001\u0002", "malformed")]
    [InlineData("plan/entries", """{"entries":[],"entries":[]}""", "malformed")]
    [InlineData("plan/document", """{"document":null}""", "malformed")]
    [InlineData("plan/document", """{"document":"{}","by":7}""", "malformed")]
    [InlineData("plan/document", """{"document":"hello"}""", "malformed")]
    [InlineData("plan/document", """{"document":"{\"hoopwright\":\"99.0\"}"}""", "malformed")]
    [InlineData("plan/document", """{"document":"[]"}""", "malformed")]
    [InlineData("plan/document", """{"document":"{} {}"}""", "malformed")]
    [InlineData("plan/document", """{"document":"{\"a\":\"\ud800\"}"}""", "malformed")]
    [InlineData("plan/document", """{"document":"{\"siteBook\":[]}"}""", "malformed")]
    [InlineData("plan/document", """{"document":"{}","by":"a\nb"}""", "malformed")]
    [InlineData("plan/links", """{"kind":"owner"}""", "malformed")]
    [InlineData("plan/links", """{"kind":7}""", "malformed")]
    [InlineData("plan/links", """{"kind":"read","label":"\u0000"}""", "malformed")]
    public async Task What_is_malformed_is_refused_for_a_person_to_read_and_changes_nothing(string address, string body, string code)
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        string key = (await SharedPlanClient.ShareAsync(host.Http, new NewShare(Host.Plan))).KeeperKey;

        using HttpResponseMessage answer = await host.SendAsync(HttpMethod.Post, "api/v1/" + address, key, body);

        await IsProblemAsync(answer, HttpStatusCode.BadRequest, code);
        Assert.Equal(1, (await host.With(key).GetAsync()).Version);
        Assert.Empty((await host.With(key).GetAsync()).Entries);
        Assert.Empty(await host.With(key).LinksAsync());
    }

    [Theory]
    [InlineData(31)]
    [InlineData(1_000)]
    [InlineData(1_000_000)]
    public async Task What_is_nested_too_deep_is_refused(int depth)
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        string key = (await SharedPlanClient.ShareAsync(host.Http, new NewShare(Host.Plan))).KeeperKey;
        string deep = new string('[', depth) + new string(']', depth);

        using HttpResponseMessage entries = await host.SendAsync(HttpMethod.Post, "api/v1/plan/entries", key, $$"""{"entries":[{"id":"{{Entries.Id(1)}}","kind":"note","x":{{deep}}}]}""");
        using HttpResponseMessage document = await host.SendAsync(HttpMethod.Post, "api/v1/plan/document", key, $$"""{"document":"{\"x\":[{{deep}}]}"}""");

        await IsProblemAsync(entries, HttpStatusCode.BadRequest, "malformed");
        await IsProblemAsync(document, HttpStatusCode.BadRequest, "malformed");
    }

    [Fact]
    public async Task Five_hundred_entries_are_one_push_and_one_more_is_too_many()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        await keeper.PushAsync(Entries.Push([.. Enumerable.Range(0, 500).Select(number => Entries.Measured(number))]));
        SharingException refused = await Assert.ThrowsAsync<SharingException>(() => keeper.PushAsync(Entries.Push([.. Enumerable.Range(0, 501).Select(number => Entries.Measured(number))])));
        Assert.Equal("too-large", refused.Problem.Code);
    }

    [Fact]
    public async Task A_plan_of_two_MiB_is_kept_and_one_byte_more_is_refused()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        string most = Host.Plan.PadRight(SharingLimits.DocumentBytes);

        await host.ShareAsync(most);

        Assert.Equal("too-large", (await Assert.ThrowsAsync<SharingException>(() => host.ShareAsync(most + " "))).Problem.Code);
    }

    [Fact]
    public async Task A_body_of_50_MB_is_refused_without_being_read()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        string key = (await SharedPlanClient.ShareAsync(host.Http, new NewShare(Host.Plan))).KeeperKey;
        host.Http.DefaultRequestHeaders.ExpectContinue = true;
        using HttpResponseMessage answer = await host.SendAsync(HttpMethod.Post, "api/v1/plan/document", key, "{\"document\":\"" + new string('x', 50_000_000) + "\",\"version\":1}");
        await IsProblemAsync(answer, HttpStatusCode.RequestEntityTooLarge, "too-large");
    }

    [Fact]
    public async Task A_body_that_is_no_JSON_by_its_own_words_is_refused()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        using HttpResponseMessage answer = await host.Http.PostAsync("api/v1/shares", new FormUrlEncodedContent([new("document", "{}")]));
        await IsProblemAsync(answer, HttpStatusCode.UnsupportedMediaType, "not-json");
    }

    [Fact]
    public async Task A_method_that_an_address_does_not_take_is_refused()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        using HttpResponseMessage answer = await host.SendAsync(HttpMethod.Put, "api/v1/plan", null, "{}");
        await IsProblemAsync(answer, HttpStatusCode.MethodNotAllowed, "wrong-method");
    }

    [Theory]
    [InlineData("api/v1/nothing", HttpStatusCode.NotFound)]
    [InlineData("api", HttpStatusCode.NotFound)]
    [InlineData("api/v2/plan", HttpStatusCode.NotFound)]
    public async Task What_is_not_there_is_a_problem_and_not_the_page_of_the_app(string address, HttpStatusCode status)
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        using HttpResponseMessage answer = await host.SendAsync(HttpMethod.Get, address, null);
        await IsProblemAsync(answer, status, "not-found");
    }

    [Fact]
    public async Task A_link_that_asks_too_often_is_told_to_wait_and_another_link_is_not()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres, new RateOptions { AddressPerSecond = 10_000, LinkPerSecond = 1 });
        SharedPlanClient keeper = await host.ShareAsync();
        SharedPlanClient other = await host.LinkAsync(keeper, LinkKind.Read);

        SharingException refused = await Assert.ThrowsAsync<SharingException>(async () =>
        {
            for (int time = 0; time < 1_000; time++) await keeper.GetAsync();
        });

        Assert.Equal(("too-many-requests", 429), (refused.Problem.Code, refused.Problem.Status));
        Assert.True(refused.RetryAfter >= TimeSpan.FromSeconds(1));
        await other.GetAsync();
    }

    [Fact]
    public async Task An_address_that_tries_tokens_is_told_to_wait()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres, new RateOptions { AddressPerSecond = 1 });
        SharingException? last = null;
        for (int time = 0; time < 1_000 && last?.Problem.Status != 429; time++) last = await Assert.ThrowsAsync<SharingException>(() => host.With($"guess{time}").GetAsync());
        Assert.Equal(429, last!.Problem.Status);
    }

    [Fact]
    public async Task Behind_a_web_server_on_the_same_machine_each_device_counts_by_its_own_address()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres, new RateOptions { SharesPerHour = 1 });
        Assert.Equal(
            [HttpStatusCode.Created, HttpStatusCode.TooManyRequests, HttpStatusCode.Created, HttpStatusCode.Created, HttpStatusCode.TooManyRequests],
            new[] { await FromAsync("192.0.2.1"), await FromAsync("192.0.2.1"), await FromAsync("192.0.2.2"), await FromAsync("2001:db8:0:1::1"), await FromAsync("2001:db8:0:1::2") });

        async Task<HttpStatusCode> FromAsync(string address)
        {
            using HttpRequestMessage request = new(HttpMethod.Post, "api/v1/shares") { Content = new StringContent("""{"document":"{\"hoopwright\":\"1.0\"}"}""", System.Text.Encoding.UTF8, "application/json") };
            request.Headers.Add("X-Forwarded-For", address);
            using HttpResponseMessage answer = await host.Http.SendAsync(request);
            return answer.StatusCode;
        }
    }

    [Fact]
    public async Task An_address_shares_so_many_plans_an_hour()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres, new RateOptions { SharesPerHour = 3 });
        for (int time = 0; time < 3; time++) await host.ShareAsync();
        Assert.Equal("too-many-requests", (await Assert.ThrowsAsync<SharingException>(() => host.ShareAsync())).Problem.Code);
    }

    private static async Task IsProblemAsync(HttpResponseMessage answer, HttpStatusCode status, string code)
    {
        string text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode == status, $"{answer.StatusCode}: {text}");
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
        SharingProblem problem = JsonSerializer.Deserialize(text, SharingJson.Default.SharingProblem)!;
        Assert.Equal((code, (int)status), (problem.Code, problem.Status));
        Assert.EndsWith(".", problem.Detail, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", text, StringComparison.Ordinal);
    }
}
