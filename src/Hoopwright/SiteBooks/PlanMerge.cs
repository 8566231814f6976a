using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.SiteBooks;

/// <summary>
/// Puts copies of a plan together: the union of the entries of their site books; of each field what one of them wrote knowing of the other;
/// and where neither knew of the other, both, for somebody to decide. In which order and how often copies are put together changes nothing,
/// to the byte. Comments of the files are not kept.
/// </summary>
public static class PlanMerge
{
    /// <summary>Puts two copies together.</summary>
    /// <param name="first">The bytes of one file.</param>
    /// <param name="second">The bytes of the other.</param>
    public static MergedPlan Merge(ReadOnlyMemory<byte> first, ReadOnlyMemory<byte> second)
    {
        PlanCopy? one = PlanCopy.Read(first, out ImmutableArray<Diagnostic> wrongInFirst), other = PlanCopy.Read(second, out ImmutableArray<Diagnostic> wrongInSecond);
        if (one is null || other is null) return new(default, [], 0, 0, 0, wrongInFirst, wrongInSecond);
        PlanCopy both = PlanCopy.Join(one, other);
        int already = one.Entries.Count + other.Entries.Count - both.Entries.Count;
        return new(both.Write(), Undecided(both), already, one.Entries.Count - already, other.Entries.Count - already, [], []);
    }

    /// <summary>The fields of a plan that wait for a decision; none when it cannot be read.</summary>
    /// <param name="document">The bytes of the file.</param>
    public static ImmutableArray<UndecidedField> Undecided(ReadOnlyMemory<byte> document) => PlanCopy.Read(document, out _) is { } copy ? Undecided(copy) : [];

    private static ImmutableArray<UndecidedField> Undecided(PlanCopy copy) =>
    [
        .. from field in copy.Fields
           let stands = FieldHeads.Standing(field.Value)
           let said = field.Value.GroupBy(head => head.Value, StringComparer.Ordinal).OrderBy(value => value.Key != stands.Value).ToList()
           where said.Count > 1
           select new UndecidedField(field.Key, [.. said.Select(value => value.Key == stands.Value ? stands : value.First()).Select(head => new SaidValue(head.Value, head.By, head.Device))]),
    ];
}
