using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Running;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Models;
using Hoopwright.Strength.Parts;
using Hoopwright.Strength.Steel;

namespace Hoopwright.Strength;

/// <summary>Works out what a tunnel stands.</summary>
public static class StrengthPlanner
{
    /// <summary>What it stands. Never throws for a tunnel that was laid out.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="answers">Collects every answer and default used.</param>
    /// <param name="sideBySide">How to run what needs nothing of each other; null for one after the other.</param>
    public static StrengthReport Plan(Tunnel tunnel, Answers answers, SideBySide? sideBySide = null)
    {
        TunnelLoads loads = LoadPlanner.Plan(tunnel, answers);
        FootRange feet = FeetOf(tunnel, answers);
        if (tunnel.BowTube.Material != TubeMaterial.GalvanizedSteel)
            return NotChecked(loads, feet, NotCovered.PlasticPipe.Reason);
        BowStudy study = StudyOf(tunnel, loads, feet, answers);
        var storm = new Lazy<StormLimits>(() => StormOf(tunnel, loads, study));
        if (!study.Entered) return study.Report(InTurn.Run).Bows with { LazyStorm = storm };
        (StrengthReport Bows, ImmutableArray<RowPostForce> EndPosts)? report = null;
        ImmutableArray<FootLoad> onPosts = [];
        ImmutableArray<PartStrength> parts = [];
        sideBySide ??= InTurn.Run;
        sideBySide(
            () => report = study.Report(sideBySide),
            () =>
            {
                onPosts = study.FootLoads(softest: false);
                parts = TunnelParts.Of(tunnel, loads, study, onPosts, answers);
            });
        return TunnelParts.Join(report!.Value.Bows with { LazyStorm = storm }, tunnel, onPosts, parts.AddRange(TunnelParts.InRow(tunnel, report.Value.EndPosts, answers)));
    }

    /// <summary>The bows by themselves, for a first answer; null when nothing is entered to stand, or they are of a tube that is not checked.</summary>
    /// <param name="tunnel">The tunnel.</param>
    public static BowsAlone? BowsAlone(Tunnel tunnel)
    {
        var answers = new Answers(tunnel.Units);
        if (tunnel.BowTube.Material != TubeMaterial.GalvanizedSteel) return null;
        BowStudy study = StudyOf(tunnel, LoadPlanner.Plan(tunnel, answers), FeetOf(tunnel, answers), answers);
        return study is { Entered: true, AtSite.Length: > 0 } ? new BowsAlone(study) : null;
    }

    private static StormLimits StormOf(Tunnel tunnel, TunnelLoads loads, BowStudy study) => new(study.StormLimits(), StormParts.Of(tunnel, study, loads), (loads.GroundSnow, loads.Wind) switch
    {
        (null, null) => "No wind and no ground snow is entered, so it is not known at which posts, ends and film reach what is allowed.",
        (_, null) => "No wind is entered, so it is not known in which wind posts, ends and film reach what is allowed.",
        (null, _) => "No ground snow is entered, so it is not known under which snow posts reach what is allowed.",
        _ => null,
    });

    /// <summary>The steel of a tube: of the yield stress that the plan states, or the weakest on sale.</summary>
    internal static SteelGrade GradeOf(Tube tube, string path, string says, Answers answers)
    {
        SteelGrade unknown = SteelGrades.Unknown;
        double yieldPa = answers.Take(
            path, new Usual<Pressure>(Pressure.FromPascals(unknown.YieldPa), says, unknown.Source, Matters: true), tube.Yield).Pascals;
        if (tube.Yield is null) return unknown;
        // A stated yield is what the mill promises at least: there is no weaker end to look at.
        return unknown with { Name = "steel of the stated yield", YieldPa = yieldPa, LeastYieldPa = yieldPa, MostYieldPa = 1.2 * yieldPa, UltimatePa = Math.Max(yieldPa, 1.1 * yieldPa) };
    }

    private static FootRange FeetOf(Tunnel tunnel, Answers answers)
    {
        LegBase foot = answers.Take("ground.legBase", StrengthDefaults.LegBaseOf(tunnel.Anchor), tunnel.Plan.Ground.LegBase);
        return FootRange.Of(tunnel, foot, tunnel.Plan.Ground.LegBase is not null);
    }

    private static BowStudy StudyOf(Tunnel tunnel, TunnelLoads loads, FootRange feet, Answers answers)
    {
        SteelGrade grade = GradeOf(tunnel.Plan.Frame.BowTube, "frame.bowTube.yield", "Yield stress of the bows' steel; the seller states it.", answers);
        return new BowStudy(tunnel, loads, new BowSteel(tunnel.BowTube, grade), feet);
    }

    private static StrengthReport NotChecked(TunnelLoads loads, FootRange feet, string reason) => new()
    {
        Loads = loads,
        NotChecked = reason,
        Verdict = StrengthVerdict.NothingEntered,
        Says = reason,
        Steel = "",
        Yield = null,
        Feet = feet.Words,
        Limits = [],
        Combinations = [],
        Parts = [],
        Worst = null,
        Diagnostics = [.. loads.Diagnostics, new Diagnostic("strength.not-checked", Severity.Warning, "frame.bowTube.material", reason, null, "steel tube")],
    };
}
