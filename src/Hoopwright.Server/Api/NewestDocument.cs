namespace Hoopwright.Server.Api;

/// <summary>Takes what a device sent where it changed the newest version; else keeps what the server has and calls the whole plan a conflict.</summary>
internal sealed class NewestDocument : IDocumentMerge
{
    public MergedDocument Merge(string kept, string pushed, bool current) => current || kept == pushed ? new MergedDocument(pushed, []) : new MergedDocument(kept, [""]);
}
