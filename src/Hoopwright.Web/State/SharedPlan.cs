using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Sharing;
using Hoopwright.Web.Engine;

namespace Hoopwright.Web.State;

/// <summary>
/// Brings the open plan together with the copy that a server keeps: entries both ways, changes of the plan by merging, at once where there is
/// a network and later where there is none. What is on the device always comes first: nothing waits for the server.
/// </summary>
/// <param name="plan">The open plan.</param>
/// <param name="engine">Puts copies together.</param>
/// <param name="scribe">Who writes on this device.</param>
/// <param name="script">Keeps what is remembered of the server.</param>
/// <param name="http">Reaches the server that the app came from.</param>
/// <param name="clock">Waits.</param>
public sealed class SharedPlan(OpenPlan plan, IEngine engine, Scribe scribe, PageScript script, HttpClient http, TimeProvider clock) : IDisposable
{
    private const string Book = "siteBook";
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(700), Again = TimeSpan.FromSeconds(5), Patience = TimeSpan.FromMinutes(1);
    private CancellationTokenSource? listening;
    private string followed = "", synced = "";
    private bool isBusy, isAsked, isWatching;
    private ITimer? timer;

    /// <summary>Something of it changed.</summary>
    public event Action? Changed;

    /// <summary>How things stand.</summary>
    public ShareState State { get; private set; }

    /// <summary>What the server said when it did not do what was asked; empty when all is well.</summary>
    public string Said { get; private set; } = "";

    /// <summary>When device and server were last alike; null when they never were.</summary>
    public DateTimeOffset? At { get; private set; }

    /// <summary>What is remembered of the server; null when the plan is shared with none.</summary>
    public ShareRecord? Record { get; private set; }

    /// <summary>The client for the link of this device; null when there is none.</summary>
    public SharedPlanClient? Client => Record is { } record ? new(http, record.Token) : null;

    /// <summary>Starts to follow the open plan.</summary>
    public async Task FollowAsync()
    {
        if (!isWatching)
        {
            isWatching = true;
            plan.Changed += Kick;
        }
        if (followed == plan.Id) return;
        Stop();
        (followed, synced, Said, At) = (plan.Id, "", "", null);
        await scribe.RecallAsync();
        Record = ShareRecord.Read(await script.RecallAsync(Name(followed)));
        State = Record is null ? ShareState.Alone : ShareState.Waiting;
        Changed?.Invoke();
        Begin();
    }

    /// <summary>Hands the open plan to the server.</summary>
    public async Task ShareAsync()
    {
        try
        {
            string document = WithoutBook(plan.Root);
            NewShareAnswer answer = await SharedPlanClient.ShareAsync(http, new(document, scribe.By.Length == 0 ? null : scribe.By));
            await KeepAsync(ShareRecord.New(answer.KeeperKey, LinkKind.Keeper) with { Base = document });
            Begin();
        }
        catch (Exception fault) when (fault is HttpRequestException or SharingException)
        {
            Told(fault);
        }
    }

    /// <summary>Forgets the server; the plan stays on this device as it is.</summary>
    public async Task LeaveAsync()
    {
        Stop();
        Record = null;
        await ForgetAsync(followed);
        (State, Said) = (ShareState.Alone, "");
        Changed?.Invoke();
    }

    /// <summary>Keeps a link for a plan of the shelf.</summary>
    /// <param name="id">The plan.</param>
    /// <param name="record">The link.</param>
    public Task AdoptAsync(string id, ShareRecord record) => script.RememberAsync(Name(id), record.Write());

    /// <summary>The plan that a link brought to this device before; null when there is none.</summary>
    /// <param name="plans">The plans of the shelf.</param>
    /// <param name="token">The secret part of the link.</param>
    public async Task<string?> FindAsync(IEnumerable<string> plans, string token)
    {
        foreach (string id in plans)
        {
            if (ShareRecord.Read(await script.RecallAsync(Name(id)))?.Token == token) return id;
        }
        return null;
    }

    /// <summary>Forgets the link of a plan that was taken off the shelf.</summary>
    /// <param name="id">The plan.</param>
    public Task ForgetAsync(string id) => script.RememberAsync(Name(id), "");

