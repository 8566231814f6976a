using System.Collections.Immutable;
using Hoopwright.Cover.Pull;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Cover;

/// <summary>Plans the cover of a tunnel: pieces of film, the lines that hold them, and what pulls them over.</summary>
public static class CoverPlanner
{
    /// <summary>Plans the cover. Never throws for a tunnel.</summary>
    /// <param name="tunnel">The tunnel as laid out.</param>
    /// <param name="answers">Collects every answer and default used.</param>
    public static CoverOutcome Plan(Tunnel tunnel, Answers answers)
    {
        CoverRules rules = CoverRules.Of(tunnel.Plan.Cover, answers);
        ImmutableArray<CoverPiece> pieces = new FilmPieces(tunnel, rules).All();
        ImmutableArray<FasteningRun> runs = new FasteningRuns(tunnel, rules).All();
        PullingRopes ropes = Ropes(pieces[0], rules);
        var pull = new PullPlanner(tunnel, ropes, answers);
        var plan = new CoverPlan
        {
            Pieces = pieces,
            Runs = runs,
            Order = rules.Order,
            Layers = rules.Layers,
            Inflation = rules.Inflated ? rules.InflationPressure : null,
            SharpPoints = SharpPoints(tunnel),
            RoofEndTrim = rules.RoofEndTrim,
            EndAbove = rules.EndAbove,
            RoofSideAllowance = rules.RoofSideAllowance,
            Thickness = rules.Thickness,
            TemporaryWireSpacing = rules.TemporaryWireSpacing,
            Ropes = ropes,
            Band = pull.Band(),
            LazyPull = new Lazy<PullPlan>(pull.Plan),
            BowTape = (tunnel.RoofArc() * tunnel.Stations.Length) + (rules.TapePerPoint * SharpPoints(tunnel)),
        };
        return new CoverOutcome(plan, [.. Check(tunnel, rules), .. pull.Found()]);
    }

    /// <summary>How tight the roof film is pulled, for those who need nothing else of the cover.</summary>
    /// <param name="tunnel">The tunnel as laid out.</param>
    /// <param name="answers">Collects what the pull rests on; the answers that lay the film out are the cover's.</param>
    internal static PullPlanner PullOf(Tunnel tunnel, Answers answers)
    {
        var rules = CoverRules.Of(tunnel.Plan.Cover, new Answers(tunnel.Units));
        return new PullPlanner(tunnel, Ropes(new FilmPieces(tunnel, rules).Roof(), rules), answers);
    }

    /// <summary>Evenly spread with half a gap at the ends, so that the whole edge comes over together. Two at least.</summary>
    private static PullingRopes Ropes(CoverPiece roof, CoverRules rules)
    {
        int count = Math.Max(2, (int)Math.Floor(roof.AlongRoll / rules.RopeSpacing) + 1);
        return new PullingRopes(count, roof.AcrossRoll + rules.RopeAllowance,
            [.. Enumerable.Range(0, count).Select(rope => roof.AlongRoll * ((2 * rope) + 1) / (2 * count))]);
    }

    /// <summary>What could cut film that lies over it: the top of each end-wall post, both ends of each lengthwise tube.</summary>
    private static int SharpPoints(Tunnel tunnel) =>
        tunnel.Ends.Sum(end => end.Posts.Length) + (2 * tunnel.Members.Count(member => member.Role is MemberRole.Purlin or MemberRole.RidgePurlin));

    private static ImmutableArray<Diagnostic> Check(Tunnel tunnel, CoverRules rules)
    {
        var found = ImmutableArray.CreateBuilder<Diagnostic>();
        Length least = CoverDefaults.LeastSideAllowance.ValueIn(tunnel.Units);
        if (rules.RoofSideAllowance < least)
        {
            found.Add(new Diagnostic("cover.side-allowance.short", Severity.Warning, "cover.roofSideAllowance",
                "So little film past the edge leaves next to nothing to pull by.", tunnel.Plan.Cover.RoofSideAllowance?.Text, $"{TapeText.Of(least, tunnel.Units)} or more"));
        }
        if (rules.RoofEndAllowance < rules.RoofEndTrim)
        {
            found.Add(new Diagnostic("cover.end-allowance.short", Severity.Warning, "cover.roofEndAllowance",
                "The roof film is cut shorter past the end bow than it is to be left after trimming.",
                TapeText.Of(rules.RoofEndAllowance, tunnel.Units), $"{TapeText.Of(rules.RoofEndTrim, tunnel.Units)} or more"));
        }
        if (tunnel.BowTube.Material == TubeMaterial.Pvc)
        {
            found.Add(new Diagnostic("cover.film-on-pvc", Severity.Warning, "frame.bowTube.material",
                "PVC ages film that lies on it: put tape between them, or expect to re-cover sooner (common practice, no source).",
                null, "tape over every bow"));
        }
        if (!rules.EndsOnBow && tunnel.Ends.Any(end => end.Closing != EndClosing.RoofSheet))
        {
            found.Add(new Diagnostic("cover.batten-on-tube", Severity.Warning, "cover.endsOnBow",
                "Battens on the end bows have only steel tube behind them: they want self-drilling screws, not nails.", "false", "true"));
        }
        return found.ToImmutable();
    }
}
