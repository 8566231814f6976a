using System.Globalization;
using System.Text;
using Hoopwright.Sharing;
using Hoopwright.Testing.Fuzz;

namespace Hoopwright.Server.Tests.Api;

/// <summary>Made-up bodies, the same each time; <c>HOOPWRIGHT_BODIES</c> says how many for each address where more are wanted.</summary>
public sealed class AnyBodyTests(PostgresServer postgres)
{
    private static readonly int Times = int.TryParse(Environment.GetEnvironmentVariable("HOOPWRIGHT_BODIES"), NumberStyles.None, CultureInfo.InvariantCulture, out int more) ? more : 400;

    [Theory]
    [InlineData("plan/entries")]
    [InlineData("plan/document")]
    [InlineData("plan/links")]
    [InlineData("shares")]
    public async Task Whatever_body_it_is_sent_the_server_answers_and_the_plan_can_still_be_read(string address)
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        string key = (await SharedPlanClient.ShareAsync(host.Http, new NewShare(Host.Plan))).KeeperKey;
        byte[][] seeds = [.. Seeds.Select(Encoding.UTF8.GetBytes)];
        Mutator mutator = new(address.Length);
        for (int time = 0; time < Times; time++)
        {
            byte[] body = mutator.Next(seeds[time % seeds.Length], seeds[time * 7 % seeds.Length]);
            using HttpRequestMessage request = new(HttpMethod.Post, "api/v1/" + address) { Content = new ByteArrayContent(body) };
            request.Content.Headers.ContentType = new("application/json");
            request.Headers.Authorization = new("Bearer", key);
            using HttpResponseMessage answer = await host.Http.SendAsync(request);
            string text = await answer.Content.ReadAsStringAsync();
            Assert.True((int)answer.StatusCode < 500, $"{answer.StatusCode}: {text}\n{Encoding.UTF8.GetString(body)}");
            Assert.DoesNotContain("Exception", text, StringComparison.Ordinal);
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
