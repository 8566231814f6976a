using System.Collections.Immutable;
using Hoopwright.Frames;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Models;
using Hoopwright.Strength.Steel;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Strength.Models;

public sealed class BowStudyTests
{
    private const double Gravity = 9.80665;

    internal static Tunnel TunnelOf(string example) => TunnelOf(PlanOf(example));

    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("round-14ft")]
    [InlineData("metric-9m")]
    public void The_feet_carry_all_the_wind_on_the_bare_frame_that_of_boards_and_purlins_too(string example)
    {
        Tunnel tunnel = TunnelOf(example);
        (BowTrial trial, TunnelLoads loads) = TrialOf(tunnel, 3);
        int load = IndexOf(loads, "building-bare-left");
        double heightM = trial.Mesh.ZM.Max(), onBowN = 0;
        foreach (LineLoad line in loads.Cases[load].Lines)
        {
            double perM = line.Amount.NewtonsPerMetre * 100;
            // Both legs of the bow stand in it, one after the other.
            if (line.Per == LoadMeasure.Projection) onBowN += perM * ((2 * heightM) - trial.Mesh.ZM[0] - trial.Mesh.ZM[^1]);
            // Corner braces hold the end bays, and hand nothing to a bow between.
            else onBowN += perM * trial.Place.FilmWidthM * tunnel.Members.Count(member => line.MemberIds.Contains(member.Id) && member.Role is (MemberRole.Purlin or MemberRole.RidgePurlin or MemberRole.HipBoard or MemberRole.RollTube));
        }
        trial.Try([new BowTerm(load, 100)], 0, DesignMethod.Lrfd);
        double feetN = trial.Bow.Reaction(false, trial.Applied).AcrossN + trial.Bow.Reaction(true, trial.Applied).AcrossN;
        Assert.Equal(-onBowN, feetN, 1e-6 * onBowN);
    }

    [Theory]
    [InlineData("gothic-26ft", "snow-balanced")]
    [InlineData("gothic-26ft", "snow-blown-left")]
    [InlineData("round-14ft", "snow-balanced")]
    [InlineData("metric-9m", "snow-balanced")]
    public void The_feet_carry_all_the_snow_that_lies_on_the_bow(string example, string code)
    {
        Tunnel tunnel = TunnelOf(example);
        (BowTrial trial, TunnelLoads loads) = TrialOf(tunnel, 3);
        int load = IndexOf(loads, code);
        // Trapezoids over the plan between points of the profile, by the film line itself and not by the chords.
        LoadProfile snow = Assert.Single(loads.Cases[load].Surfaces).PlanGravity;
        double onBowN = 0, stepM = tunnel.Bow.FilmLine.Length.Metres / 4000;
        for (int step = 0; step < 4000; step++)
        {
            double fromM = step * stepM, toM = fromM + stepM;
            double planM = Math.Abs((tunnel.Bow.FilmLine.PointAt(Length.FromMetres(toM)).Across - tunnel.Bow.FilmLine.PointAt(Length.FromMetres(fromM)).Across).Metres);
            onBowN += (snow.AtPa(fromM, true) + snow.AtPa(toM, false)) / 2 * planM * trial.Place.FilmWidthM * 100;
        }
        trial.Try([new BowTerm(load, 100)], 0, DesignMethod.Lrfd);
        double feetN = trial.Bow.Reaction(false, trial.Applied).UpN + trial.Bow.Reaction(true, trial.Applied).UpN;
        // The middle of the tube spans half a tube less at either side than the film.
        Assert.Equal(onBowN, feetN, 0.012 * onBowN);
    }

    [Fact]
    public void The_feet_carry_the_weight_of_tube_purlins_and_film()
    {
        Tunnel tunnel = TunnelOf("gothic-26ft");
        (BowTrial trial, TunnelLoads loads) = TrialOf(tunnel, 3);
        double widthM = trial.Place.FilmWidthM, bayM = 72 * 0.3048 / 18;
        double tieM = tunnel.Members.First(member => member.Role == MemberRole.Tie).CutLength.Metres;
        // 2.375 x 0.095 in weighs 3.4462 kg/m, 1.66 x 0.083 in 2.0826 kg/m and 1.315 x 0.065 in 1.2927 kg/m by the exact formula (7850 kg/m³).
        double frameN = ((3.4462 * tunnel.Bow.CentreLine.Length.Metres) + (3 * 2.0826 * bayM) + (1.2927 * tieM)) * Gravity;
        trial.Try([new BowTerm(IndexOf(loads, "dead-frame"), 1)], 0, DesignMethod.Lrfd);
        double feetN = trial.Bow.Reaction(false, trial.Applied).UpN + trial.Bow.Reaction(true, trial.Applied).UpN;
        Assert.Equal(bayM, widthM, 1e-9);
        Assert.Equal(frameN, feetN, 0.003 * frameN);
    }

    [Fact]
    public void An_even_pressure_on_the_film_lifts_with_pressure_times_span()
    {
        Tunnel tunnel = TunnelOf("round-14ft");
        BowRow row = BowRow.Of(tunnel, SteelOf(tunnel));
        double lengthM = tunnel.Bow.FilmLine.Length.Metres;
        var load = new LoadCase
        {
            Code = "blown",
            Words = "blown up",
            Kind = LoadKind.Wind,
            TwinCode = "blown",
            Surfaces = [new SurfaceLoad { Normal = LoadProfile.Of([(0, -50), (lengthM, -50)]) }],
        };
        var trial = new BowTrial(row.Mesh, row.Places[2], SteelOf(tunnel), PlanarFoot.BuiltIn, [load], row.BetweenPurlinsM);
        trial.Try([new BowTerm(0, 1)], 0, DesignMethod.Lrfd);
        (double leftAcrossN, double leftUpN, _) = trial.Bow.Reaction(false, trial.Applied);
        (double rightAcrossN, double rightUpN, _) = trial.Bow.Reaction(true, trial.Applied);
        double liftN = 50 * tunnel.Span.Metres * row.Places[2].FilmWidthM;
        Assert.Equal(-liftN, leftUpN + rightUpN, 0.005 * liftN);
        Assert.Equal(0, leftAcrossN + rightAcrossN, 1e-6 * liftN);
        Assert.Equal(leftUpN, rightUpN, 1e-6 * liftN);
    }

    [Fact]
    public void At_a_limit_the_strength_is_used_to_the_full()
    {
        Tunnel tunnel = TunnelOf("round-14ft");
        (BowTrial trial, TunnelLoads loads) = TrialOf(tunnel, 3);
        BowSteel steel = SteelOf(tunnel);
        ImmutableArray<LoadedCase> cases = [.. new BowCases(loads).Scaled(LoadScale.Snow, StrengthLevel.Storm)];
        BowLimit limit = LimitFinder.Find([trial], cases, 20_000, DesignMethod.Lrfd, steel);
        Span<BowTerm> room = stackalloc BowTerm[16];
        Assert.InRange(trial.Try(limit.Case!.At(limit.ReferencePa, room), limit.Lean, DesignMethod.Lrfd, steel).Utilisation, 0.995, 1.005);
        foreach (LoadedCase each in cases)
        {
            foreach (int lean in (int[])[-1, 1])
                Assert.True(trial.Try(each.At(limit.ReferencePa * 0.99, room), lean, DesignMethod.Lrfd, steel).Utilisation < 1);
        }
    }

    [Fact]
    public void Closer_bows_and_thicker_walls_never_stand_less()
    {
        string plan = """
            { "hoopwright": "1.0", "units": "us", "frame": { "span": "20 ft", "length": "48 ft", "bowSpacing": "SPACING", "bow": { "shape": "gothic", "sideHeight": "4 ft", "peakHeight": "10 ft", "shoulderRadius": "2 ft", "archRadius": "17 ft" },
              "bowTube": { "outside": "1.9 in", "wall": "WALL", "yield": "50 ksi" } }, "ends": { "front": { "closing": "open" }, "back": { "closing": "open" } } }
            """;
        StrengthReport Of(string spacing, string wall)
        {
            Plan read = PlanReader.Read(System.Text.Encoding.UTF8.GetBytes(plan.Replace("SPACING", spacing, StringComparison.Ordinal).Replace("WALL", wall, StringComparison.Ordinal))).Plan;
            return StrengthPlanner.Plan(TunnelOf(read), new Answers(UnitSystem.UsCustomary));
        }
        double[] bySpacing = [.. new[] { "6 ft", "4 ft", "3 ft" }.Select(spacing => SnowPa(Of(spacing, "0.083 in")))];
        double[] byWall = [.. new[] { "0.065 in", "0.083 in", "0.109 in" }.Select(wall => SnowPa(Of("4 ft", wall)))];
        Assert.True(bySpacing[0] < bySpacing[1] && bySpacing[1] < bySpacing[2], string.Join(' ', bySpacing));
        Assert.True(byWall[0] < byWall[1] && byWall[1] < byWall[2], string.Join(' ', byWall));

        static double SnowPa(StrengthReport report) => report.Limits.First(limit => limit.Level == StrengthLevel.Storm && limit.GroundSnow is not null).GroundSnow!.Taken.Pascals;
    }

    [Fact]
    public void A_bow_of_plastic_pipe_is_not_checked_and_says_so()
    {
        Plan steel = PlanOf("round-14ft"), plan = steel with { Frame = steel.Frame with { BowTube = steel.Frame.BowTube with { Material = TubeMaterial.Pvc } } };
        StrengthReport report = StrengthPlanner.Plan(TunnelOf(plan), new Answers(UnitSystem.UsCustomary));
        Assert.NotNull(report.NotChecked);
        Assert.Empty(report.Limits);
        Assert.Contains(report.Diagnostics, found => found.Code == "strength.not-checked");
    }

    [Fact]
    public void Least_taken_and_most_stand_in_order_and_the_code_asks_more_than_the_storm()
    {
        foreach (string example in (string[])["gothic-26ft", "round-14ft"])
        {
            Plan plan = PlanOf(example);
            StrengthReport report = StrengthPlanner.Plan(TunnelOf(plan), new Answers(UnitSystem.UsCustomary));
            foreach (StrengthLimit limit in report.Limits)
            {
                Assert.True(limit.GroundSnow is null || (limit.GroundSnow.Least <= limit.GroundSnow.Taken && limit.GroundSnow.Taken <= limit.GroundSnow.Most));
                Assert.True(limit.Wind is null || (limit.Wind.Least.MetresPerSecond <= limit.Wind.Taken.MetresPerSecond && limit.Wind.Taken.MetresPerSecond <= limit.Wind.Most.MetresPerSecond));
            }
            double code = report.Limits.First(limit => limit.Level == StrengthLevel.Code && limit.GroundSnow is not null).GroundSnow!.Taken.Pascals;
            double storm = report.Limits.First(limit => limit.Level == StrengthLevel.Storm && limit.GroundSnow is not null).GroundSnow!.Taken.Pascals;
            Assert.True(code < storm);
        }
    }

    private static Plan PlanOf(string example) =>
        PlanReader.Read(File.ReadAllBytes(Path.Combine(SamplePlans.Root, "examples", example + ".json"))).Plan;

    private static Tunnel TunnelOf(Plan plan) => TunnelPlanner.LayOut(plan, new Answers(plan.Units ?? UnitSystem.UsCustomary)).Tunnel!;

    private static BowSteel SteelOf(Tunnel tunnel) => new(tunnel.BowTube, SteelGrades.Unknown);

    private static (BowTrial Trial, TunnelLoads Loads) TrialOf(Tunnel tunnel, int bow)
    {
        TunnelLoads loads = LoadPlanner.Plan(tunnel, new Answers(UnitSystem.UsCustomary));
        BowRow row = BowRow.Of(tunnel, SteelOf(tunnel));
        return (new BowTrial(row.Mesh, row.Places[bow - 1], SteelOf(tunnel), new PlanarFoot(5e4), loads.Cases, row.BetweenPurlinsM), loads);
    }

    private static int IndexOf(TunnelLoads loads, string code) => Enumerable.Range(0, loads.Cases.Length).First(at => loads.Cases[at].Code == code);
}
