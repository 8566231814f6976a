using System.Net.Http.Headers;
using System.Text;
using Hoopwright.Server.Api;
using Hoopwright.Server.Storage;
using Hoopwright.Server.Storage.Postgres;
using Hoopwright.Server.Storage.Sqlite;
using Hoopwright.Sharing;
using Microsoft.AspNetCore.Builder;

namespace Hoopwright.Server.Tests;

/// <summary>The real server within the test, on a port of its own, with a database of its own.</summary>
internal sealed class Host : IAsyncDisposable
{
    public const string Plan = "{ \"hoopwright\": \"1.0\", // invented\n  \"frame\": { \"span\": \"26 ft\" } }";

    private readonly WebApplication app;
    private readonly TestFolder folder;

    private Host(WebApplication app, IDatabase database, TestFolder folder, TestClock clock)
    {
        this.app = app;
        this.folder = folder;
        Database = database;
        Clock = clock;
        Http = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
    }

    public HttpClient Http { get; }

    public IDatabase Database { get; }

    public TestClock Clock { get; }

    public string DatabaseFile => folder.Database;

    public static async Task<Host> StartAsync(StoredIn kind, PostgresServer postgres, RateOptions? rates = null)
    {
        TestFolder folder = new();
        TestClock clock = new();
        IDatabase database = kind switch
        {
            StoredIn.Sqlite => new SqliteDatabase(folder.Database),
            StoredIn.Postgres => new PostgresDatabase(await postgres.NewSchemaAsync()),
        };
        await database.MigrateAsync(clock);
        return await StartAsync(database, folder, clock, rates);
    }

    public static async Task<Host> StartAsync(IDatabase database, TestFolder folder, TestClock clock, RateOptions? rates = null)
    {
        // Tests ask faster than people.
        RateOptions wide = new() { AddressPerSecond = 100_000, LinkPerSecond = 100_000, SharesPerHour = int.MaxValue };
        WebApplication app = ServerApp.Create(new ServerOptions { App = folder.App, Urls = "http://127.0.0.1:0", Data = folder.Database, Rates = rates ?? wide }, database, clock);
        await app.StartAsync();
        return new Host(app, database, folder, clock);
    }

    /// <summary>Shares a plan; the client has its keeper key.</summary>
    public async Task<SharedPlanClient> ShareAsync(string plan = Plan) => With((await SharedPlanClient.ShareAsync(Http, new NewShare(plan, "Ada"))).KeeperKey);

    public SharedPlanClient With(string token) => new(Http, token);

    public async Task<SharedPlanClient> LinkAsync(SharedPlanClient keeper, LinkKind kind) => With((await keeper.MakeLinkAsync(new NewLink(kind))).Token);

    /// <summary>Sends what no client of ours would.</summary>
    public Task<HttpResponseMessage> SendAsync(HttpMethod method, string address, string? token, string? body = null)
    {
        HttpRequestMessage request = new(method, address);
        if (body is not null) request.Content = new StringContent(body, Encoding.UTF8, "application/json");
        if (token is not null) request.Headers.Authorization = new AuthenticationHeaderValue("Bearer", token);
        return Http.SendAsync(request);
    }

    public async ValueTask DisposeAsync()
    {
        Http.Dispose();
        await app.DisposeAsync();
        await Database.DisposeAsync();
        folder.Dispose();
    }
}
