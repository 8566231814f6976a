using Hoopwright.Sharing;

namespace Hoopwright.Server.Storage;

/// <summary>Entries: only ever added.</summary>
internal sealed partial class ShareStore
{
    /// <summary>Adds entries that are not there yet. An entry whose id is there with other content is added, too.</summary>
    /// <returns>What became of each, in order; none where the plan is gone.</returns>
    public Task<IReadOnlyList<EntryReceipt>?> AddAsync(LinkAccess access, IReadOnlyList<IncomingEntry> entries) => database.WriteAsync<IReadOnlyList<EntryReceipt>?>(async session =>
    {
        if (await session.FindAsync<Room>($"SELECT cursor AS Cursor, entry_bytes AS EntryBytes FROM share WHERE id = @ShareId{database.LockRows}", access) is not { } room) return null;
        (long cursor, long bytes) = room;
        List<EntryReceipt> receipts = [];
        foreach (IncomingEntry entry in entries)
        {
            IReadOnlyList<byte[]> same = await session.ListAsync<byte[]>("SELECT hash FROM entry WHERE share_id = @ShareId AND id = @Id", new { access.ShareId, entry.Id });
            if (same.Any(hash => hash.AsSpan().SequenceEqual(entry.Hash)))
            {
                receipts.Add(new EntryReceipt(EntryOutcome.AlreadyHere, entry.Id, entry.AheadSeconds));
                continue;
            }
            if (cursor >= SharingLimits.EntriesPerPlan || bytes + entry.Body.Length > SharingLimits.EntryBytesPerPlan)
            {
                receipts.Add(new EntryReceipt(EntryOutcome.Refused, entry.Id, entry.AheadSeconds, "The site book on the server is full. Export it, and share the plan anew."));
                continue;
            }
            cursor++;
            bytes += entry.Body.Length;
            await session.ExecuteAsync(
                "INSERT INTO entry (share_id, cursor, id, hash, body, ahead_seconds) VALUES (@ShareId, @cursor, @Id, @Hash, @Body, @AheadSeconds)",
                new { access.ShareId, cursor, entry.Id, entry.Hash, entry.Body, entry.AheadSeconds });
            receipts.Add(new EntryReceipt(same.Count == 0 ? EntryOutcome.Added : EntryOutcome.KeptBoth, entry.Id, entry.AheadSeconds));
        }
        if (cursor > room.Cursor)
        {
            await session.ExecuteAsync("UPDATE share SET cursor = @cursor, entry_bytes = @bytes WHERE id = @ShareId", new { access.ShareId, cursor, bytes });
            long added = cursor - room.Cursor;
            await NoteAsync(session, access, null, AuditWords.EntriesAdded, added == 1 ? $"Entry {cursor} was added." : $"Entries {room.Cursor + 1} to {cursor} were added.");
        }
        return receipts;
    });

    /// <summary>All entries up to a cursor, some at a time.</summary>
    public async IAsyncEnumerable<StoredEntry> AllEntriesAsync(LinkAccess access, EntryOrder order, long upTo)
    {
        (string after, string by) = order switch
        {
            EntryOrder.AsTheyCame => ("cursor > @Cursor", "cursor"),
            EntryOrder.ById => ("(id, cursor) > (@Id, @Cursor)", "id, cursor"),
        };
        StoredEntry last = new(0, "", "", null);
        IReadOnlyList<StoredEntry> some;
        do
        {
            some = await database.ReadAsync(session => session.ListAsync<StoredEntry>(
                $"SELECT cursor AS Cursor, id AS Id, body AS Body, ahead_seconds AS AheadSeconds FROM entry WHERE share_id = @ShareId AND cursor <= @upTo AND {after} ORDER BY {by} LIMIT 100",
                new { access.ShareId, upTo, last.Id, last.Cursor }));
            foreach (StoredEntry entry in some) yield return last = entry;
        }
        while (some.Count > 0);
    }

    // The sum up to and with each entry tells where the answer is big enough.
    private static Task<IReadOnlyList<StoredEntry>> EntriesAsync(Session session, string share, long after) => session.ListAsync<StoredEntry>(
        """
        SELECT cursor AS Cursor, id AS Id, body AS Body, ahead_seconds AS AheadSeconds FROM (
          SELECT cursor, id, body, ahead_seconds, sum(length(body)) OVER (ORDER BY cursor) AS total FROM (
            SELECT cursor, id, body, ahead_seconds FROM entry WHERE share_id = @share AND cursor > @after ORDER BY cursor LIMIT @most) AS next) AS counted
        WHERE total <= @bytes OR cursor = @after + 1 ORDER BY cursor
        """,
        new { share, after, most = SharingLimits.EntriesPerAnswer, bytes = SharingLimits.BytesPerAnswer });

    private sealed record Room(long Cursor, long EntryBytes);
}
