using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.AsBuilt;
using Hoopwright.Cover;
using Hoopwright.Diagnostics;
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
            (CutVerdict verdict, Phrase says) = (isShort, askew, built?.DoesNotFit == true, needs.Any(need => need.IsMissing)) switch
            {
                (_, _, true, _) => (CutVerdict.Stop, Phrase.Of("Stop: what was measured does not go together with the plan. See what was found, and settle it first.")),
                (true, _, _, _) => (CutVerdict.Stop, Short(kind, changed[0], standing.Units)),
                (_, true, _, _) => (CutVerdict.Stop, Phrase.Of("Stop: it does not stand square. Put the corners right while they can still be moved, and measure again.")),
                (_, _, _, true) => (CutVerdict.MeasureFirst, Named([.. needs.Where(need => need.IsMissing)])),
                _ => (CutVerdict.Go, Phrase.Of(changed.IsEmpty ? "Go: everything it depends on was measured, and the plan holds." : "Go, by sheets made with these measurements: everything it depends on was measured.")),
            };
            SiteBookEntry? decision = verdict == CutVerdict.Go ? null : DecisionOn(standing.Plan, CutCheck.IdOf(kind), needs);
            return new CutCheck
            {
                Kind = kind,
                Verdict = decision is null ? verdict : CutVerdict.Go,
                Says = decision is null ? [says] : [Decided(decision), says],
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

    private static Phrase Decided(SiteBookEntry decision) => decision.By is { } by
        ? Phrase.Of("Go, as decided by {0}, by sheets made with these measurements. Without that it would be:", by)
        : Phrase.Of("Go, as decided, by sheets made with these measurements. Without that it would be:");

    private static Phrase Short(CutCheckKind kind, CheckPiece worst, UnitSystem units)
    {
        string by = TapeText.Of(worst.ShortBy, units);
        return kind == CutCheckKind.Concrete
            ? Phrase.Of("Stop: {0} {1} is short by {2}. Dig it deeper before anything is poured.", worst.Place, worst.Id, by)
            : Phrase.Of(
                "Stop: cut by the plan alone, {0} ({1}) would be short by {2}. Look whether what is on hand is long enough, cut only by sheets made with these measurements, and write down a decision ({3}: go) when that is settled.",
                worst.Id, worst.Place, by, CutCheck.IdOf(kind));
    }

    // No thing that is measured has a comma in its name.
    private static Phrase Named(ImmutableArray<CheckNeed> missing)
    {
        string named = string.Join(", ", missing.Take(NamedAtMost).Select(need => need.Of.What + (need.Taken?.IsInDoubt == true ? " (again)" : "")));
        return missing.Length > NamedAtMost
            ? Phrase.Of("Measure this first: {0} and {1} more.", named, (missing.Length - NamedAtMost).ToString(CultureInfo.InvariantCulture))
            : Phrase.Of("Measure this first: {0}.", named);
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
