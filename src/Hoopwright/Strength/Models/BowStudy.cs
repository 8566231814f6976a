using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Frames;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Running;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Steel;

namespace Hoopwright.Strength.Models;

/// <summary>Puts the bows of one tunnel through all its loads.</summary>
internal sealed partial class BowStudy
{
    // Snow and wind beyond anything on record: 20 kPa of ground snow; a gust of about 125 m/s.
    private const double MostSnowPa = 20_000, MostWindPa = 10_000;

    private readonly Tunnel _tunnel;
    private readonly TunnelLoads _loads;
    private readonly BowSteel _steel;
    private readonly FootRange _feet;
    private readonly BowCases _cases;
    private readonly BowRow _row;
    private readonly ImmutableArray<BowPlace> _places;
    private readonly ImmutableArray<BowTrial> _taken;
    private readonly ImmutableArray<BowTrial> _weak;
    private readonly ImmutableArray<BowTrial> _strong;
    private readonly Lazy<ImmutableArray<BowTrial>> _ends;

    internal BowStudy(Tunnel tunnel, TunnelLoads loads, BowSteel steel, FootRange feet)
    {
        (_tunnel, _loads, _steel, _feet) = (tunnel, loads, steel, feet);
        _cases = new BowCases(loads);
        _row = BowRow.Of(tunnel, steel);
        _places = Distinct(_row.Places, loads);
        _taken = Trials(_places);
        _weak = feet.Least == feet.Taken ? _taken : On(_taken, feet.Least);
        _strong = feet.Most == feet.Taken ? _taken : On(_taken, feet.Most);
        _ends = new(() => Trials(_row.Places.Where(place => place == _row.Places[0] || place == _row.Places[^1]).Except(_places)));
    }

    /// <summary>The tube of the bows and its steel as taken.</summary>
    internal BowSteel Steel => _steel;

    /// <summary>The combinations that they are tried on.</summary>
    internal BowCases Cases => _cases;

    /// <summary>What the feet put on their posts, those of the end bows as well, under the combinations that posts are held against.</summary>
    /// <param name="softest">True for the softest feet of the range, false for the feet as they were taken.</param>
    internal ImmutableArray<FootLoad> FootLoads(bool softest)
    {
        ImmutableArray<LoadCombination> combinations = _cases.ForGround();
        // Bows of its own, since a bow is not for two pieces of work at once.
        ImmutableArray<BowTrial> bows = On([.. _taken, .. _ends.Value], softest ? _feet.Least : _feet.Taken);
        return [.. FootLoad.Of(bows, [.. combinations.Select(_cases.Loaded)], DirectAnalysis.LoadLevel(_cases.GroundMethod))];
    }

    /// <summary>True when the plan enters snow or wind.</summary>
    internal bool Entered => _loads.GroundSnow is not null || _loads.Wind is not null;

    /// <summary>How many bows are tried.</summary>
    internal int Bows => _taken.Length;

    /// <summary>Combinations at the site. Those that ask the same of every bow are tried once; the first of them is named.</summary>
    internal LoadedCase[] AtSite => field ??= [.. _cases.AtSite().DistinctBy(each => string.Join('/', _taken.Select(bow => bow.KeyOf(each))))];

    /// <summary>The combination under which a bow uses most of its strength.</summary>
    internal CombinationStrength Worst() => AtSite.Select(each => Stand(each, _taken, _steel)).MaxBy(each => Ties.Key(each.Verdict.Utilisation)).Strength;

    /// <summary>Names of the combinations, one with snow and one without, under which a bow by itself uses most of its strength.</summary>
    internal IEnumerable<string> WorstAlone() => WorstOf(Stands());

