using System.Text.Json.Nodes;
using Hoopwright.Web.Offline;
using Hoopwright.Web.State;

namespace Hoopwright.Web.Tests;

/// <summary>A shelf without a browser, with one plan on it.</summary>
internal sealed class OneShelf : IShelf
{
    public event Action<string>? ChangedElsewhere
    {
        add { }
        remove { }
    }

    public string Document { get; set; } = "{}";

    public Task<ShelfAnswer> LoadAsync(string id) => Task.FromResult(new ShelfAnswer { Ok = true, Found = true, At = 1, Of = 1, Document = Document });

    public Task<ShelfAnswer> OpenAsync(string id) => LoadAsync(id);

    public Task<ShelfAnswer> ListAsync() => throw new NotSupportedException();

    public Task<ShelfState> StateAsync() => throw new NotSupportedException();

    public Task<ShelfAnswer> AddAsync(string id, string name, string document) => throw new NotSupportedException();

    public Task<ShelfAnswer> RemoveAsync(string id) => throw new NotSupportedException();

    public Task<ShelfAnswer> ChangeAsync(string id, string path, string? value)
    {
        JsonNode plan = JsonNode.Parse(Document)!;
        new Change(path, value).MakeIn(plan);
        Document = plan.ToJsonString();
        return LoadAsync(id);
    }

    public Task<ShelfAnswer> TurnAsync(string id, bool back) => throw new NotSupportedException();
}
