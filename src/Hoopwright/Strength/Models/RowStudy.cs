using System.Collections.Immutable;
using Hoopwright.Frames;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Steel;
using Hoopwright.Strength.Wood;

namespace Hoopwright.Strength.Models;

/// <summary>
/// Puts the whole row of a tunnel through every combination of the site: all of them linear, and at second order those that can be the
/// worst for any kind of member. Looks for the row's buckling under snow.
/// </summary>
internal sealed class RowStudy
{
    // A second-order run takes as long as fifty linear combinations. What is left out lies by its linear use under what was solved.
    private const int MostSolved = 9;

    // What could pass the worst by less than this is left alone: mirror images of what was solved, for the most part.
    private const double Worth = 1.02;

    // Where that many buckle, more of them tell nothing new.
    private const int MostBuckled = 3;

    private const double Tolerance = 1e-8;

    // A level load of a fiftieth of the weight leads the way by far over notional loads of 0.3 %.
    private const double ClearPush = 0.02;

    // The growth of a member that hardly carries anything says nothing of the worst.
    private const double CountsFrom = 0.5;

    private static readonly int KindCount = Enum.GetValues<RowKind>().Length;

    private static readonly RowKind[] Kinds = [RowKind.Bow, RowKind.EndBow, RowKind.Brace, RowKind.Purlin, RowKind.Tie];

    private readonly TunnelLoads _all;
    private readonly RowFrame _frame;
    private readonly RowLoads _loads;
    private readonly RowStrengths _strengths;
    private readonly StaticSolver _solver;
    private readonly int[] _ties;
    private readonly BowTrial _plain;
    private readonly BowTrial? _tied;
    private readonly double[] _grown = new double[KindCount];
    private readonly (double Use, RowPart Part)?[] _worst = new (double, RowPart)?[KindCount];
    private readonly List<string> _solved = [];
    private readonly List<string> _buckles = [];

    private RowStudy(TunnelLoads all, RowFrame frame, RowLoads loads, FrameMesh mesh, BowSteel steel, PlanarFoot foot)
    {
        (_all, _frame, _loads, _strengths, _solver) = (all, frame, loads, new RowStrengths(frame), new StaticSolver(mesh));
        BowTrial Trial(BowPlace place) => new(frame.Row.Mesh, place, steel, foot, [], frame.Row.BetweenPurlinsM);
        _plain = Trial(frame.Row.Places[0] with { Tie = null });
        _tied = frame.Row.Places.FirstOrDefault(place => place.Tie is not null) is { } tied ? Trial(tied) : null;
        _ties = [.. Enumerable.Range(0, frame.Pieces.Count).Where(at => frame.Pieces[at].Kind == RowKind.Tie)];
        Array.Fill(_grown, 1);
    }

    /// <summary>What the row does; null where the site has no combination to look at.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="loads">The load cases.</param>
    /// <param name="row">Its bows.</param>
    /// <param name="steel">Their tube.</param>
    /// <param name="foot">How their feet stand.</param>
    /// <param name="atSite">Combinations at strength level.</param>
    /// <param name="forPosts">Combinations that posts are held against.</param>
    /// <param name="worstAlone">Asked once, for the names of the combinations that are the worst at second order for bows by themselves.</param>
    /// <param name="everything">True to solve every combination at second order: what the choice of the worst is held against.</param>
    internal static RowOutcome? Of(
        Tunnel tunnel, TunnelLoads loads, BowRow row, BowSteel steel, PlanarFoot foot, IReadOnlyList<LoadedCase> atSite, IReadOnlyList<LoadedCase> forPosts, Func<IEnumerable<string>> worstAlone, bool everything = false)
    {
        if (atSite.Count == 0) return null;
        var frame = new RowFrame(tunnel, row, steel, foot);
        var cases = new RowLoads(frame, loads, atSite.Concat(forPosts).SelectMany(each => each.Fixed).Select(term => term.Load));
        var model = new FrameModel { Nodes = [.. frame.Nodes], Members = [.. frame.Members], LoadCases = cases.Cases };
        return FrameMesh.Of(model) is { } mesh ? new RowStudy(loads, frame, cases, mesh, steel, foot) { Everything = everything }.Look(atSite, forPosts, worstAlone) : null;
    }