    /// <summary>Everything found, and what the posts of the ends carry in the row.</summary>
    /// <param name="sideBySide">How to run what needs nothing of each other.</param>
    internal (StrengthReport Bows, ImmutableArray<RowPostForce> EndPosts) Report(SideBySide sideBySide)
    {
        LoadedCase[] all = [.. _cases.AtSite()], atSite = AtSite;
        bool entered = Entered;
        // The row asks as well which are the worst, and may come first.
        var tried = new Lazy<(CombinationStrength Strength, BowVerdict Verdict, LoadedCase Case, BowTrial Bow, int Lean)[]>(Stands);
        (CombinationStrength Strength, BowVerdict Verdict, LoadedCase Case, BowTrial Bow, int Lean)[] stands = [];
        double most = 0, atWorst = 0;
        RowOutcome? inSpace = null;
        StrengthLimit[] limits = [];
        sideBySide(
            () =>
            {
                if (!entered) return;
                stands = tried.Value;
                atWorst = most = stands.Length > 0 ? stands[0].Verdict.Utilisation : 0;
                if (most <= 1) atWorst = AtWorst(atSite);
            },
            () => inSpace = entered ? RowStudy.Of(_tunnel, _loads, _row, _steel, _feet.Taken, all, [.. _cases.ForGround().Select(_cases.Loaded)], () => WorstOf(tried.Value)) : null,
            () => limits = Limits());
        RowStrength? row = inSpace?.Strength;
        most = Math.Max(most, MostOf(row));
        StrengthVerdict verdict = (entered, most, atWorst) switch
        {
            (false, _, _) => StrengthVerdict.NothingEntered,
            (_, > 1, _) => StrengthVerdict.DoesNotStand,
            (_, _, > 1) => StrengthVerdict.Marginal,
            _ => StrengthVerdict.Stands,
        };
        ImmutableArray<string> past = PartsPast(verdict, stands.Length > 0 ? stands[0].Strength : null, row);
        var report = new StrengthReport
        {
            Loads = _loads,
            NotChecked = null,
            Verdict = verdict,
            Says = VerdictSentence.Of(verdict, verdict, past, [], _loads),
            FrameParts = past,
            Steel = _steel.Grade.Name,
            Yield = new PressureRange(Pa(_steel.Grade.LeastYieldPa), Pa(_steel.Grade.YieldPa), Pa(_steel.Grade.MostYieldPa)),
            Feet = _feet.Words,
            Limits = [.. limits],
            Combinations = [.. stands.Select(each => each.Strength)],
            Parts = [],
            Worst = stands.FirstOrDefault(each => !each.Verdict.Buckles) is { Bow: { } bow } drawn ? Diagram(drawn.Case, bow, drawn.Lean) : null,
            Row = row,
            Diagnostics = Diagnostics(verdict, stands.Length > 0 ? stands[0].Strength : null),
        };
        return (report, inSpace?.Posts ?? []);
    }

    /// <summary>
    /// The bows that can be the worst: of those alike in width and tie, the middle one, and for every load that changes along the
    /// tunnel the one that gets most of it.
    /// </summary>
    private static ImmutableArray<BowPlace> Distinct(ImmutableArray<BowPlace> all, TunnelLoads loads)
    {
        // The end bows stand against their posts: they are looked at with the whole row.
        ImmutableArray<BowPlace> inner = all.Length > 2 ? [.. all.Skip(1).SkipLast(1)] : all;
        SurfaceLoad[] changing = [.. loads.Cases.SelectMany(load => load.Surfaces).Where(surface => !surface.ByLength.IsEmpty).DistinctBy(surface => string.Join(' ', surface.ByLength))];
        HashSet<int> chosen = [];
        foreach (var alike in inner.GroupBy(place => (Math.Round(place.FilmWidthM, 9), place.Tie is null)))
        {
            BowPlace[] places = [.. alike];
            chosen.Add(places[places.Length / 2].Number);
            foreach (SurfaceLoad surface in changing)
                chosen.Add(places.MaxBy(place => Math.Round(surface.FactorBetween(Length.FromMetres(place.FilmFromM), Length.FromMetres(place.FilmToM)).Value, 9))!.Number);
        }
        return [.. inner.Where(place => chosen.Contains(place.Number))];
    }

    private (CombinationStrength Strength, BowVerdict Verdict, LoadedCase Case, BowTrial Bow, int Lean)[] Stands() =>
        [.. AtSite.Select(each => Stand(each, _taken, _steel)).OrderByDescending(each => Ties.Key(each.Verdict.Utilisation))];

    // Snow presses and wind lifts: in a row that its ends hold, the one may fall behind and the other not.
    private IEnumerable<string> WorstOf((CombinationStrength Strength, BowVerdict Verdict, LoadedCase Case, BowTrial Bow, int Lean)[] stands) => stands
        .DistinctBy(each => each.Case.Fixed.Any(term => _loads.Cases[term.Load].Kind == LoadKind.Snow)).Select(each => each.Case.Code);

    private ImmutableArray<BowTrial> Trials(IEnumerable<BowPlace> places) =>
        [.. places.Select(place => new BowTrial(_row.Mesh, place, _steel, _feet.Taken, _loads.Cases, _row.BetweenPurlinsM))];

    private static ImmutableArray<BowTrial> On(ImmutableArray<BowTrial> bows, PlanarFoot foot) => [.. bows.Select(bow => bow.On(foot))];

