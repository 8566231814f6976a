using Hoopwright.Server.Storage;
using Hoopwright.Sharing;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Hoopwright.Server.Api;

/// <summary>Sharing a plan anew, and asking whether the server works: what needs no link.</summary>
internal static class ShareEndpoints
{
    public static void Map(RouteGroupBuilder root)
    {
        RouteGroupBuilder api = root.MapGroup("").WithTags("Sharing");
        api.MapPost("/shares", ShareAsync).RequireRateLimiting(RateLimits.Sharing)
            .WithName("share").WithSummary("Shares a plan. The keeper key in the answer is told only here.").Produces<NewShareAnswer>(201).Refuses(400, 413, 429, 507);
        api.MapGet("/health", HealthAsync).WithName("health").WithSummary("Tells that the server works and its database can be read.").Refuses(503);
    }

    private static async Task<IResult> ShareAsync(NewShare share, ShareStore store)
    {
        if (NameCheck.Look(share.By) is { } wrong) return wrong.Answer();
        (string? document, SharingProblem? unreadable) = DocumentMerge.Look(share.Document);
        if (document is null) return unreadable!.Answer();
        string key = await store.CreateAsync(document, share.By);
        return TypedResults.Created("/api/v1/plan", new NewShareAnswer(key, 1));
    }

    private static async Task<Ok<ServerHealth>> HealthAsync(ShareStore store, IDatabase database, TimeProvider clock)
    {
        await store.CheckAsync();
        return TypedResults.Ok(new ServerHealth("ok", database.Kind, clock.GetUtcNow()));
    }
}