    /// <summary>The network came back.</summary>
    public void NetworkCame() => Begin();

    /// <summary>Brings device and server together; what happens meanwhile is brought together after it.</summary>
    public async Task SyncAsync()
    {
        isAsked = true;
        if (isBusy) return;
        isBusy = true;
        try
        {
            while (isAsked && Record is not null && State != ShareState.Gone)
            {
                isAsked = false;
                (State, Said) = (ShareState.Working, "");
                Changed?.Invoke();
                try
                {
                    await OnceAsync();
                    (State, At) = (ShareState.Together, clock.GetUtcNow());
                }
                catch (Exception fault) when (fault is HttpRequestException or SharingException or EngineException)
                {
                    Told(fault);
                    if (State == ShareState.Waiting) Later(fault is SharingException { RetryAfter: { } wait } ? wait : Again);
                }
                Changed?.Invoke();
            }
        }
        finally
        {
            isBusy = false;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        plan.Changed -= Kick;
        Stop();
    }

    private static string Name(string id) => "share." + id;

    private static string WithoutBook(JsonNode root)
    {
        JsonNode copy = root.DeepClone();
        (copy as JsonObject)?.Remove(Book);
        return copy.ToJsonString();
    }

    private static string IdOf(JsonNode? entry) => PlanPath.TextAt(entry, "id");

    private async Task OnceAsync()
    {
        string id = followed;
        SharedPlanClient client = Client!;
        ShareRecord record = Record!;
        PlanState state = await client.GetAsync(record.Cursor, record.Version);
        if (record.Epoch.Length > 0 && record.Epoch != state.Epoch)
        {
            // Restored from a backup, the server may lack what it had acknowledged.
            record = record with { Cursor = 0, Version = 0, Known = [] };
            state = await client.GetAsync();
        }
        List<JsonElement> came = [.. state.Entries.Select(each => each.Entry)];
        while (state.More)
        {
            PlanState more = await client.GetAsync(state.Cursor, state.Version);
            came.AddRange(more.Entries.Select(each => each.Entry));
            state = more with { Document = more.Document ?? state.Document };
        }
        string document = state.Document ?? record.Base, local = WithoutBook(plan.Root);
        long version = state.Version;
        string mine = await MineAsync(record.Base, local), both = await MergedAsync(mine, document);
        if (state.Link is LinkKind.Edit or LinkKind.Keeper && !Same(both, document))
        {
            DocumentPushAnswer answer = await client.PushAsync(new DocumentPush(both, scribe.By.Length == 0 ? null : scribe.By));
            (document, version) = (answer.Document, answer.Version);
            both = await MergedAsync(both, document);
        }
        if (id != followed || Record is null) return;
        await plan.ReworkAsync(async root =>
        {
            if (WithoutBook(root) is { } now && now != local)
            {
                (mine, local) = (await MineAsync(mine, now), now);
                both = await MergedAsync(both, mine);
            }
            return await MergedAsync(WithBook(both, []), WithBook(BookOf(root), came));
        });
        // Somebody may have left meanwhile, or opened another plan.
        if (id != followed || Record is null) return;
        HashSet<string> known = [.. record.Known, .. came.Select(entry => IdOf(JsonNode.Parse(entry.GetRawText())))];
        await KeepAsync(record with { Kind = state.Link, Epoch = state.Epoch, Cursor = state.Cursor, Version = version, Base = document, Known = known });
        if (state.Link != LinkKind.Read) await PushEntriesAsync(client);
        synced = plan.Document;
    }

    // Entries that the server does not have, in as many pushes as it takes.
    private async Task PushEntriesAsync(SharedPlanClient client)
    {
        if (Record is not { } record) return;
        JsonElement[] left = [.. ((plan.Root[Book] as JsonArray) ?? []).Where(entry => IdOf(entry) is { Length: > 0 } id && !record.Known.Contains(id)).Select(entry => JsonElement.Parse(entry!.ToJsonString()))];
        while (left.Length > 0)
        {
            int fits = 0, bytes = 0;
            while (fits < left.Length && fits < SharingLimits.EntriesPerPush && (fits == 0 || bytes + left[fits].GetRawText().Length < SharingLimits.BodyBytes / 4)) bytes += left[fits++].GetRawText().Length;
            EntryPushAnswer answer = await client.PushAsync(new EntryPush([.. left[..fits]]));
            if (Record is null) return;
            HashSet<string> known = [.. Record.Known, .. left[..fits].Select(entry => entry.GetProperty("id").GetString()!)];
            await KeepAsync(Record with { Known = known });
            if (answer.Receipts.FirstOrDefault(receipt => receipt.Outcome == EntryOutcome.Refused) is { Why: { } why }) Said = why;
            left = left[fits..];
        }
    }

    private async Task<string> MineAsync(string before, string now) =>
        Same(before, now) ? before : await engine.RecordAsync(before, now, scribe.NewId(), scribe.By, scribe.Device) is { Length: > 0 } recorded ? recorded : now;

    private async Task<string> MergedAsync(string one, string other)
    {
        JsonElement merged = JsonElement.Parse(await engine.MergeAsync(one, other));
        return Results.Word(merged, "document") is { Length: > 0 } document ? document
            : throw new EngineException(string.Join(' ', Results.Items(Results.Find(merged, "faults")).Select(fault => fault.GetString())));
    }

    private static string BookOf(JsonNode root) => new JsonObject { [Book] = root[Book]?.DeepClone() ?? new JsonArray() }.ToJsonString();

    private static string WithBook(string document, IEnumerable<JsonElement> more)
    {
        JsonObject root = JsonNode.Parse(document)!.AsObject();
        JsonArray book = root[Book] as JsonArray ?? [];
        root.Remove(Book);
        foreach (JsonElement entry in more) book.Add(JsonNode.Parse(entry.GetRawText()));
        if (book.Count > 0) root[Book] = book;
        return root.ToJsonString();
    }

    private static bool Same(string one, string other) => one == other || JsonNode.DeepEquals(JsonNode.Parse(one), JsonNode.Parse(other));

    private Task KeepAsync(ShareRecord record)
    {
        Record = record;
        return script.RememberAsync(Name(followed), record.Write());
    }

    private void Told(Exception fault)
    {
        (State, Said) = fault is SharingException { Problem.Status: 404 or 401 or 403 } && Record is not null ? (ShareState.Gone, fault.Message)
            : (Record is null ? ShareState.Alone : ShareState.Waiting, fault is SharingException or EngineException || Record is null ? fault.Message : "");
        Changed?.Invoke();
    }

    private void Kick()
    {
        if (plan.Id != followed) _ = FollowAsync();
        else if (Record is not null && plan.Document != synced) Later(Pause);
    }

    private void Later(TimeSpan wait)
    {
        timer?.Dispose();
        timer = clock.CreateTimer(_ => _ = SyncAsync(), null, wait < Patience ? wait : Patience, Timeout.InfiniteTimeSpan);
    }

    private void Begin()
    {
        if (Record is null || State == ShareState.Gone) return;
        _ = SyncAsync();
        if (listening is null) _ = ListenAsync((listening = new()).Token);
    }

    // The server tells at once and then of every change; when it cannot be reached it is tried again after a while.
    private async Task ListenAsync(CancellationToken stop)
    {
        while (!stop.IsCancellationRequested && Client is { } client)
        {
            try
            {
                await foreach (PlanChange change in client.ChangesAsync(clock, stop))
                {
                    if (Record is { } record && (change.Version != record.Version || change.Cursor != record.Cursor)) await SyncAsync();
                }
            }
            catch (Exception fault) when (fault is HttpRequestException or SharingException or IOException or OperationCanceledException)
            {
                if (fault is SharingException { Problem.Status: 404 or 401 or 403 })
                {
                    Told(fault);
                    return;
                }
            }
            if (stop.IsCancellationRequested) return;
            await Task.Delay(Again, clock, CancellationToken.None);
            if (State == ShareState.Waiting) await SyncAsync();
        }
    }

    private void Stop()
    {
        timer?.Dispose();
        timer = null;
        listening?.Cancel();
        listening?.Dispose();
        listening = null;
    }
}
