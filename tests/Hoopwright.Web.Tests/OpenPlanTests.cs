using System.Text.Json.Nodes;
using Hoopwright.Web.Offline;
using Hoopwright.Web.State;

namespace Hoopwright.Web.Tests;

public sealed class OpenPlanTests
{
    [Fact]
    public async Task A_change_holds_on_the_page_before_the_device_has_kept_it()
    {
        SlowShelf shelf = new("""{"frame":{"span":"26 ft"}}""");
        using OpenPlan plan = new(shelf);
        Assert.True(await plan.OpenAsync("a"));
        Task kept = plan.SetAsync("frame.span", JsonValue.Create("30 ft"));
        Assert.Equal("30 ft", PlanPath.TextAt(plan.Root, "frame.span"));
        Assert.Contains("30 ft", plan.Document, StringComparison.Ordinal);
        shelf.Answer();
        await kept;
        Assert.Null(plan.Fault);
        Assert.Equal("30 ft", PlanPath.TextAt(plan.Root, "frame.span"));
    }

    [Fact]
    public async Task What_another_tab_changed_comes_in_and_what_is_still_on_its_way_is_not_lost()
    {
        SlowShelf shelf = new("""{"frame":{"span":"26 ft"}}""");
        using OpenPlan plan = new(shelf);
        await plan.OpenAsync("a");
        Task first = plan.SetAsync("frame.span", JsonValue.Create("28 ft")), second = plan.SetAsync("frame.length", JsonValue.Create("48 ft"));
        shelf.Document["name"] = "from the other tab";
        shelf.Answer();
        await first;
        Assert.Equal(("28 ft", "48 ft", "from the other tab"), (PlanPath.TextAt(plan.Root, "frame.span"), PlanPath.TextAt(plan.Root, "frame.length"), PlanPath.TextAt(plan.Root, "name")));
        shelf.Answer();
        await second;
        Assert.Equal("48 ft", PlanPath.TextAt(plan.Root, "frame.length"));
    }

    [Fact]
    public async Task What_could_not_be_kept_is_kept_in_its_turn_once_there_is_room()
    {
        SlowShelf shelf = new("""{"frame":{"span":"26 ft"}}""") { IsFull = true };
        using OpenPlan plan = new(shelf);
        await plan.OpenAsync("a");
        Task first = plan.SetAsync("frame.span", JsonValue.Create("28 ft"));
        shelf.Answer();
        await first;
        Assert.Equal("full", plan.Fault?.Fault);
        shelf.IsFull = false;
        Task second = plan.SetAsync("frame.length", JsonValue.Create("48 ft"));
        shelf.Answer();
        shelf.Answer();
        await second;
        Assert.Null(plan.Fault);
        Assert.Equal("""{"frame":{"span":"28 ft","length":"48 ft"}}""", shelf.Document.ToJsonString());
    }

    [Fact]
    public async Task An_answer_that_the_plan_is_as_the_page_knows_it_leaves_it_so()
    {
        SlowShelf shelf = new("""{"frame":{"span":"26 ft"}}""") { IsKnown = true };
        using OpenPlan plan = new(shelf);
        await plan.OpenAsync("a");
        Task first = plan.SetAsync("frame.span", JsonValue.Create("28 ft")), second = plan.SetAsync("frame.length", JsonValue.Create("48 ft"));
        shelf.Answer();
        await first;
        shelf.Answer();
        await second;
        Assert.Equal((true, false), (plan.CanUndo, plan.CanRedo));
        Assert.Equal(shelf.Document.ToJsonString(), plan.Document);
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("{\"name\":")]
    public async Task A_text_that_is_no_plan_is_not_opened(string text)
    {
        using OpenPlan plan = new(new SlowShelf("{}") { Text = text });
        Assert.False(await plan.OpenAsync("a"));
        Assert.Equal(text, plan.Refused?.Document);
    }

    [Fact]
    public async Task Of_fields_that_stand_twice_no_value_is_taken_before_someone_chooses()
    {
        // As the browser reads it, and as it stands.
        SlowShelf shelf = new("""{"site":{"roomLeft":"8 ft"},"name":"A"}""") { Text = """{"site":{"soil":"loam","soil":"clay","roomLeft":"9 ft"},"name":"A","site":{"roomLeft":"8 ft"}}""" };
        using OpenPlan plan = new(shelf);
        await plan.OpenAsync("a");
        Task kept = plan.SetAsync("name", JsonValue.Create("B"));
        for (int answers = 0; answers < 3 && !kept.IsCompleted; answers++) shelf.Answer();
        await kept;
        const string Both = """{"site":{"soil":["loam","clay"],"roomLeft":["9 ft","8 ft"]},"name":"B"}""";
        Assert.Equal(Both, plan.Document);
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(Both), shelf.Document));
        Task chosen = plan.SetAsync("site.soil", JsonValue.Create("clay"));
        shelf.Answer();
        await chosen;
        Assert.Equal("clay", PlanPath.TextAt(shelf.Document, "site.soil"));
    }

    /// <summary>A shelf that answers a change when it is told to.</summary>
    private sealed class SlowShelf(string document) : IShelf
    {
        private readonly Queue<(Change Change, TaskCompletionSource<ShelfAnswer> Answer)> asked = new();

        public event Action<string>? ChangedElsewhere
        {
            add { }
            remove { }
        }

        public JsonObject Document { get; } = JsonNode.Parse(document)!.AsObject();

        public bool IsFull { get; set; }

        public bool IsKnown { get; init; }

        public string? Text { get; init; }

        public void Answer()
        {
            (Change change, TaskCompletionSource<ShelfAnswer> answer) = asked.Dequeue();
            if (!IsFull) change.MakeIn(Document);
            answer.SetResult(IsFull ? new ShelfAnswer { Fault = "full" } : IsKnown ? Whole() with { Same = true, Document = "" } : Whole());
        }

        public Task<ShelfAnswer> ChangeAsync(string id, string path, string? value)
        {
            TaskCompletionSource<ShelfAnswer> answer = new();
            asked.Enqueue((new Change(path, value), answer));
            return answer.Task;
        }

        public Task<ShelfAnswer> LoadAsync(string id) => throw new NotSupportedException();

        public Task<ShelfAnswer> OpenAsync(string id)
        {
            ShelfAnswer whole = Whole();
            return Task.FromResult(Text is null ? whole : whole with { Document = Text });
        }

        public Task<ShelfState> StateAsync() => throw new NotSupportedException();

        public Task<ShelfAnswer> ListAsync() => throw new NotSupportedException();

        public Task<ShelfAnswer> AddAsync(string id, string name, string document) => throw new NotSupportedException();

        public Task<ShelfAnswer> RemoveAsync(string id) => throw new NotSupportedException();

        public Task<ShelfAnswer> TurnAsync(string id, bool back) => throw new NotSupportedException();

        private ShelfAnswer Whole() => new() { Ok = true, Found = true, At = 1, Of = 1, Document = Document.ToJsonString() };
    }
}
