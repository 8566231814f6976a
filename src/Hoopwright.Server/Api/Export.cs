using System.IO.Compression;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Hoopwright.Server.Storage;
using Hoopwright.Sharing;

namespace Hoopwright.Server.Api;

/// <summary>Everything that is kept of one plan as a zip file, written as it is read, so that a large site book does not fill the memory.</summary>
internal sealed class Export(ShareStore store, LinkAccess access)
{
    private static readonly JsonWriterOptions Indented = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>
    /// Writes `plan.json` (plan and site book in one, for the app to open), `document.json` (the plan as typed, with its comments), `entries.jsonl` (an entry
    /// a line, in the order in which they came), `links.json` and `audit.json`.
    /// </summary>
    public async Task WriteAsync(Stream target, string document, ShareHead head, CancellationToken stop)
    {
        await using ZipArchive zip = await ZipArchive.CreateAsync(target, ZipArchiveMode.Create, leaveOpen: true, entryNameEncoding: null, stop);
        await WriteAsync(zip, "plan.json", stream => WritePlanAsync(stream, document, head.Cursor, stop), stop);
        await WriteAsync(zip, "document.json", stream => stream.WriteAsync(Encoding.UTF8.GetBytes(document), stop).AsTask(), stop);
        await WriteAsync(zip, "entries.jsonl", async stream =>
        {
            await foreach (StoredEntry entry in store.AllEntriesAsync(access, EntryOrder.AsTheyCame, head.Cursor)) await stream.WriteAsync(Encoding.UTF8.GetBytes(entry.Body + "\n"), stop);
        }, stop);
        await WriteAsync(zip, "links.json", async stream =>
            await JsonSerializer.SerializeAsync(stream, [.. (await store.LinksAsync(access)).Select(KeeperEndpoints.Shared)], SharingJson.Default.ImmutableArraySharedLink, stop), stop);
        await WriteAsync(zip, "audit.json", async stream =>
            await JsonSerializer.SerializeAsync(stream, new AuditPage([.. (await store.AuditAsync(access, 0, int.MaxValue)).Select(KeeperEndpoints.Shared)], false), SharingJson.Default.AuditPage, stop), stop);
    }

    private static async Task WriteAsync(ZipArchive zip, string name, Func<Stream, Task> write, CancellationToken stop)
    {
        await using Stream stream = await zip.CreateEntry(name).OpenAsync(stop);
        await write(stream);
    }

    private async Task WritePlanAsync(Stream stream, string document, long upTo, CancellationToken stop)
    {
        using JsonDocument plan = JsonDocument.Parse(document, DocumentMerge.PlanJson);
        await using Utf8JsonWriter writer = new(stream, Indented);
        writer.WriteStartObject();
        foreach (JsonProperty property in plan.RootElement.EnumerateObject()) property.WriteTo(writer);
        writer.WriteStartArray("siteBook");
        await foreach (StoredEntry entry in store.AllEntriesAsync(access, EntryOrder.ById, upTo))
        {
            writer.WriteRawValue(entry.Body);
            if (writer.BytesPending > 1 << 16) await writer.FlushAsync(stop);
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    }
}