    private bool Everything { get; init; }

    private RowOutcome Look(IReadOnlyList<LoadedCase> atSite, IReadOnlyList<LoadedCase> forPosts, Func<IEnumerable<string>> worstAlone)
    {
        // Bows that nothing holds upright along the tunnel fall over under anything.
        if (RowLook.Of(_solver, _loads, _strengths, _ties) is not { } look) return new RowOutcome(new RowStrength([], null, atSite.Count, [atSite[0].Words], [atSite[0].Words]), []);
        RowCase[] all = [.. atSite.SelectMany(Ways)];
        double[] uses = new double[KindCount * all.Length];
        for (int at = 0; at < all.Length; at++) _strengths.Most(look.Sections(all[at]), uses.AsSpan(at * KindCount, KindCount));
        ImmutableArray<RowPostForce> posts = PostForces(look, forPosts);

        HashSet<int> done = [];
        for (int at = 0; Everything && at < all.Length; at++) Take(at);
        // What presses a bow grows more than what lifts it, so the worst by the first look need not be the worst in the end: bows by themselves know.
        foreach (string code in Everything ? [] : worstAlone())
        {
            if (Greatest(uses, RowKind.Bow, at => all[at].Case.Code == code) is { Case: >= 0 and var alone }) Take(alone);
        }
        while (!Everything && done.Count < MostSolved && _buckles.Count < MostBuckled && Next(uses, done) is { } next) Take(next);
        double? factor = GreatestSnow(atSite) is { } snow ? SnowFactor(snow) : null;
        return new RowOutcome(
            new RowStrength(
                [.. Kinds.Select(kind => _worst[(int)kind]?.Part).OfType<RowPart>()], factor is { } found ? Ratio.FromValue(found) : null,
                atSite.Count, [.. _solved.Distinct()], [.. _buckles.Distinct()]),
            posts);

        void Take(int next)
        {
            done.Add(next);
            _solved.Add(all[next].Words);
            Solve(all[next], look, uses.AsSpan(next * KindCount, KindCount), uses);
        }
    }

    // Out of plumb the way that the load pushes, or both where it pushes nowhere; film that pulls in the cold, and film that has crept.
    private IEnumerable<RowCase> Ways(LoadedCase each)
    {
        (double acrossN, double alongN, double downN) = _loads.SumOf(each);
        foreach (bool isSlack in _loads.MayGoSlack(each) ? (bool[])[false, true] : [false])
        {
            foreach (int across in Leans(acrossN))
            {
                foreach (int along in Leans(alongN)) yield return new RowCase(each, across, along, isSlack);
            }
        }

        int[] Leans(double pushN) => Math.Abs(pushN) <= ClearPush * downN ? [1, -1] : pushN > 0 ? [1] : [-1];
    }

    /// <summary>
    /// The case to solve next. First the worst of each kind of member by its linear use; then the one that, grown as others of its kind
    /// grew, passes what is known of that kind by most; null when none can.
    /// </summary>
    private int? Next(double[] uses, HashSet<int> done)
    {
        (int? next, double passes) = (null, Worth);
        foreach (RowKind kind in Kinds)
        {
            if (Greatest(uses, kind, _ => true) is { Case: >= 0 and var first } && !done.Contains(first)) return first;
            (int at, double use) = Greatest(uses, kind, each => !done.Contains(each));
            double share = at >= 0 && _worst[(int)kind] is { Use: > 0 } worst ? use * _grown[(int)kind] / worst.Use : 0;
            if (Ties.Exceeds(share, passes)) (next, passes) = (at, share);
        }
        return next;
    }

    private static (int Case, double Use) Greatest(double[] uses, RowKind kind, Func<int, bool> counts)
    {
        (int best, double use) = (-1, 0);
        for (int at = 0; at < uses.Length / KindCount; at++)
        {
            double each = uses[(at * KindCount) + (int)kind];
            if (counts(at) && Ties.Exceeds(each, use)) (best, use) = (at, each);
        }
        return (best, use);
    }

