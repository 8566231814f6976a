using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Web.Offline;

namespace Hoopwright.Web.State;

/// <summary>The plan that is open: its text as it stands on the shelf, and the way to change it.</summary>
/// <param name="shelf">Where it is kept.</param>
public sealed class OpenPlan(IShelf shelf) : IDisposable
{
    private static readonly JsonSerializerOptions Compact = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    // Changes that hold on this page: on their way to the shelf, and those that the shelf could not take.
    private readonly List<Change> sent = [], unkept = [];
    private ImmutableArray<Change> doubled = [];
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
        Root = new JsonObject();
        Clear();
        Take(new ShelfAnswer { Document = document }, isOpening: true);
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
        ShelfAnswer answer = await shelf.OpenAsync(id);
        Refused = null;
        if (!answer.Ok || !answer.Found || !PlanText.TryTree(answer.Document, out JsonNode kept, out ImmutableArray<Change> twice))
        {
            Refused = answer;
            return false;
        }
        if (Id != id || Fault is not null) Clear();
        Id = id;
        isNowhere = false;
        Take(answer, kept, twice, isOpening: true);
        return true;
    }

    /// <summary>
    /// Changes one value. It holds on this page at once, so that nothing waits for the device, and is kept in its turn; when it
    /// cannot be kept it still holds on this page.
    /// </summary>
    /// <param name="path">The value's path.</param>
    /// <param name="value">The value; null leaves the field out.</param>
    public Task SetAsync(string path, JsonNode? value) => MakeAsync([new Change(path, value?.ToJsonString(Compact))]);

    /// <summary>
    /// Makes the plan say what work done elsewhere makes of it, section by section, each as a change that can be taken back. Where it
    /// was changed while that went on, the work is done again on what it says by then: nothing typed meanwhile is lost.
    /// </summary>
    /// <param name="work">Takes the plan as it is and gives the text that it is to be; none leaves it as it is.</param>
    public async Task ReworkAsync(Func<JsonNode, Task<string>> work)
    {
        ArgumentNullException.ThrowIfNull(work);
        string id = Id;
        JsonNode from;
        string document;
        do
        {
            from = Root;
            document = await work(from);
            if (id != Id || document.Length == 0) return;
        }
        while (!ReferenceEquals(from, Root));
        if (PlanText.Tree(document) is not JsonObject wanted || from is not JsonObject now) return;
        ImmutableArray<Change> changes =
        [
            .. from section in now.Select(each => each.Key).Union(wanted.Select(each => each.Key), StringComparer.Ordinal)
               where !JsonNode.DeepEquals(wanted[section], now[section])
               select new Change(section, wanted[section]?.ToJsonString(Compact)),
        ];
        if (!changes.IsEmpty) await MakeAsync(changes);
    }

    /// <summary>Takes the last change back.</summary>
    /// <returns>The path it was made at; null when there was none.</returns>
    public Task<string?> UndoAsync() => TurnAsync(back: true);

    /// <summary>Makes the change again that was taken back.</summary>
    /// <returns>The path it was made at; null when there was none.</returns>
    public Task<string?> RedoAsync() => TurnAsync(back: false);

    /// <inheritdoc/>
    public void Dispose() => shelf.ChangedElsewhere -= Follow;

    private async Task MakeAsync(ImmutableArray<Change> wanted)
    {
        // Before the first change, what stands twice is told to the shelf, which would keep the last of it without a word.
        ImmutableArray<Change> changes = [.. doubled.Where(change => wanted.All(each => each.Path != change.Path)), .. wanted];
        doubled = [];
        // A tree of its own, made from the text: of a long site book that costs less than copying one that was looked at.
        JsonNode root = PlanText.Tree(Document);
        foreach (Change change in changes) change.MakeIn(root);
        (Root, Document) = (root, root.ToJsonString(Compact));
        if (Fault is not null)
        {
            unkept.AddRange(changes);
            Changed?.Invoke();
            await CatchUpAsync();
            return;
        }
        sent.AddRange(changes);
        Changed?.Invoke();
        await Task.WhenAll(changes.Select(change => SendAsync(Id, change)).ToArray());
    }

    private async Task SendAsync(string id, Change change)
    {
        ShelfAnswer answer = await shelf.ChangeAsync(id, change.Path, change.Json);
        // Another plan may be open by now.
        if (!sent.Remove(change)) return;
        if (!answer.Ok)
        {
            unkept.Add(change);
            (Fault, CanUndo, CanRedo) = (answer, false, false);
            Changed?.Invoke();
        }
        else if (unkept.Count == 0) Take(answer);
        else await CatchUpAsync();
    }

    // Tries again to put on the shelf what only this page holds, in the order it was entered.
    private async Task CatchUpAsync()
    {
        if (isCatchingUp) return;
        isCatchingUp = true;
        ShelfAnswer answer = new() { Ok = true };
        if (isNowhere)
        {
            int held = unkept.Count;
            answer = await shelf.AddAsync(Id, PlanPath.TextAt(Root, "name"), Document);
            if (answer.Ok)
            {
                unkept.RemoveRange(0, held);
                isNowhere = false;
                answer = await shelf.OpenAsync(Id);
            }
        }
        while (answer.Ok && unkept.Count > 0)
        {
            answer = await shelf.ChangeAsync(Id, unkept[0].Path, unkept[0].Json);
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

    private void Clear()
    {
        sent.Clear();
        unkept.Clear();
    }

    private void Take(ShelfAnswer answer, bool isOpening = false)
    {
        if (answer.Same || !PlanText.TryTree(answer.Document, out JsonNode kept, out ImmutableArray<Change> twice)) Take(answer, null, doubled, isOpening);
        else Take(answer, kept, twice, isOpening);
    }

    // What the shelf has, and on it what is still on its way there; none where the page knows it.
    private void Take(ShelfAnswer answer, JsonNode? kept, ImmutableArray<Change> twice, bool isOpening)
    {
        (ShelfAnswer? fault, bool canUndo, bool canRedo, string document) = (Fault, CanUndo, CanRedo, Document);
        Fault = null;
        if (sent.Count == 0) doubled = twice;
        if (kept is not null)
        {
            foreach (Change change in sent) change.MakeIn(kept);
            // Mostly that is what the page holds already, and then nothing needs to be worked out again.
            if (!JsonNode.DeepEquals(kept, Root)) (Root, Document) = (kept, sent.Count == 0 ? answer.Document : kept.ToJsonString(Compact));
        }
        CanUndo = answer.At > 0;
        CanRedo = answer.At < answer.Of;
        if (isOpening || fault is not null || (canUndo, canRedo, document) != (CanUndo, CanRedo, Document)) Changed?.Invoke();
    }

    private void Follow(string id)
    {
        if (id == Id) _ = OpenAsync(id);
    }
}
