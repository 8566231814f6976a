using System.Text.Json.Nodes;
using Hoopwright.Web.Offline;

namespace Hoopwright.Web.State;

/// <summary>The plan that is open: its text as it stands on the shelf, and the way to change it.</summary>
/// <param name="shelf">Where it is kept.</param>
public sealed class OpenPlan(IShelf shelf) : IDisposable
{
    private readonly List<(string Path, JsonNode? Value)> unkept = [];
    private bool watching, isNowhere, isCatchingUp;

    /// <summary>Something of the plan changed.</summary>
    public event Action? Changed;

    /// <summary>Its identity on the shelf; empty when none is open.</summary>
    public string Id { get; private set; } = "";

    /// <summary>The plan as text.</summary>
    public string Document { get; private set; } = "{}";

    /// <summary>The plan as a tree, to look values up in.</summary>
    public JsonNode Root { get; private set; } = new JsonObject();

    /// <summary>True when there is a step to take back.</summary>
    public bool CanUndo { get; private set; }

    /// <summary>True when there is a step to take again.</summary>
    public bool CanRedo { get; private set; }

    /// <summary>What went wrong when the last change was kept; null when all is well.</summary>
    public ShelfAnswer? Fault { get; private set; }

    /// <summary>What the shelf answered when the plan last asked for could not be opened; null when it could.</summary>
    public ShelfAnswer? Refused { get; private set; }

    /// <summary>Opens a plan that the shelf could not take; it holds on this page only.</summary>
    /// <param name="id">Its identity.</param>
    /// <param name="document">Its text.</param>
    /// <param name="answer">What the shelf said.</param>
    public void Begin(string id, string document, ShelfAnswer answer)
    {
        Id = id;
        unkept.Clear();
        Take(new ShelfAnswer { Document = document });
        (Fault, isNowhere) = (answer, true);
    }

    /// <summary>Opens a plan; false when there is none or its text is broken.</summary>
    /// <param name="id">Its identity.</param>
    public async Task<bool> OpenAsync(string id)
    {
        if (!watching)
        {
            watching = true;
            shelf.ChangedElsewhere += Follow;
        }
        if (Id == id && Fault is not null) return true;
        ShelfAnswer answer = await shelf.LoadAsync(id);
        Refused = answer.Ok && answer.Found && answer.Sound ? null : answer;
        if (Refused is not null) return false;
        Id = id;
        isNowhere = false;
        unkept.Clear();
        Take(answer);
        return true;
    }

    /// <summary>Changes one value. The change is kept at once; when it cannot be kept it still holds on this page.</summary>
    /// <param name="path">The value's path.</param>
    /// <param name="value">The value; null leaves the field out.</param>
    public async Task SetAsync(string path, JsonNode? value)
    {
        if (Fault is not null)
        {
            KeepHere(path, value, Fault);
            await CatchUpAsync();
            return;
        }
        ShelfAnswer answer = await shelf.ChangeAsync(Id, path, value?.ToJsonString());
        if (answer.Ok) Take(answer);
        else KeepHere(path, value, answer);
    }

    /// <summary>Takes the last change back.</summary>
    /// <returns>The path it was made at; null when there was none.</returns>
    public Task<string?> UndoAsync() => TurnAsync(back: true);

    /// <summary>Makes the change again that was taken back.</summary>
    /// <returns>The path it was made at; null when there was none.</returns>
    public Task<string?> RedoAsync() => TurnAsync(back: false);

    /// <inheritdoc/>
    public void Dispose() => shelf.ChangedElsewhere -= Follow;

    // Tries again to put on the shelf what only this page holds, in the order it was entered.
    private async Task CatchUpAsync()
    {
        if (isCatchingUp) return;
        isCatchingUp = true;
        ShelfAnswer answer = new() { Ok = true };
        if (isNowhere)
        {
            int sent = unkept.Count;
            answer = await shelf.AddAsync(Id, PlanPath.TextAt(Root, "name"), Document);
            if (answer.Ok)
            {
                unkept.RemoveRange(0, sent);
                isNowhere = false;
                answer = await shelf.LoadAsync(Id);
            }
        }
        while (answer.Ok && unkept.Count > 0)
        {
            (string path, JsonNode? value) = unkept[0];
            answer = await shelf.ChangeAsync(Id, path, value?.ToJsonString());
            if (answer.Ok) unkept.RemoveAt(0);
        }
        isCatchingUp = false;
        if (answer.Ok) Take(answer);
        else
        {
            Fault = answer;
            Changed?.Invoke();
        }
    }

    private async Task<string?> TurnAsync(bool back)
    {
        ShelfAnswer answer = await shelf.TurnAsync(Id, back);
        if (answer.Ok && answer.Found) Take(answer);
        else
        {
            Fault = answer;
            Changed?.Invoke();
        }
        return answer.Path;
    }

    private void Take(ShelfAnswer answer)
    {
        Fault = null;
        Document = answer.Document;
        Root = PlanText.Tree(Document);
        CanUndo = answer.At > 0;
        CanRedo = answer.At < answer.Of;
        Changed?.Invoke();
    }

    // The browser refused: the work goes on in this page, which says so and offers to save it as a file.
    private void KeepHere(string path, JsonNode? value, ShelfAnswer answer)
    {
        Fault = answer;
        CanUndo = CanRedo = false;
        unkept.Add((path, value));
        JsonNode root = Root.DeepClone();
        Place(root, path, value?.DeepClone());
        Root = root;
        Document = root.ToJsonString();
        Changed?.Invoke();
    }

    private static void Place(JsonNode root, string path, JsonNode? value)
    {
        int cut = path.LastIndexOfAny(['.', '[']);
        JsonNode? holder = cut < 0 ? root : PlanPath.At(root, path[..cut]);
        string last = path[(cut + 1)..].TrimEnd(']');
        if (holder is JsonObject group)
        {
            if (value is null) group.Remove(last);
            else group[last] = value;
        }
        else if (holder is JsonArray list && int.TryParse(last, out int index))
        {
            if (value is null) list.RemoveAt(index);
            else if (index < list.Count) list[index] = value;
            else list.Add(value);
        }
        else if (holder is null && value is not null && cut > 0)
        {
            Place(root, path[..cut], path[cut] == '[' ? new JsonArray(value) : new JsonObject { [last] = value });
        }
    }

    private void Follow(string id)
    {
        if (id == Id) _ = OpenAsync(id);
    }
}