    private void Solve(RowCase each, RowLook look, ReadOnlySpan<double> linear, double[] uses)
    {
        if (Balanced(each, look) is not { } state)
        {
            _buckles.Add(each.Words);
            return;
        }
        Span<double> most = stackalloc double[KindCount];
        most.Clear();
        ReadOnlySpan<double> sections = state.SectionForces.AsSpan();
        TubeStrength[] bows = Bows(sections);
        for (int at = 0; at < _frame.Pieces.Count; at++)
        {
            RowPiece piece = _frame.Pieces[at];
            if (_strengths.Of(at) is not { } own || !_strengths.Counts(at, sections)) continue;
            TubeStrength strength = piece.Kind is RowKind.Bow or RowKind.EndBow ? bows[piece.Bow] : own;
            TubeLimits limits = strength.Limits;
            for (int end = 12 * at; end < 12 * (at + 1); end += 6)
            {
                MemberForces forces = RowStrengths.ForcesOf(sections.Slice(end, 6));
                double use = limits.UseOf(forces);
                most[(int)piece.Kind] = Math.Max(most[(int)piece.Kind], use);
                if (_worst[(int)piece.Kind] is not { } before || Ties.Exceeds(use, before.Use))
                    _worst[(int)piece.Kind] = (use, new RowPart(WordOf(piece.Kind), piece.Member.Id, piece.Member.Place, PartStrength.Shown(use), strength.Check(forces).Governs, each.Words));
            }
        }
        foreach (RowKind kind in Kinds)
        {
            double before = linear[(int)kind];
            if (before > CountsFrom * Greatest(uses, kind, _ => true).Use && double.IsFinite(most[(int)kind])) _grown[(int)kind] = Math.Max(_grown[(int)kind], most[(int)kind] / before);
        }
    }

    // Ties that let go leave more to the bows, and to other ties.
    private FrameState? Balanced(RowCase each, RowLook look)
    {
        var combination = new FrameCombination(each.Case.Code, _loads.Of(each));
        HashSet<int> gone = [.. look.LetGo(each)];
        FrameState? state = _solver.SecondOrder(combination, Tolerance, look.Movement(each), gone);
        while (state is not null && Pressed(state.SectionForces.AsSpan()) is { Count: > 0 } more)
        {
            gone.UnionWith(more);
            state = _solver.SecondOrder(combination, Tolerance, state.Displacements.AsSpan(), gone);
        }
        return state;
    }

    private List<int> Pressed(ReadOnlySpan<double> sections)
    {
        List<int> pressed = [];
        foreach (int tie in _ties)
        {
            if (_strengths.LetsGo(tie, sections)) pressed.Add(tie);
        }
        return pressed;
    }

    // As for bows alone: the lesser of buckling between places held lengthwise, and in the plane of the bow under its forces.
    private TubeStrength[] Bows(ReadOnlySpan<double> sections)
    {
        BowMesh mesh = _frame.Row.Mesh;
        double[] tiesN = new double[_frame.Row.Places.Length], axialN = new double[mesh.Chords];
        foreach (int tie in _ties) tiesN[_frame.Pieces[tie].Bow] = sections[12 * tie];
        var strengths = new TubeStrength[tiesN.Length];
        for (int bow = 0; bow < strengths.Length; bow++)
        {
            for (int chord = 0; chord < axialN.Length; chord++)
            {
                int at = 12 * ((bow * mesh.Chords) + chord);
                axialN[chord] = (sections[at] + sections[at + 6]) / 2;
            }
            // A tie that let go carries nothing at all.
            BowTrial trial = tiesN[bow] == 0 || _tied is null ? _plain : _tied;
            strengths[bow] = trial.StrengthUnder(axialN, tiesN[bow], DesignMethod.Lrfd);
        }
        return strengths;
    }

    private LoadedCase? GreatestSnow(IReadOnlyList<LoadedCase> atSite) => atSite.Where(IsSnowAlone)
        .MaxBy(each => each.Fixed.Sum(term => _all.Cases[term.Load].Kind == LoadKind.Snow ? term.Times : 0));

