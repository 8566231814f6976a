using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;

namespace Hoopwright.SiteBooks;

/// <summary>
/// One copy of a plan as what it says: of each field the values that stand, and the entries of its site book. Lists other than these
/// entries are one value each.
/// </summary>
/// <param name="version">The version of the format.</param>
/// <param name="fields">By path.</param>
/// <param name="entries">Identity and canonical JSON of each entry.</param>
internal sealed partial class PlanCopy(string? version, SortedDictionary<string, ImmutableArray<PlanHead>> fields, SortedSet<(string Id, string Json)> entries)
{
    private const string Version = "hoopwright", Book = "siteBook", EditList = "edits", EmptyGroup = "{}";

    /// <summary>By path, the values that stand.</summary>
    public SortedDictionary<string, ImmutableArray<PlanHead>> Fields => fields;

    /// <summary>Identity and canonical JSON of each entry.</summary>
    public SortedSet<(string Id, string Json)> Entries => entries;

    /// <summary>What a document says; null when it cannot be read so far as to lose nothing.</summary>
    /// <param name="utf8">The bytes of the file.</param>
    /// <param name="problems">What stands in the way.</param>
    public static PlanCopy? Read(ReadOnlyMemory<byte> utf8, out ImmutableArray<Diagnostic> problems)
    {
        PlanReading reading = PlanReader.Read(utf8);
        problems = [.. reading.Diagnostics.Where(each => each.Severity == Severity.Error)];
        // A faulty value goes along as it is; a file that breaks off, or that a newer program wrote, does not.
        if (reading.TooNew || reading.BrokeOff || reading.Document is not { Kind: PlanNodeKind.Group } document) return null;
        problems = [];
        Dictionary<string, ImmutableArray<PlanHead>> edits = [];
        SortedSet<(string, string)> entries = [];
        Dictionary<string, (string Json, bool IsAround)> standing = [];
        string? version = null;
        bool twice = document.Children.GroupBy(child => child.Name, StringComparer.Ordinal).Any(same => same.Count() > 1);
        foreach (PlanNode field in document.Children)
        {
            switch (field)
            {
                case { Name: Version, Kind: PlanNodeKind.Text } when !twice: version = field.Text; break;
                case { Name: Book, Kind: PlanNodeKind.List } when !twice: ReadBook(field, entries); break;
                case { Name: EditList, Kind: PlanNodeKind.List } when !twice: ReadEdits(field, edits); break;
                default: ReadField(field, field.Name ?? "", standing); break;
            }
        }
        SortedDictionary<string, ImmutableArray<PlanHead>> fields = new(StringComparer.Ordinal);
        foreach (string path in standing.Keys.Union(edits.Keys, StringComparer.Ordinal))
        {
            (string? json, bool isAround) = standing.TryGetValue(path, out var found) ? found : (null, false);
            ImmutableArray<PlanHead> heads = FieldHeads.Of(path, edits.GetValueOrDefault(path, []), json, isAround);
            if (!heads.IsEmpty) fields[path] = heads;
        }
        return new(version, fields, entries);
    }

    /// <summary>Two copies put together.</summary>
    public static PlanCopy Join(PlanCopy one, PlanCopy other)
    {
        SortedDictionary<string, ImmutableArray<PlanHead>> fields = new(one.Fields, StringComparer.Ordinal);
        foreach ((string path, ImmutableArray<PlanHead> heads) in other.Fields)
            fields[path] = fields.TryGetValue(path, out ImmutableArray<PlanHead> known) ? FieldHeads.Join(known, heads) : heads;
        return new(Later(one.FormatVersion, other.FormatVersion), fields, [.. one.Entries, .. other.Entries]);
    }

    private string? FormatVersion => version;

    private static string? Later(string? one, string? other) =>
        (one is null ? null : PlanVersion.Read(one), other is null ? null : PlanVersion.Read(other)) switch
        {
            ({ } first, { } second) => first.CompareTo(second) >= 0 ? one : other,
            (not null, null) => one,
            (null, not null) => other,
            (null, null) => string.CompareOrdinal(one, other) >= 0 ? one : other,
        };

    private static void ReadField(PlanNode node, string path, Dictionary<string, (string, bool)> standing)
    {
        if (node.Kind != PlanNodeKind.Group || !HasPlainNames(node))
        {
            standing[path] = (node.ToJson(), false);
            return;
        }
        standing[path] = (EmptyGroup, node.Children.Count > 0);
        foreach (PlanNode child in node.Children) ReadField(child, $"{path}.{child.Name}", standing);
    }

    // A group whose fields a path cannot name goes along whole.
    private static bool HasPlainNames(PlanNode group) =>
        group.Children.All(child => child.Name is { Length: > 0 } name && name.AsSpan().IndexOfAny('.', '[', ']') < 0)
        && group.Children.Select(child => child.Name).Distinct(StringComparer.Ordinal).Count() == group.Children.Count;

    private static void ReadBook(PlanNode list, SortedSet<(string, string)> entries)
    {
        FieldOrder order = FieldOrder.Plan.Within(Book);
        foreach (PlanNode entry in list.Children)
        {
            string id = entry.Children.FirstOrDefault(field => field.Name == "id") is { Kind: PlanNodeKind.Text } node ? node.Text : "";
            entries.Add((id, entry.Kind == PlanNodeKind.Group ? Object(order.Sort(entry.Children, field => field.Name ?? "").Select(field => (field.Name ?? "", field.ToJson()))) : entry.ToJson()));
        }
    }

    private static void ReadEdits(PlanNode list, Dictionary<string, ImmutableArray<PlanHead>> edits)
    {
        foreach (PlanNode edit in list.Children)
        {
            if (Text("id") is not { } id || Text("path") is not { } path) continue;
            ImmutableSortedSet<string> after = [.. edit.Children.FirstOrDefault(field => field.Name == "after")?.Children.Select(each => each.Text) ?? []];
            PlanHead head = new(id, Text("value"), Text("by"), Text("device"), after);
            edits[path] = edits.TryGetValue(path, out ImmutableArray<PlanHead> known) ? FieldHeads.Join(known, [head]) : [head];

            string? Text(string name) => edit.Children.FirstOrDefault(field => field.Name == name) is { Kind: PlanNodeKind.Text } node ? node.Text : null;
        }
    }
}
