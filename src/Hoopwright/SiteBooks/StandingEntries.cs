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
        // An entry without an identity was typed by hand, and comes where it stands among its like.
        (SiteBookEntry Entry, int At)[] ordered = [.. plan.SiteBook.Select((entry, at) => (entry, at)).OrderBy(each => each.entry.Id ?? "", StringComparer.Ordinal)];
        List<StandingEntry> standing = [];
        Dictionary<string, int> spokenFor = [];
        foreach ((SiteBookEntry entry, int at) in ordered)
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
}