    private bool IsSnowAlone(LoadedCase each) =>
        each.Fixed.Any(term => _all.Cases[term.Load].Kind == LoadKind.Snow) && each.Fixed.All(term => _all.Cases[term.Load].Kind is LoadKind.Snow or LoadKind.Dead or LoadKind.Crop);

    private double? SnowFactor(LoadedCase snow)
    {
        if (_solver.Linear(new FrameCombination(snow.Code, _loads.Of(new RowCase(snow, 0, 0, false)))) is null) return null;
        return BucklingSolver.Solve(_solver.Work, 1).Factors is [var least, ..] ? least : null;
    }

    /// <summary>Of each post and each kind of duration, what presses or stretches it with bending the most, and what pulls its foot the most.</summary>
    private ImmutableArray<RowPostForce> PostForces(RowLook look, IReadOnlyList<LoadedCase> combinations)
    {
        Dictionary<(string Post, LoadDuration Duration, int Way), (double Stress, RowPostForce Force)> most = [];
        if (_frame.Ends.All(end => end.Posts.IsEmpty)) return [];
        foreach (LoadedCase each in combinations)
        {
            var row = new RowCase(each, 0, 0, false);
            LoadDuration duration = DurationOf(each);
            ReadOnlySpan<double> sections = look.Sections(row);
            foreach (EndWallFrame end in _frame.Ends)
            {
                foreach (EndPostLine line in end.Posts)
                {
                    double pullN = -look.UpN(row, line.Nodes[0]);
                    var section = new WoodSection(line.Board.Thickness.Metres, line.Board.Depth.Metres);
                    for (int at = 12 * line.FirstMember; at < 12 * (line.FirstMember + line.Nodes.Length - 1); at += 6)
                    {
                        ReadOnlySpan<double> s = sections.Slice(at, 6);
                        // Local z of a post lies across the tunnel, so what bends it along the tunnel, on edge, turns about z.
                        var forces = new WoodForces(s[0], s[5], s[4], s[1], s[2]);
                        double stressPa = (Math.Abs(s[0]) / section.AreaM2) + (Math.Abs(s[5]) / section.EdgewiseM3) + (Math.Abs(s[4]) / section.FlatwiseM3);
                        Keep((line.Post.MemberId, duration, s[0] < 0 ? 0 : 1), stressPa, new RowPostForce(line, end.IsFront, each, duration, forces, pullN));
                    }
                    Keep((line.Post.MemberId, LoadDuration.Permanent, 2), pullN, new RowPostForce(line, end.IsFront, each, duration, default, pullN));
                }
            }
        }
        return [.. most.OrderBy(pair => pair.Key.Post, StringComparer.Ordinal).ThenBy(pair => pair.Key.Duration).ThenBy(pair => pair.Key.Way).Select(pair => pair.Value.Force)];

        void Keep((string, LoadDuration, int) key, double stress, RowPostForce force)
        {
            if (!most.TryGetValue(key, out var before) || Ties.Exceeds(stress, before.Stress)) most[key] = (stress, force);
        }
    }

    // What wood carries for longer than wind it is taken to carry as long as snow.
    private LoadDuration DurationOf(LoadedCase each) => each.Fixed.Select(term => _all.Cases[term.Load].Kind switch
    {
        LoadKind.Wind or LoadKind.Construction => LoadDuration.TenMinutes,
        LoadKind.Person => LoadDuration.SevenDays,
        LoadKind.Snow or LoadKind.Temperature => LoadDuration.TwoMonths,
        LoadKind.Dead or LoadKind.Crop => LoadDuration.Permanent,
    }).Max();

    private static string WordOf(RowKind kind) => kind switch
    {
        RowKind.Bow => "bow",
        RowKind.EndBow => "end bow",
        RowKind.Purlin => "purlin",
        RowKind.Tie => "tie",
        RowKind.Brace => "brace",
        RowKind.EndPost => "end post",
        RowKind.Girt => "girt",
    };
}
