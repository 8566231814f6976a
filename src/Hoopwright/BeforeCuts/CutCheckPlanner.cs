using System.Collections.Immutable;
using Hoopwright.AsBuilt;
using Hoopwright.Cover;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.SiteBooks;

namespace Hoopwright.BeforeCuts;

/// <summary>
/// Says before each cut that cannot be made longer again whether to make it: go, measure first, or stop. A decision in the site book
/// about the check, later than every reading it rests on and beginning with "go", lets it go on.
/// </summary>
public static class CutCheckPlanner
{
    private const int NamedAtMost = 4;

    /// <summary>The checks of a tunnel. Never throws for a tunnel.</summary>
    /// <param name="standing">The tunnel as it stands; as planned while nothing was measured.</param>
    /// <param name="cover">Its cover.</param>
    /// <param name="built">What was measured; null for nothing.</param>
    public static CutChecks Plan(Tunnel standing, CoverPlan cover, AsBuiltTunnel? built)
    {
        ArgumentNullException.ThrowIfNull(standing);
        ArgumentNullException.ThrowIfNull(cover);
        Tunnel planned = built?.Planned ?? standing;
        AsBuiltTolerances near = built?.Measurements.Tolerances ?? AsBuiltTolerances.Of(standing.Plan, planned.Length, new Answers(standing.Units));
        Dictionary<string, Measurable> all = (built?.Measurements.Measurable ?? Measurables.Of(planned, near)).ToDictionary(each => each.Name, StringComparer.Ordinal);
        CutChanges? changes = built is null ? null : new CutChanges(planned, standing, cover);
        return new CutChecks([.. Enum.GetValues<CutCheckKind>().Select(Check).OfType<CutCheck>()]);

        CutCheck? Check(CutCheckKind kind)
        {
            ImmutableArray<CheckNeed> needs = [.. CutNeeds.Of(kind, planned, cover, built?.Measurements).Where(all.ContainsKey).Select(name => new CheckNeed(all[name], built?.Measurements.Of(name)))];
            if (needs.IsEmpty) return null;
            ImmutableArray<CheckPiece> changed = changes?.Of(kind) ?? [];
            Length worst = changed.IsEmpty ? Length.Zero : changed[0].ShortBy;
            bool isShort = worst.Metres > Allowed(kind, near).Metres + 1e-9;
            bool askew = kind == CutCheckKind.Concrete && built?.Squaring is { IsSquare: false };
            (CutVerdict verdict, string says) = (isShort, askew, built?.DoesNotFit == true, needs.Any(need => need.IsMissing)) switch
            {
                (_, _, true, _) => (CutVerdict.Stop, "Stop: what was measured does not go together with the plan. See what was found, and settle it first."),
                (true, _, _, _) => (CutVerdict.Stop, Short(kind, changed[0], standing.Units)),
                (_, true, _, _) => (CutVerdict.Stop, "Stop: it does not stand square. Put the corners right while they can still be moved, and measure again."),
                (_, _, _, true) => (CutVerdict.MeasureFirst, $"Measure this first: {Named([.. needs.Where(need => need.IsMissing)])}."),
                _ => (CutVerdict.Go, changed.IsEmpty ? "Go: everything it depends on was measured, and the plan holds." : "Go, by sheets made with these measurements: everything it depends on was measured."),
            };
            SiteBookEntry? decision = verdict == CutVerdict.Go ? null : DecisionOn(standing.Plan, CutCheck.IdOf(kind), needs);
            return new CutCheck
            {
                Kind = kind,
                Verdict = decision is null ? verdict : CutVerdict.Go,
                Says = decision is null ? says : $"Go, as decided{(decision.By is { } by ? $" by {by}" : "")}, by sheets made with these measurements. Without that it would be: {says}",
                Needs = needs,
                Changed = changed,
                ShortBy = worst,
                Decision = decision,
            };
        }
    }

    private static Length Allowed(CutCheckKind kind, AsBuiltTolerances near) => kind switch
    {
        CutCheckKind.Film or CutCheckKind.Channel => near.Bow,
        CutCheckKind.Posts => near.Posts,
        CutCheckKind.Boards => near.Frame,
        CutCheckKind.Concrete => near.Holes,
    };

    private static string Short(CutCheckKind kind, CheckPiece worst, UnitSystem units)
    {
        string by = TapeText.Of(worst.ShortBy, units);
        return kind == CutCheckKind.Concrete
            ? $"Stop: {worst.Place} {worst.Id} is short by {by}. Dig it deeper before anything is poured."
            : $"Stop: cut by the plan alone, {worst.Id} ({worst.Place}) would be short by {by}. Look whether what is on hand is long enough, cut only by sheets made with these measurements, and write down a decision ({CutCheck.IdOf(kind)}: go) when that is settled.";
    }

    private static string Named(ImmutableArray<CheckNeed> missing)
    {
        IEnumerable<string> named = missing.Take(NamedAtMost).Select(need => need.Taken?.IsInDoubt == true ? $"{need.Of.What} (again)" : need.Of.What);
        return string.Join("; ", named) + (missing.Length > NamedAtMost ? FormattableString.Invariant($"; and {missing.Length - NamedAtMost} more") : "");
    }

    private static SiteBookEntry? DecisionOn(Plan plan, string check, ImmutableArray<CheckNeed> needs)
    {
        string latest = needs.SelectMany(need => need.Taken?.Readings ?? []).SelectMany(reading => reading.Corrections.Select(each => each.Id).Append(reading.EntryId)).OfType<string>().DefaultIfEmpty("").Max(StringComparer.Ordinal)!;
        return StandingEntries.Of(plan)
            .Where(each => each.Entry is { Kind: SiteBookKind.Decision, Value: { } value } && each.Entry.Of == check && !each.IsTakenBack
                && value.TrimStart().StartsWith("go", StringComparison.OrdinalIgnoreCase) && string.CompareOrdinal(each.Entry.Id ?? "", latest) > 0)
            .Select(each => each.Entry).LastOrDefault();
    }
}
