using System.Collections.Immutable;

namespace Hoopwright.SiteBooks;

/// <summary>Keeps with a plan who wrote what into which field, so that its copies can be put together.</summary>
public static class PlanEdits
{
    /// <summary>A document with an edit for every field that differs from an earlier state of it.</summary>
    /// <param name="before">The bytes before.</param>
    /// <param name="after">The bytes as they are now.</param>
    /// <param name="author">Whose edit it is.</param>
    /// <returns>The document with the edits; null when one of the two cannot be read.</returns>
    public static byte[]? Record(ReadOnlyMemory<byte> before, ReadOnlyMemory<byte> after, EditAuthor author)
    {
        ArgumentNullException.ThrowIfNull(author);
        if (PlanCopy.Read(before, out _) is not { } known || PlanCopy.Read(after, out _) is not { } now) return null;
        foreach (string path in known.Fields.Keys.Union(now.Fields.Keys, StringComparer.Ordinal).ToList())
        {
            ImmutableArray<PlanHead> old = known.Fields.GetValueOrDefault(path, []), heads = now.Fields.GetValueOrDefault(path, []);
            string? was = old.IsEmpty ? null : FieldHeads.Standing(old).Value, stands = heads.IsEmpty ? null : FieldHeads.Standing(heads).Value;
            now.Fields[path] = was == stands ? FieldHeads.Join(old, heads) : [Over(old, heads, stands, author)];
        }
        return now.Write();
    }

    /// <summary>A document in which a field has one value, whatever its copies said.</summary>
    /// <param name="document">The bytes.</param>
    /// <param name="path">The field.</param>
    /// <param name="json">Its value as JSON; null takes it out.</param>
    /// <param name="author">Whose decision it is.</param>
    /// <returns>The document; null when it cannot be read.</returns>
    public static byte[]? Decide(ReadOnlyMemory<byte> document, string path, string? json, EditAuthor author)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(author);
        if (PlanCopy.Read(document, out _) is not { } copy) return null;
        ImmutableArray<PlanHead> heads = copy.Fields.GetValueOrDefault(path, []);
        copy.Fields[path] = [Over(heads, [], json, author)];
        return copy.Write();
    }

    private static PlanHead Over(ImmutableArray<PlanHead> old, ImmutableArray<PlanHead> now, string? json, EditAuthor author) =>
        new(author.Id, json, author.By, author.Device, [.. old.Concat(now).SelectMany(head => head.After.Add(head.Id)).Where(id => id != author.Id)]);
}
