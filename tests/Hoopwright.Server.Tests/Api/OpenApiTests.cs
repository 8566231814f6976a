using Hoopwright.Testing;

namespace Hoopwright.Server.Tests.Api;

public sealed class OpenApiTests(PostgresServer postgres)
{
    [Fact]
    public async Task The_description_of_the_API_is_the_kept_one()
    {
        await using Host host = await Host.StartAsync(StoredIn.Sqlite, postgres);
        string text = await host.Http.GetStringAsync(new Uri("api/v1/openapi.json", UriKind.Relative));
        Golden.Match(text.ReplaceLineEndings("\n") + "\n", "Hoopwright.Server.Tests/Golden/openapi.json");
    }
}
