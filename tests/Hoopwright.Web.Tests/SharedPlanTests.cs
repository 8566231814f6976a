using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using Hoopwright.Sharing;
using Hoopwright.Web.Engine;
using Hoopwright.Web.State;
using Microsoft.JSInterop;

namespace Hoopwright.Web.Tests;

public sealed class SharedPlanTests
{
    private const string Common = """{"name":"Mill","frame":{"bowSpacing":"4 ft","length":"48 ft"}}""";

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public async Task What_is_typed_while_the_copies_are_put_together_is_not_lost(int when)
    {
        // Another device made the tunnel longer.
        using Kept server = new(EngineWork.Record(Common, Common.Replace("48 ft", "60 ft", StringComparison.Ordinal), "b1", "Sage", "phone"));
        StraightEngine engine = new();
        using OpenPlan plan = new(new OneShelf { Document = Common.Replace("Mill", "Hill", StringComparison.Ordinal) });
        using HttpClient http = new(server) { BaseAddress = new Uri("http://server.example/") };
        PageScript script = new(new Memory { ["share.a"] = (ShareRecord.New("t", LinkKind.Edit) with { Base = Common }).Write() });
        using SharedPlan shared = new(plan, engine, new Scribe(plan, script, TimeProvider.System), script, http, TimeProvider.System);
        await plan.OpenAsync("a");
        int merged = 0;
        engine.BeforeMerging = () => ++merged == when ? plan.SetAsync("frame.bowSpacing", JsonValue.Create("3 ft")) : Task.CompletedTask;

        await shared.FollowAsync();
        await shared.SyncAsync();
        // Without waiting for the pause after which it happens by itself.
        await shared.SyncAsync();

        Assert.True(merged >= when);
        Assert.Equal(ShareState.Together, shared.State);
        Assert.Equal("a1", PlanPath.TextAt(plan.Root, "siteBook[0].id"));
        foreach (JsonNode each in (JsonNode[])[plan.Root, JsonNode.Parse(server.Document)!])
            Assert.Equal(("Hill", "3 ft", "60 ft"), (PlanPath.TextAt(each, "name"), PlanPath.TextAt(each, "frame.bowSpacing"), PlanPath.TextAt(each, "frame.length")));
    }

    [Theory]
    [InlineData("<html>Sign in to the guest network</html>")]
    [InlineData("")]
    public async Task An_answer_that_cannot_be_read_is_tried_again_later(string page)
    {
        using Kept server = new(Common) { Instead = page };
        using OpenPlan plan = new(new OneShelf { Document = Common });
        using HttpClient http = new(server) { BaseAddress = new Uri("http://server.example/") };
        PageScript script = new(new Memory { ["share.a"] = (ShareRecord.New("t", LinkKind.Edit) with { Base = Common }).Write() });
        using SharedPlan shared = new(plan, new StraightEngine(), new Scribe(plan, script, TimeProvider.System), script, http, TimeProvider.System);
        await plan.OpenAsync("a");
        await shared.FollowAsync();
        Assert.Equal(ShareState.Waiting, shared.State);

        server.Instead = null;
        await shared.SyncAsync();

        Assert.Equal(ShareState.Together, shared.State);
        Assert.Equal("a1", PlanPath.TextAt(plan.Root, "siteBook[0].id"));
    }

    /// <summary>A server that keeps one plan and has one entry; what is pushed takes the place of what it had.</summary>
    private sealed class Kept(string document) : HttpMessageHandler
    {
        private int version = 1;

        public string Document { get; private set; } = document;

        public string? Instead { get; set; }

        protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
        {
            string path = request.RequestUri!.AbsolutePath;
            if (Instead is not null) return Answer(Instead);
            if (path.EndsWith("/events", StringComparison.Ordinal)) return Answer("");
            if (path.EndsWith("/entries", StringComparison.Ordinal)) return Answer("""{"receipts":[]}""");
            if (path.EndsWith("/document", StringComparison.Ordinal))
            {
                Document = PlanPath.TextAt(JsonNode.Parse(await request.Content!.ReadAsStringAsync(cancellationToken))!, "document");
                return Answer(new JsonObject { ["version"] = ++version, ["document"] = Document, ["undecided"] = new JsonArray() }.ToJsonString());
            }
            JsonObject entry = new() { ["cursor"] = 1, ["entry"] = JsonNode.Parse("""{"id":"a1","at":"2026-04-18T12:00:00Z","kind":"note","of":"film","note":"came"}""") };
            return Answer(new JsonObject
            {
                ["link"] = "edit",
                ["epoch"] = "e",
                ["version"] = version,
                ["cursor"] = 1,
                ["entries"] = new JsonArray(entry),
                ["more"] = false,
                ["serverTime"] = "2026-04-18T12:00:00+00:00",
                ["document"] = Document,
            }.ToJsonString());
        }

        private static HttpResponseMessage Answer(string body) => new(HttpStatusCode.OK) { Content = new StringContent(body, Encoding.UTF8, "application/json") };
    }

    /// <summary>What the browser remembers.</summary>
    private sealed class Memory : Dictionary<string, string>, IJSRuntime, IJSObjectReference
    {
        public ValueTask<T> InvokeAsync<T>(string identifier, object?[]? args) => InvokeAsync<T>(identifier, CancellationToken.None, args);

        public ValueTask<T> InvokeAsync<T>(string identifier, CancellationToken cancellationToken, object?[]? args)
        {
            if (identifier == "remember") this[(string)args![0]!] = (string)args[1]!;
            object? answer = identifier == "import" ? this : identifier == "recall" ? this.GetValueOrDefault((string)args![0]!) : null;
            return ValueTask.FromResult((T)answer!);
        }

        public ValueTask DisposeAsync() => ValueTask.CompletedTask;
    }
}
