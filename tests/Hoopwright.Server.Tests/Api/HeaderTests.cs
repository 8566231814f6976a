using System.Net;
using Hoopwright.Sharing;

namespace Hoopwright.Server.Tests.Api;

public sealed class HeaderTests(PostgresServer postgres)
{
    [Theory]
    [InlineData("GET", "", null)]
    [InlineData("GET", "index.html", null)]
    [InlineData("GET", "api/v1/health", null)]
    [InlineData("GET", "api/v1/plan", null)]
    [InlineData("GET", "api/v1/nothing", null)]
    [InlineData("POST", "api/v1/shares", "{")]
    [InlineData("POST", "api/v1/shares", """{"document":"no plan"}""")]
    [InlineData("PUT", "api/v1/shares", "{}")]
    public async Task Every_answer_keeps_the_page_to_itself(string method, string address, string? body)
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        using HttpResponseMessage answer = await host.SendAsync(new HttpMethod(method), address, null, body);

        string policy = answer.Headers.GetValues("Content-Security-Policy").Single();
        Assert.Contains("default-src 'self'", policy, StringComparison.Ordinal);
        Assert.Contains("script-src 'self' 'wasm-unsafe-eval';", policy, StringComparison.Ordinal);
        Assert.Contains("connect-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("object-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.Equal("no-referrer", answer.Headers.GetValues("Referrer-Policy").Single());
        Assert.Equal(address.StartsWith("api", StringComparison.Ordinal), answer.Headers.CacheControl?.NoStore == true);
        Assert.False(answer.Headers.Contains("Server"));
        Assert.False(answer.Headers.Contains("Access-Control-Allow-Origin"));
    }

    [Fact]
    public async Task What_a_link_opens_is_kept_by_no_cache()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        string key = (await SharedPlanClient.ShareAsync(host.Http, new NewShare(Host.Plan))).KeeperKey;
        foreach (string address in new[] { "api/v1/plan", "api/v1/plan/links", "api/v1/plan/audit", "api/v1/plan/export" })
        {
            using HttpResponseMessage answer = await host.SendAsync(HttpMethod.Get, address, key);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.True(answer.Headers.CacheControl!.NoStore, address);
        }
    }

    [Theory, OnBoth]
    public async Task Health_tells_that_the_database_can_be_read(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        string text = await host.Http.GetStringAsync(new Uri("api/v1/health", UriKind.Relative));
        Assert.Equal($$"""{"status":"ok","storage":"{{host.Database.Kind}}","serverTime":"2026-04-18T12:00:00+00:00"}""", text);
    }
}
