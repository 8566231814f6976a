using System.Globalization;
using System.Net;
using System.Text;
using Hoopwright.Sharing;
using Hoopwright.Testing.Fuzz;

namespace Hoopwright.Server.Tests.Api;

/// <summary>Made-up bodies, the same each time; <c>HOOPWRIGHT_BODIES</c> says how many for each address where more are wanted.</summary>
public sealed class AnyBodyTests(PostgresServer postgres)
{
    /// <summary>After so many a plan of its own again: bodies that are taken add to the plan, and each later one is put together with all of that.</summary>
    private const int OfOnePlan = 5_000;

    private static readonly int Times = int.TryParse(Environment.GetEnvironmentVariable("HOOPWRIGHT_BODIES"), NumberStyles.None, CultureInfo.InvariantCulture, out int more) ? more : 400;

    [Theory]
    [InlineData("plan/entries")]
    [InlineData("plan/document")]
    [InlineData("plan/links")]
    [InlineData("shares")]
    public async Task Whatever_body_it_is_sent_the_server_answers_and_the_plan_can_still_be_read(string address)
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        Mutator mutator = new(address.Length);
        for (int sent = 0; sent < Times; sent += OfOnePlan) await SendAsync(host, address, mutator, sent, Math.Min(sent + OfOnePlan, Times));
    }

    private static async Task SendAsync(Host host, string address, Mutator mutator, int from, int to)
    {
        string key = (await SharedPlanClient.ShareAsync(host.Http, new NewShare(Host.Plan))).KeeperKey;
        byte[][] seeds = [.. Seeds.Select(Encoding.UTF8.GetBytes)];
        for (int time = from; time < to; time++)
        {
            byte[] body = mutator.Next(seeds[time % seeds.Length], seeds[time * 7 % seeds.Length]);
            using HttpRequestMessage request = new(HttpMethod.Post, "api/v1/" + address) { Content = new ByteArrayContent(body) };
            request.Content.Headers.ContentType = new("application/json");
            request.Headers.Authorization = new("Bearer", key);
            using HttpResponseMessage answer = await host.Http.SendAsync(request);
            string text = await answer.Content.ReadAsStringAsync();
            Assert.True((int)answer.StatusCode < 500, $"{answer.StatusCode}: {text}\n{Encoding.UTF8.GetString(body)}");
            Assert.DoesNotContain("Exception", text, StringComparison.Ordinal);
            // Or the body would not have been looked at.
            Assert.NotEqual(HttpStatusCode.TooManyRequests, answer.StatusCode);
        }
        PlanState state = await host.With(key).GetAsync();
        Assert.True(state.Version >= 1);
        // Two entries of one identity are both kept; one entry is kept once.
        Assert.Equal(state.Entries.Length, state.Entries.Select(entry => entry.Entry.GetRawText()).Distinct(StringComparer.Ordinal).Count());
    }

    private static string[] Seeds =>
    [
        $$"""{"entries":[{{Entries.Measured(1).GetRawText()}},{{Entries.Measured(2, "26 ft").GetRawText()}}]}""",
        """{"document":"{\"hoopwright\":\"1.0\",\"name\":\"North\"}","version":1,"by":"Ada"}""",
        """{"kind":"read","label":"for the crew"}""",
        """{"document":"{\"hoopwright\":\"1.0\",\"frame\":{\"span\":\"26 ft\"}}","by":"Ada"}""",
    ];
}
