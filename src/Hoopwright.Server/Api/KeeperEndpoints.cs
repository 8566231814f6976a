using System.Collections.Immutable;
using Hoopwright.Server.Storage;
using Hoopwright.Sharing;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Net.Http.Headers;

namespace Hoopwright.Server.Api;

/// <summary>What only the keeper of a plan does: links, audit, export, deleting everything.</summary>
internal static class KeeperEndpoints
{
    private const int AuditRowsPerAnswer = 500;

    public static void Map(RouteGroupBuilder root)
    {
        RouteGroupBuilder api = root.MapGroup("").WithTags("Keeper");
        api.MapGet("/plan/links", LinksAsync).Needs(LinkKind.Keeper).WithName("getLinks").WithSummary("The links of the plan, revoked ones among them, without their tokens.");
        api.MapPost("/plan/links", MakeAsync).Needs(LinkKind.Keeper).WithName("makeLink").WithSummary("Makes a link. The token in the answer is told only here.").Produces<NewLinkAnswer>(201).Refuses(400, 409, 413, 507);
        api.MapDelete("/plan/links/{id}", RevokeAsync).Needs(LinkKind.Keeper).WithName("revokeLink").WithSummary("Revokes a link at once and for good.").Produces(204).Refuses(507);
        api.MapGet("/plan/audit", AuditAsync).Needs(LinkKind.Keeper).WithName("getAudit").WithSummary("What was changed, through which link, oldest first.");
        api.MapGet("/plan/export", ExportAsync).Needs(LinkKind.Keeper).WithName("exportPlan").WithSummary("Everything that the server keeps of this plan.").Produces(200, contentType: "application/zip").Refuses(507);
        api.MapDelete("/plan", DeleteAsync).Needs(LinkKind.Keeper).WithName("deletePlan").WithSummary("Deletes plan, site book, links and audit for good.").Produces(204).Refuses(507);
    }

    private static async Task<Ok<ImmutableArray<SharedLink>>> LinksAsync(Link link, ShareStore store) => TypedResults.Ok((await store.LinksAsync(link.Access)).Select(Shared).ToImmutableArray());

    private static async Task<IResult> MakeAsync(NewLink wanted, Link link, ShareStore store)
    {
        if (wanted.Kind == LinkKind.Keeper || !Enum.IsDefined(wanted.Kind)) return Problems.Malformed("A link is to read, add or edit. There is one keeper key, and no other can be made.").Answer();
        if (NameCheck.Look(wanted.Label) is { } wrong) return wrong.Answer();
        return await store.AddLinkAsync(link.Access, wanted.Kind, wanted.Label) is var (id, token)
            ? TypedResults.Created($"/api/v1/plan/links/{id}", new NewLinkAnswer(id, wanted.Kind, token))
            : Problems.TooManyLinks.Answer();
    }

    private static async Task<IResult> RevokeAsync(string id, Link link, ShareStore store, ChangeFeed feed)
    {
        if (!await store.RevokeAsync(link.Access, id)) return Problems.NotThere.Answer();
        // Those who wait look again, and the one with this link sees that it is over.
        feed.Tell(link.Access.ShareId);
        return TypedResults.NoContent();
    }

    private static async Task<Ok<AuditPage>> AuditAsync(Link link, ShareStore store, long after = 0)
    {
        IReadOnlyList<StoredAudit> rows = await store.AuditAsync(link.Access, after, AuditRowsPerAnswer + 1);
        return TypedResults.Ok(new AuditPage([.. rows.Take(AuditRowsPerAnswer).Select(Shared)], rows.Count > AuditRowsPerAnswer));
    }

    private static async Task ExportAsync(Link link, ShareStore store, HttpContext context)
    {
        if (await store.ReadAsync(link.Access, long.MaxValue, 0) is not var (head, document, _) || document is null)
        {
            await Problems.UnknownLink.WriteAsync(context);
            return;
        }
        await store.NoteExportAsync(link.Access);
        // The zip writer packs some of its last bytes without waiting; there are few of them.
        context.Features.GetRequiredFeature<IHttpBodyControlFeature>().AllowSynchronousIO = true;
        context.Response.ContentType = "application/zip";
        context.Response.Headers[HeaderNames.ContentDisposition] = "attachment; filename=\"shared-plan.zip\"";
        await new Export(store, link.Access).WriteAsync(context.Response.Body, document, head, context.RequestAborted);
    }

    private static async Task<NoContent> DeleteAsync(Link link, ShareStore store, ChangeFeed feed)
    {
        await store.DeleteAsync(link.Access);
        feed.Tell(link.Access.ShareId);
        return TypedResults.NoContent();
    }

    internal static SharedLink Shared(StoredLink link) => new(link.Id, link.Kind, Time(link.MadeAt), link.Label, link.RevokedAt is { } revoked ? Time(revoked) : null);

    internal static AuditRow Shared(StoredAudit row) => new(row.Number, Time(row.At), row.LinkId, row.Kind, row.What, row.Detail, row.Label, row.ByName);

    private static DateTimeOffset Time(long milliseconds) => DateTimeOffset.FromUnixTimeMilliseconds(milliseconds);
}
