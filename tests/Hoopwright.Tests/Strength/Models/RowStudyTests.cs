using Hoopwright.Frames;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Models;
using Hoopwright.Strength.Steel;

namespace Hoopwright.Tests.Strength.Models;

public sealed class RowStudyTests
{
    [Fact]
    public void The_ground_takes_what_the_ends_push_along_and_all_the_weight()
    {
        Tunnel tunnel = BowStudyTests.TunnelOf("gothic-26ft");
        (RowFrame frame, TunnelLoads loads, _) = FrameOf(tunnel);
        int wind = IndexOf(loads, "wind-front-shut-plus"), dead = IndexOf(loads, "dead-frame");
        double pressurePa = loads.Cases[wind].SiteReference!.Value.Pascals;
        var only = new LoadedCase("w", "w", [new BowTerm(wind, pressurePa)], []);
        FrameState state = Assert.Single(FrameSolver.Solve(frame.Model(loads, [only], FrameAnalysisKind.Linear)).States);
        // Half of the push on each end goes to its bow: ½·p·∫z dx, which is ½·p times the area under the middle of the tube.
        double areaM2 = tunnel.Bow.CentreLine.AreaAbove(Length.Zero).SquareMetres;
        double pushN = loads.Cases[wind].Ends.Sum(end => end.AlongTunnel.Pascals) * pressurePa * areaM2 / 2;
        Assert.Equal(-pushN, Sum(state, 1), 0.01 * Math.Abs(pushN));

        var weight = new LoadedCase("d", "d", [new BowTerm(dead, 1)], []);
        state = Assert.Single(FrameSolver.Solve(frame.Model(loads, [weight], FrameAnalysisKind.Linear)).States);
        double bowsN = 19 * 3.4462 * tunnel.Bow.CentreLine.Length.Metres * 9.80665, purlinsN = 3 * 2.0826 * tunnel.Length.Metres * 9.80665;
        double tiesN = 1.2927 * tunnel.Members.Where(member => member.Role == MemberRole.Tie).Sum(member => member.CutLength.Metres) * 9.80665;
        Assert.Equal(bowsN + purlinsN + tiesN, Sum(state, 2), 0.003 * bowsN);
    }

    [Fact]
    public void An_inner_bow_of_a_long_row_under_even_snow_moves_as_it_does_alone()
    {
        Tunnel tunnel = BowStudyTests.TunnelOf("gothic-26ft");
        (RowFrame frame, TunnelLoads loads, BowRow row) = FrameOf(tunnel);
        int snow = IndexOf(loads, "snow-balanced");
        var only = new LoadedCase("s", "s", [new BowTerm(snow, 50)], []);
        FrameState state = Assert.Single(FrameSolver.Solve(frame.Model(loads, [only], FrameAnalysisKind.Linear)).States);
        var steel = new BowSteel(tunnel.BowTube, SteelGrades.Unknown);
        var trial = new BowTrial(row.Mesh, row.Places[9], steel, new PlanarFoot(5e4), loads.Cases, row.BetweenPurlinsM);
        trial.Bow.Solve(trial.Loads[snow].Applied.Select(value => value * 50).ToArray(), trial.Loads[snow].Spread.Select(value => value * 50).ToArray(), secondOrder: false);
        int crown = row.Mesh.NodeAt(tunnel.Bow.CentreLine.Length.Metres / 2);
        double aloneM = trial.Bow.Movement[(3 * crown) + 1], inRowM = state.Movement((9 * row.Mesh.XM.Length) + crown).Z;
        // The end bows carry half as much and hold the row up a little through the purlins.
        Assert.Equal(aloneM, inRowM, 0.03 * Math.Abs(aloneM));
    }

    private static (RowFrame Frame, TunnelLoads Loads, BowRow Row) FrameOf(Tunnel tunnel)
    {
        TunnelLoads loads = LoadPlanner.Plan(tunnel, new Answers(UnitSystem.UsCustomary));
        var steel = new BowSteel(tunnel.BowTube, SteelGrades.Unknown);
        BowRow row = BowRow.Of(tunnel, steel);
        return (new RowFrame(tunnel, row, steel, new PlanarFoot(5e4)), loads, row);
    }

    private static double Sum(FrameState state, int freedom) => Enumerable.Range(0, state.Reactions.Length / 6).Sum(node => state.Reactions[(6 * node) + freedom]);

    private static int IndexOf(TunnelLoads loads, string code) => Enumerable.Range(0, loads.Cases.Length).First(at => loads.Cases[at].Code == code);
}
