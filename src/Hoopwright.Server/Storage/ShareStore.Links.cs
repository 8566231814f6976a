using Hoopwright.Sharing;

namespace Hoopwright.Server.Storage;

/// <summary>Links and audit.</summary>
internal sealed partial class ShareStore
{
    /// <summary>The links of a plan, oldest first; the keeper's key is not among them.</summary>
    public Task<IReadOnlyList<StoredLink>> LinksAsync(LinkAccess access) => database.ReadAsync(session => session.ListAsync<StoredLink>(
        "SELECT id AS Id, kind AS Kind, label AS Label, made_at AS MadeAt, revoked_at AS RevokedAt FROM link WHERE share_id = @ShareId AND kind <> 'keeper' ORDER BY made_at, id", access));

    /// <summary>Makes a link.</summary>
    /// <returns>Its id and token; none where the plan has as many as it may.</returns>
    public Task<(string Id, string Token)?> AddLinkAsync(LinkAccess access, LinkKind kind, string? label) => database.WriteAsync<(string, string)?>(async session =>
    {
        await LockAsync(session, access);
        if (await session.GetAsync<long>("SELECT count(*) FROM link WHERE share_id = @ShareId", access) > SharingLimits.LinksPerPlan) return null;
        string id = Token.NewId(), token = Token.New();
        await InsertLinkAsync(session, access.ShareId, id, kind, token, label);
        await NoteAsync(session, access, null, AuditWords.LinkMade, $"A link to {Word(kind)} was made{(label is null ? "" : " for " + label)}.");
        return (id, token);
    });

    /// <summary>Revokes a link of this plan.</summary>
    /// <returns>False where this plan has no such link.</returns>
    public Task<bool> RevokeAsync(LinkAccess access, string id) => database.WriteAsync(async session =>
    {
        await LockAsync(session, access);
        if (await session.FindAsync<StoredLink>("SELECT id AS Id, kind AS Kind, label AS Label, made_at AS MadeAt, revoked_at AS RevokedAt FROM link WHERE share_id = @ShareId AND id = @id AND kind <> 'keeper'", new { access.ShareId, id }) is not { } link)
            return false;
        if (await session.ExecuteAsync("UPDATE link SET revoked_at = @now WHERE id = @id AND revoked_at IS NULL", new { id, now = Now }) > 0)
            await NoteAsync(session, access, null, AuditWords.LinkRevoked, $"The link to {Word(link.Kind)}{(link.Label is null ? "" : " for " + link.Label)} was revoked.");
        return true;
    });

    /// <summary>Changes after a number, oldest first, and one more than fits an answer where there are more.</summary>
    public Task<IReadOnlyList<StoredAudit>> AuditAsync(LinkAccess access, long after, int most) => database.ReadAsync(session => session.ListAsync<StoredAudit>(
        """
        SELECT audit.number AS Number, audit.at AS At, audit.link_id AS LinkId, link.kind AS Kind, link.label AS Label, audit.by_name AS ByName, audit.what AS What, audit.detail AS Detail
        FROM audit JOIN link ON link.id = audit.link_id WHERE audit.share_id = @ShareId AND audit.number > @after ORDER BY audit.number LIMIT @most
        """,
        new { access.ShareId, after, most }));

    /// <summary>Notes in the audit that everything was exported.</summary>
    public Task NoteExportAsync(LinkAccess access) => database.WriteAsync(async session =>
    {
        await NoteAsync(session, access, null, AuditWords.Exported, "Everything was exported.");
        return true;
    });

    // Whoever changes anything of a plan holds the plan's row first: two that do so wait for each other in one order.
    private Task<string?> LockAsync(Session session, LinkAccess access) => session.FindAsync<string>($"SELECT id FROM share WHERE id = @ShareId{database.LockRows}", access);

    private Task<int> InsertLinkAsync(Session session, string share, string id, LinkKind kind, string token, string? label) => session.ExecuteAsync(
        "INSERT INTO link (id, share_id, kind, token_hash, label, made_at) VALUES (@id, @share, @kind, @hash, @label, @now)", new { id, share, kind = Word(kind), hash = Token.Hash(token), label, now = Now });

    private async Task NoteAsync(Session session, LinkAccess access, string? by, string what, string detail)
    {
        long number = await session.GetAsync<long>("UPDATE share SET audit_number = audit_number + 1 WHERE id = @ShareId RETURNING audit_number", access);
        await session.ExecuteAsync("INSERT INTO audit (share_id, number, at, link_id, by_name, what, detail) VALUES (@ShareId, @number, @now, @LinkId, @by, @what, @detail)", new { access.ShareId, number, now = Now, access.LinkId, by, what, detail });
    }

    private static string Word(LinkKind kind) => kind switch
    {
        LinkKind.Read => "read",
        LinkKind.Add => "add",
        LinkKind.Edit => "edit",
        LinkKind.Keeper => "keeper",
    };
}
