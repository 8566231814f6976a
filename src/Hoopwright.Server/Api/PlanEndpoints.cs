using System.Collections.Immutable;
using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using System.Text.Json;
using Hoopwright.Server.Storage;
using Hoopwright.Sharing;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Hoopwright.Server.Api;

/// <summary>What devices do all day: ask what changed, push entries and plans, wait for changes.</summary>
internal static class PlanEndpoints
{
    /// <summary>How long a waiting page hears nothing at most, so that neither it nor what is in between takes the line for dead.</summary>

    public static void Map(RouteGroupBuilder root)
    {
        RouteGroupBuilder api = root.MapGroup("").WithTags("Plan");
        api.MapGet("/plan", GetAsync).Needs(LinkKind.Read).WithName("getPlan").WithSummary("The plan, unless the device has this version, and the entries after a cursor.").Produces<PlanState>();
        api.MapPost("/plan/entries", AddAsync).Needs(LinkKind.Add).WithName("pushEntries").WithSummary("Adds entries to the site book; sending them twice adds them once.").Produces<EntryPushAnswer>().Refuses(400, 413, 507);
        api.MapPost("/plan/document", ChangeAsync).Needs(LinkKind.Edit).WithName("pushDocument").WithSummary("Changes the plan; the server puts it together with what others changed.").Produces<DocumentPushAnswer>().Refuses(400, 413, 507);
        api.MapGet("/plan/events", Wait).Needs(LinkKind.Read).RequireRateLimiting(RateLimits.Waiting)
            .WithName("planEvents").WithSummary("Server-sent events: `changed` with version and cursor, at once and whenever they change; `alive` now and then; `ended` when the link no longer works.").Produces<PlanChange>(200, "text/event-stream");
    }

    private static async Task<IResult> GetAsync(Link link, ShareStore store, TimeProvider clock, long after = 0, long version = 0)
    {
        if (after < 0 || version < 0) return Problems.Malformed("Cursor and version are 0 or more.").Answer();
        if (await store.ReadAsync(link.Access, after, version) is not var (head, document, entries)) return Problems.UnknownLink.Answer();
        long cursor = entries.Count > 0 ? entries[^1].Cursor : Math.Min(after, head.Cursor);
        return TypedResults.Ok(new PlanState(link.Access.Kind, head.Epoch, head.Version, cursor, [.. entries.Select(Shared)], cursor < head.Cursor, clock.GetUtcNow(), document));
    }

    private static async Task<IResult> AddAsync(EntryPush push, Link link, ShareStore store, ChangeFeed feed, TimeProvider clock)
    {
        if (push.Entries.IsDefault || push.Entries.Length > SharingLimits.EntriesPerPush) return Problems.TooLarge($"At most {SharingLimits.EntriesPerPush} entries are pushed at once. Send the rest in further requests.").Answer();
        DateTimeOffset now = clock.GetUtcNow();
        (IncomingEntry? Kept, EntryReceipt? Refused)[] looked = [.. push.Entries.Select(entry => EntryCheck.Look(entry, now))];
        if (await store.AddAsync(link.Access, [.. looked.Where(each => each.Kept is not null).Select(each => each.Kept!)]) is not { } kept) return Problems.UnknownLink.Answer();
        if (kept.Any(receipt => receipt.Outcome is EntryOutcome.Added or EntryOutcome.KeptBoth)) feed.Tell(link.Access.ShareId);
        Queue<EntryReceipt> next = new(kept);
        return TypedResults.Ok(new EntryPushAnswer([.. looked.Select(each => each.Refused ?? next.Dequeue())], clock.GetUtcNow()));
    }

    private static async Task<IResult> ChangeAsync(DocumentPush push, Link link, ShareStore store, ChangeFeed feed)
    {
        if (NameCheck.Look(push.By) is { } wrong) return wrong.Answer();
        (string? document, SharingProblem? unreadable) = DocumentMerge.Look(push.Document);
        if (document is null) return unreadable!.Answer();
        ImmutableArray<string> undecided = [];
        SharingProblem? refused = null;
        bool differs = false;
        ShareText? changed = await store.ChangeAsync(link.Access, push.By, kept =>
        {
            (string joined, undecided, refused) = DocumentMerge.Join(kept, document);
            differs = joined != kept;
            return joined;
        });
        if (changed is null) return Problems.UnknownLink.Answer();
        if (refused is not null) return refused.Answer();
        if (differs) feed.Tell(link.Access.ShareId);
        return TypedResults.Ok(new DocumentPushAnswer(changed.Version, changed.Document, undecided));
    }

    private static ServerSentEventsResult<PlanChange> Wait(Link link, ShareStore store, ChangeFeed feed, TimeProvider clock, IHostApplicationLifetime lifetime, CancellationToken gone) =>
        TypedResults.ServerSentEvents(EventsAsync(link.Access, store, feed, clock, lifetime.ApplicationStopping, gone));

    private static async IAsyncEnumerable<SseItem<PlanChange>> EventsAsync(
        LinkAccess access, ShareStore store, ChangeFeed feed, TimeProvider clock, CancellationToken stopping, [EnumeratorCancellation] CancellationToken gone)
    {
        using CancellationTokenSource either = CancellationTokenSource.CreateLinkedTokenSource(stopping, gone);
        using ChangeFeed.Waiter waiter = feed.Wait(access.ShareId);
        ShareHead? told = null;
        while (!either.IsCancellationRequested)
        {
            // Looked up each time: a revoked link hears nothing more, and another server on the same database is noticed.
            if (await store.HeadAsync(access) is not { } head) break;
            yield return new SseItem<PlanChange>(new PlanChange(head.Version, head.Cursor), head == told ? "alive" : "changed");
            told = head;
            if (!await waiter.NextAsync(SignsOfLife.Alive, clock, either.Token)) yield break;
        }
        yield return new SseItem<PlanChange>(new PlanChange(0, 0), "ended");
    }

    private static SharedEntry Shared(StoredEntry entry)
    {
        using JsonDocument body = JsonDocument.Parse(entry.Body);
        return new SharedEntry(entry.Cursor, body.RootElement.Clone(), entry.AheadSeconds);
    }
}