    private static (CombinationStrength Strength, BowVerdict Verdict, LoadedCase Case, BowTrial Bow, int Lean) Stand(LoadedCase each, ImmutableArray<BowTrial> bows, BowSteel steel)
    {
        (BowVerdict Verdict, BowTrial Bow, int Lean) worst = (new BowVerdict(-1, false, 0, false, default, 0), bows[0], 0);
        Span<BowTerm> room = stackalloc BowTerm[LoadedCase.MostTerms];
        foreach (BowTrial bow in bows)
        {
            foreach (int lean in bow.LeansOf(each.At(0, room)))
            {
                BowVerdict verdict = bow.Try(each.At(0, room), lean, DesignMethod.Lrfd, steel);
                if (Ties.Exceeds(verdict.Utilisation, worst.Verdict.Utilisation))
                    worst = (verdict, bow, lean);
            }
        }
        (Length across, Length up) = Spot(worst.Bow.Mesh, worst.Verdict);
        var strength = new CombinationStrength(
            each.Code, each.Words, double.IsFinite(worst.Verdict.Utilisation) ? Ratio.FromValue(worst.Verdict.Utilisation) : null, worst.Bow.Place.Number, across, up, Governs(worst.Verdict),
            double.IsFinite(worst.Verdict.BucklingFactor) ? Ratio.FromValue(worst.Verdict.BucklingFactor) : null);
        return (strength, worst.Verdict, each, worst.Bow, worst.Lean);
    }

    private double AtWorst(LoadedCase[] atSite)
    {
        BowSteel weak = _steel with { Grade = _steel.Grade.WithYield(_steel.Grade.LeastYieldPa) };
        // It is enough to know whether any passes 1: the rest need not be tried.
        double most = 0;
        foreach (ImmutableArray<BowTrial> bows in new[] { _weak, _strong }.Distinct())
        {
            foreach (LoadedCase each in atSite)
            {
                most = Math.Max(most, Stand(each, bows, weak).Verdict.Utilisation);
                if (most > 1) return most;
            }
        }
        return most;
    }

    private StrengthLimit[] Limits()
    {
        // Bows of its own, since a bow is not for two pieces of work at once.
        ImmutableArray<BowTrial> taken = On(_taken, _feet.Taken), weak = On(_taken, _feet.Least), strong = On(_taken, _feet.Most);
        return
        [
            .. new[] { StrengthLevel.Code, StrengthLevel.Storm }
                .SelectMany(level => new[] { LoadScale.Snow, LoadScale.WindSpeedSquared }.Select(scale => Limit(scale, level, taken, weak, strong))).OfType<StrengthLimit>(),
        ];
    }

    private StrengthLimit? Limit(LoadScale scale, StrengthLevel level, ImmutableArray<BowTrial> bows, ImmutableArray<BowTrial> weak, ImmutableArray<BowTrial> strong)
    {
        ImmutableArray<LoadedCase> cases = [.. _cases.Scaled(scale, level)];
        double mostPa = scale == LoadScale.Snow ? MostSnowPa : MostWindPa;
        BowLimit taken = Find(bows, _steel.Grade.YieldPa);
        if (taken.Case is not { } governing) return null;
        double weakestPa = Math.Min(mostPa, Find(weak, _steel.Grade.LeastYieldPa).ReferencePa), strongestPa = Math.Min(mostPa, Find(strong, _steel.Grade.MostYieldPa).ReferencePa);
        // Stiffer feet take more moment, so now and then the stiffer end is the weaker one.
        double leastPa = Math.Min(taken.ReferencePa, Math.Min(weakestPa, strongestPa)), greatestPa = Math.Max(taken.ReferencePa, Math.Max(weakestPa, strongestPa));
        (Length across, Length up) = Spot(_row.Mesh, taken.Verdict);
        return new StrengthLimit
        {
            Level = level,
            GroundSnow = scale == LoadScale.Snow ? new PressureRange(Pa(leastPa), Pa(taken.ReferencePa), Pa(greatestPa)) : null,
            Wind = scale == LoadScale.Snow ? null : new SpeedRange(_loads.WindOf(Pa(leastPa)), _loads.WindOf(Pa(taken.ReferencePa)), _loads.WindOf(Pa(greatestPa))),
            RoofSnow = scale == LoadScale.Snow ? Pa(_loads.Case(governing.Code).RoofSnow.Pascals * taken.ReferencePa) : null,
            CaseCode = governing.Code,
            CaseWords = governing.Words,
            Bow = taken.Place,
            Across = across,
            Up = up,
            Governs = Governs(taken.Verdict),
        };

        BowLimit Find(ImmutableArray<BowTrial> those, double yieldPa) =>
            LimitFinder.Find(those, cases, mostPa, DesignMethod.Lrfd, _steel, _steel.Grade.WithYield(yieldPa));
    }

