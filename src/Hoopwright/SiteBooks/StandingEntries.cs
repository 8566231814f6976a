using System.Collections.Immutable;
using Hoopwright.Plans;

namespace Hoopwright.SiteBooks;

/// <summary>
/// The site book read in order: entries sort by their identities, which sort by time, and a correction speaks for the entry it names.
/// A correction may itself be corrected; one that names nothing, itself or a later entry corrects nothing.
/// </summary>
public static class StandingEntries
{
    /// <summary>The entries of a plan that are no corrections, in order, each as it stands.</summary>
    /// <param name="plan">The plan.</param>
    public static ImmutableArray<StandingEntry> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        List<StandingEntry> standing = [];
        Dictionary<string, int> spokenFor = [];
        foreach ((SiteBookEntry entry, int at) in InOrder(plan.SiteBook))
        {
            if (entry.Kind != SiteBookKind.Correction)
            {
                if (entry.Id is { } id) spokenFor[id] = standing.Count;
                standing.Add(new(entry, at, entry, [], IsTakenBack: false));
            }
            else if (entry.Corrects is { } corrected && spokenFor.TryGetValue(corrected, out int which))
            {
                StandingEntry before = standing[which];
                standing[which] = before with
                {
                    Entry = entry.Value is null ? before.Entry : before.Entry with { Value = entry.Value },
                    Corrections = before.Corrections.Add(entry),
                    IsTakenBack = entry.Value is null,
                };
                if (entry.Id is { } own) spokenFor[own] = which;
            }
        }
        return [.. standing];
    }

    // An entry without an identity was typed by hand, and comes where it stands among its like. Mostly they are in order as they stand.
    private static IEnumerable<(SiteBookEntry Entry, int At)> InOrder(ImmutableArray<SiteBookEntry> book)
    {
        IEnumerable<(SiteBookEntry Entry, int At)> asWritten = book.Select((entry, at) => (entry, at));
        bool isInOrder = book.Zip(book.Skip(1), (one, next) => string.CompareOrdinal(one.Id ?? "", next.Id ?? "")).All(order => order <= 0);
        return isInOrder ? asWritten : asWritten.OrderBy(each => each.Entry.Id ?? "", StringComparer.Ordinal);
    }
}
