using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;

namespace Hoopwright.SiteBooks;

/// <summary>
/// The values of one field in several copies. Putting two sets together keeps what neither knows to be overtaken; it does not matter
/// in which order sets are put together, nor how often (a multi-value register: Shapiro and others, Conflict-free Replicated Data Types,
/// SSS 2011, with the overtaken identities carried along in place of version vectors).
/// </summary>
internal static class FieldHeads
{
    /// <summary>How the identity of a value begins that somebody typed into the file.</summary>
    public const string Typed = "typed-";

    /// <summary>The values of a field of one copy.</summary>
    /// <param name="path">The field.</param>
    /// <param name="edits">What its edits say.</param>
    /// <param name="stands">What stands in the file; null when nothing does.</param>
    /// <param name="isAround">True when the field is a group that is there because of what stands in it.</param>
    public static ImmutableArray<PlanHead> Of(string path, ImmutableArray<PlanHead> edits, string? stands, bool isAround)
    {
        if (edits.IsEmpty) return stands is null ? [] : [new(TypedId(path, stands, []), stands, null, null, [])];
        if (isAround || edits.Any(edit => edit.Value == stands)) return edits;
        ImmutableSortedSet<string> after = [.. edits.SelectMany(edit => edit.After.Add(edit.Id))];
        return [new(TypedId(path, stands, after), stands, null, null, after)];
    }

    /// <summary>Two sets of values of one field put together.</summary>
    public static ImmutableArray<PlanHead> Join(ImmutableArray<PlanHead> one, ImmutableArray<PlanHead> other)
    {
        List<PlanHead> all = [];
        foreach (IGrouping<(string, string?, string?, string?), PlanHead> same in one.Concat(other).GroupBy(head => head.Self))
        {
            all.Add(same.First() with { After = [.. same.SelectMany(head => head.After)] });
        }
        all.Sort(ByIdentity);
        // What an overtaken value had overtaken is overtaken too, whoever comes first.
        PlanHead[] whole = [.. all.Select(head => head with { After = Overtaken(head, all) })];
        ImmutableArray<PlanHead> left = [.. whole.Where(head => !whole.Any(over => over.Id != head.Id && over.After.Contains(head.Id)))];
        return left.IsEmpty ? [whole[^1]] : left;
    }

    /// <summary>The value that the plan goes by: the one with the latest identity; what was typed into a file has none and comes before.</summary>
    public static PlanHead Standing(ImmutableArray<PlanHead> heads) =>
        heads.MaxBy(head => (IsDated: !head.Id.StartsWith(Typed, StringComparison.Ordinal), head), Comparer<(bool IsDated, PlanHead Head)>.Create(
            (one, other) => one.IsDated != other.IsDated ? one.IsDated.CompareTo(other.IsDated) : ByIdentity(one.Head, other.Head)))!;

    private static ImmutableSortedSet<string> Overtaken(PlanHead head, List<PlanHead> all)
    {
        ImmutableSortedSet<string> known = head.After;
        for (bool grew = true; grew;)
        {
            ImmutableSortedSet<string> more = known.Union(all.Where(each => known.Contains(each.Id)).SelectMany(each => each.After));
            grew = more.Count > known.Count;
            known = more;
        }
        return known.Remove(head.Id);
    }

    private static int ByIdentity(PlanHead one, PlanHead other)
    {
        int order = string.CompareOrdinal(one.Id, other.Id);
        if (order == 0) order = string.CompareOrdinal(one.Value, other.Value);
        if (order == 0) order = string.CompareOrdinal(one.By, other.By);
        return order != 0 ? order : string.CompareOrdinal(one.Device, other.Device);
    }

    private static string TypedId(string path, string? value, ImmutableSortedSet<string> after) =>
        Typed + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', [path, value ?? "", value is null ? "0" : "1", .. after]))).AsSpan(0, 10));
}
