using System.Net;
using System.Text;
using Hoopwright.Sharing;

namespace Hoopwright.Server.Tests.Api;

public sealed class ClientTests
{
    [Fact]
    public async Task An_answer_that_is_not_the_servers_own_is_a_server_out_of_reach_and_no_refusal()
    {
        using HttpClient http = Answering(HttpStatusCode.BadGateway, "<html>no</html>", "text/html");
        HttpRequestException fault = await Assert.ThrowsAsync<HttpRequestException>(() => new SharedPlanClient(http, "t").GetAsync());
        Assert.Equal(HttpStatusCode.BadGateway, fault.StatusCode);
    }

    [Fact]
    public async Task Fields_that_a_newer_server_adds_are_passed_over()
    {
        using HttpClient http = Answering(HttpStatusCode.OK, """{"link":"read","epoch":"e","version":3,"cursor":7,"entries":[{"cursor":7,"entry":{"id":"x"},"new":1}],"more":false,"serverTime":"2026-04-18T12:00:00+00:00","new":{}}""", "application/json");
        PlanState state = await new SharedPlanClient(http, "t").GetAsync();
        Assert.Equal((LinkKind.Read, 3, 7, null), (state.Link, state.Version, state.Cursor, state.Document));
    }

    [Fact]
    public async Task Without_a_server_the_fault_is_that_of_the_network()
    {
        // Port 9 is the discard service, which nothing here runs (RFC 863).
        using HttpClient http = new() { BaseAddress = new Uri("http://127.0.0.1:9/") };
        await Assert.ThrowsAsync<HttpRequestException>(() => new SharedPlanClient(http, "t").GetAsync());
    }

    private static HttpClient Answering(HttpStatusCode status, string body, string type) => new(new Fixed(status, body, type)) { BaseAddress = new Uri("http://server.example/") };

    private sealed class Fixed(HttpStatusCode status, string body, string type) : HttpMessageHandler
    {
        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken) =>
            Task.FromResult(new HttpResponseMessage(status) { Content = new StringContent(body, Encoding.UTF8, type) });
    }
}