    private BowDiagram Diagram(LoadedCase each, BowTrial bow, int lean)
    {
        Span<BowTerm> room = stackalloc BowTerm[LoadedCase.MostTerms];
        BowVerdict verdict = bow.Try(each.At(0, room), lean, DesignMethod.Lrfd, _steel);
        var points = ImmutableArray.CreateBuilder<BowDiagramPoint>();
        for (int node = 0; node < bow.Mesh.AlongM.Length; node++)
        {
            bool last = node == bow.Mesh.Chords;
            MemberForces forces = bow.ForcesAt(last ? node - 1 : node, last);
            double utilisation = TubeCheck.Of(verdict.Check.Strength, forces).Utilisation;
            points.Add(new BowDiagramPoint(
                new PlanePoint(Length.FromMetres(bow.Mesh.XM[node]), Length.FromMetres(bow.Mesh.ZM[node])),
                Length.FromMetres(bow.Bow.Movement[3 * node]), Length.FromMetres(bow.Bow.Movement[(3 * node) + 1]),
                Force.FromNewtons(forces.AxialN), Force.FromNewtons(forces.ShearZN), Moment.FromNewtonMetres(forces.MomentYNm), Ratio.FromValue(utilisation)));
        }
        return new BowDiagram(bow.Place.Number, each.Code, each.Words, points.ToImmutable(), Reaction(bow, right: false), Reaction(bow, right: true));
    }

    private static FootReaction Reaction(BowTrial bow, bool right)
    {
        (double acrossN, double upN, double momentNm) = bow.Bow.Reaction(right, bow.Applied);
        return new FootReaction(Force.FromNewtons(acrossN), Force.FromNewtons(upN), Moment.FromNewtonMetres(momentNm));
    }

    private static (Length Across, Length Up) Spot(BowMesh mesh, BowVerdict verdict)
    {
        int node = verdict.Chord + (verdict.AtEnd ? 1 : 0);
        return (Length.FromMetres(mesh.XM[node]), Length.FromMetres(mesh.ZM[node]));
    }

    private static string Governs(BowVerdict verdict) => verdict.Buckles ? "the bow buckles in its plane" : verdict.Check.Governs;

    private static Pressure Pa(double pascals) => Pressure.FromPascals(pascals);

    private static double MostOf(RowStrength? row) => row switch
    {
        null => 0,
        { Buckles.IsEmpty: false } or { SnowBucklingFactor.Value: < 1 } => double.PositiveInfinity,
        _ => row.Parts.Select(part => part.Utilisation?.Value ?? double.PositiveInfinity).DefaultIfEmpty(0).Max(),
    };

    // The worst bow, then what of the row is past its limit besides bows.
    private static ImmutableArray<string> PartsPast(StrengthVerdict verdict, CombinationStrength? worst, RowStrength? row) => verdict switch
    {
        StrengthVerdict.Stands or StrengthVerdict.NothingEntered => [],
        StrengthVerdict.Marginal => ["the bows, with the weakest steel or feet"],
        StrengthVerdict.DoesNotStand =>
        [
            .. worst is { Utilisation: null or { Value: > 1 } } ? [$"the bows, {worst.Governs}"] : Array.Empty<string>(),
            .. row is { Buckles.IsEmpty: false } or { SnowBucklingFactor.Value: < 1 } ? ["the row of bows, buckling in space"] : Array.Empty<string>(),
            .. row?.Parts.Where(part => part.Utilisation is null or { Value: > 1 }).Select(part => $"{part.Kind}s in the row, {part.Governs}") ?? [],
        ],
    };

    private ImmutableArray<Diagnostic> Diagnostics(StrengthVerdict verdict, CombinationStrength? worst)
    {
        List<Diagnostic> found = [.. _loads.Diagnostics];
        string? seen = worst is null ? null : worst.Utilisation is { } used ? FormattableString.Invariant($"{used.Value:0.00} of the strength under {worst.Words}") : $"buckles under {worst.Words}";
        if (verdict == StrengthVerdict.DoesNotStand)
            found.Add(new Diagnostic("strength.bow.does-not-stand", Severity.Warning, "frame", "On these assumptions the frame does not stand the entered loads.", seen, "closer bows, a tie, a heavier or stronger tube, or what a licensed engineer finds"));
        if (verdict == StrengthVerdict.Marginal)
            found.Add(new Diagnostic("strength.bow.marginal", Severity.Warning, "frame", "The frame is marginal under the entered loads: with the weakest steel or feet of the range it passes a limit.", seen, "the yield stress from the seller, or a stronger frame"));
        return [.. found];
    }
}
