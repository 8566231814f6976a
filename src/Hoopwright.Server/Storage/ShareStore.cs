using Hoopwright.Sharing;

namespace Hoopwright.Server.Storage;

/// <summary>
/// Shared plans with their entries, links and audit. A plan's counters stand in its own row: whoever adds something changes that row first, so cursors
/// and numbers come to be visible in the order in which they were given out, and no reader passes over one.
/// </summary>
internal sealed partial class ShareStore(IDatabase database, TimeProvider clock)
{
    private long Now => clock.GetUtcNow().ToUnixTimeMilliseconds();

    /// <summary>Keeps a new plan.</summary>
    /// <returns>The key of its keeper.</returns>
    public Task<string> CreateAsync(string document, string? by) => database.WriteAsync(async session =>
    {
        string share = Token.NewId(), keeper = Token.NewId(), key = Token.New();
        await session.ExecuteAsync("INSERT INTO share (id, made_at, version, document, cursor, entry_bytes, audit_number) VALUES (@share, @now, 1, @document, 0, 0, 0)", new { share, now = Now, document });
        await InsertLinkAsync(session, share, keeper, LinkKind.Keeper, key, null);
        await NoteAsync(session, new LinkAccess(share, keeper, LinkKind.Keeper), by, AuditWords.Shared, "The plan was shared.");
        return key;
    });

    /// <summary>The link that a token opens; none where there is no such link or it was revoked.</summary>
    public Task<LinkAccess?> FindAsync(string token) => database.ReadAsync(session => session.FindAsync<LinkAccess>(
        "SELECT share_id AS ShareId, id AS LinkId, kind AS Kind FROM link WHERE token_hash = @hash AND revoked_at IS NULL", new { hash = Token.Hash(token) }));

    /// <summary>How far a plan is, as long as the link still works.</summary>
    public Task<ShareHead?> HeadAsync(LinkAccess access) => database.ReadAsync(session => HeadAsync(session, access));

    /// <summary>How far a plan is, its text unless a device has that version, and the entries after a cursor up to the limits of an answer.</summary>
    public Task<(ShareHead Head, string? Document, IReadOnlyList<StoredEntry> Entries)?> ReadAsync(LinkAccess access, long after, long version) => database.ReadAsync<(ShareHead, string?, IReadOnlyList<StoredEntry>)?>(async session =>
    {
        if (await HeadAsync(session, access) is not { } head) return null;
        string? document = version == head.Version ? null : await session.GetAsync<string>("SELECT document FROM share WHERE id = @ShareId", access);
        return (head, document, after >= head.Cursor ? [] : await EntriesAsync(session, access.ShareId, after));
    });

    /// <summary>Changes the plan: what is kept and what was pushed are put together while no one else changes it.</summary>
    /// <param name="access">The link.</param>
    /// <param name="by">Who, as typed.</param>
    /// <param name="merge">Takes the kept text and gives the text to keep; the same where nothing changes.</param>
    /// <returns>The version and text after it; none where the plan is gone.</returns>
    public Task<ShareText?> ChangeAsync(LinkAccess access, string? by, Func<string, string> merge) => database.WriteAsync(async session =>
    {
        if (await session.FindAsync<ShareText>($"SELECT version AS Version, document AS Document FROM share WHERE id = @ShareId{database.LockRows}", access) is not { } kept) return null;
        string text = merge(kept.Document);
        if (text == kept.Document) return kept;
        ShareText changed = new(kept.Version + 1, text);
        await session.ExecuteAsync("UPDATE share SET version = @Version, document = @Document WHERE id = @ShareId", new { access.ShareId, changed.Version, changed.Document });
        await NoteAsync(session, access, by, AuditWords.PlanChanged, $"The plan was changed to version {changed.Version}.");
        return changed;
    });

    /// <summary>Deletes a plan with everything that belongs to it.</summary>
    public async Task DeleteAsync(LinkAccess access)
    {
        await database.WriteAsync(session => session.ExecuteAsync("DELETE FROM share WHERE id = @ShareId", access));
        await database.ForgetDeletedAsync();
    }

    /// <summary>Throws where the database cannot be read.</summary>
    public Task CheckAsync() => database.ReadAsync(session => session.GetAsync<string>("SELECT value FROM store WHERE name = 'epoch'"));

    private static Task<ShareHead?> HeadAsync(Session session, LinkAccess access) => session.FindAsync<ShareHead>(
        "SELECT store.value AS Epoch, share.version AS Version, share.cursor AS Cursor FROM store, link JOIN share ON share.id = link.share_id WHERE store.name = 'epoch' AND link.id = @LinkId AND link.revoked_at IS NULL", access);
}
