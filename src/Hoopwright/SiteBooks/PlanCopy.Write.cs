using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Hoopwright.Plans;

namespace Hoopwright.SiteBooks;

/// <content>Writing it as a document: the same copy gives the same bytes.</content>
internal sealed partial class PlanCopy
{
    /// <summary>The document.</summary>
    public byte[] Write()
    {
        Group root = new();
        foreach ((string path, ImmutableArray<PlanHead> heads) in fields)
        {
            if (FieldHeads.Standing(heads).Value is { } json) root.Put(path.Split('.'), json);
        }
        if (version is not null) root.Put([Version], Quoted(version));
        if (entries.Count > 0) root.Put([Book], List(entries.Select(entry => entry.Json)));
        string[] edits = [.. fields.Where(field => !(field.Value is [var only] && only.SpeaksForItself)).SelectMany(field => field.Value, (field, head) => EditOf(field.Key, head))];
        if (edits.Length > 0) root.Put([EditList], List(edits));
        using MemoryStream stream = new();
        using (Utf8JsonWriter writer = new(stream, PlanWriter.Indented))
        {
            root.Write(writer, FieldOrder.Plan);
        }
        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static string EditOf(string path, PlanHead head) => Object(
    [
        .. from field in ((string Name, string? Text)[])[("id", head.Id), ("path", path), ("value", head.Value), ("by", head.By), ("device", head.Device)]
           where field.Text is not null
           select (field.Name, Quoted(field.Text)),
        .. head.After.IsEmpty ? ((string, string)[])[] : [("after", List(head.After.Select(Quoted)))],
    ]);

    private static string Quoted(string text)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter writer = new(stream, PlanWriter.Compact)) writer.WriteStringValue(text);
        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    private static string List(IEnumerable<string> items) => $"[{string.Join(',', items)}]";

    private static string Object(IEnumerable<(string Name, string Json)> fields) =>
        $"{{{string.Join(',', fields.Select(field => $"{Quoted(field.Name)}:{field.Json}"))}}}";

    /// <summary>A group of the document while it is put together.</summary>
    private sealed class Group
    {
        private readonly Dictionary<string, Group> groups = new(StringComparer.Ordinal);
        private readonly Dictionary<string, string> values = new(StringComparer.Ordinal);

        public void Put(ReadOnlySpan<string> path, string json)
        {
            if (path.Length > 1 || json == EmptyGroup)
            {
                if (!groups.TryGetValue(path[0], out Group? group)) groups[path[0]] = group = new();
                if (path.Length > 1) group.Put(path[1..], json);
            }
            else
            {
                values[path[0]] = json;
            }
        }

        // Where one copy has a group and another a single value, the group is written; the value stands among the edits.
        public void Write(Utf8JsonWriter writer, FieldOrder order)
        {
            writer.WriteStartObject();
            foreach (string name in order.Sort(groups.Keys.Union(values.Keys, StringComparer.Ordinal), name => name))
            {
                writer.WritePropertyName(name);
                if (groups.TryGetValue(name, out Group? group))
                {
                    group.Write(writer, order.Within(name));
                }
                else
                {
                    using JsonDocument value = JsonDocument.Parse(values[name]);
                    value.WriteTo(writer);
                }
            }
            writer.WriteEndObject();
        }
    }
}
