using System.Globalization;
using Hoopwright.Frames;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Frames;

/// <summary>The decks beside this file: what CalculiX 2.20 and an independent matrix solver gave.</summary>
public sealed class DeckTests
{
    private const string Outside = "CalculiX 2.20, B32R";
    private const string Independent = "an independent matrix solver, the same mesh";
    private const string AxialOnly = "its geometric stiffness of this run had axial forces alone; with ours cut down to them all printed digits are met";
    private const string SameMesh = "the same chords and loads; printed digits";

    [Theory]
    [InlineData("c2_arch_hinged_crown", 159.1526, 159.2617, -25.1607, -25.1335)]
    [InlineData("c2_arch_hinged_udl", 646.336, 646.778, -55.982, -55.825)]
    [InlineData("c2_arch_fixed_crown", 229.515, 229.493, -15.5142, -15.5251)]
    [InlineData("c2_arch_fixed_udl", 852.783, 852.439, -27.678, -27.688)]
    public void An_arch_thrusts_and_sinks_as_both_solvers_say(string deck, double thrustOutsideN, double thrustN, double crownOutsideMm, double crownMm)
    {
        var state = Solve(deck);
        double foundN = state.Reaction(0).X, foundMm = 1000 * state.Movement(24).Z;
        Published.Check(Independent, deck + " thrust", thrustN, foundN, 6e-4, SameMesh);
        Published.Check(Independent, deck + " crown", crownMm, foundMm, 6e-4, SameMesh);
        Published.Check(Outside, deck + " thrust", thrustOutsideN, foundN, 0.005 * thrustOutsideN, "curved solid beams against chords");
        Published.Check(Outside, deck + " crown", crownOutsideMm, foundMm, 0.005 * -crownOutsideMm, "curved solid beams against chords");
    }

    [Theory]
    [InlineData("c2_arch_hinged_temp", 0.7019, 0.7025)]
    [InlineData("c2_arch_fixed_temp", 3.7054, 3.7066)]
    public void A_warmed_arch_thrusts_as_both_solvers_say(string deck, double outsideN, double thrustN)
    {
        double foundN = Solve(deck).Reaction(0).X;
        Published.Check(Independent, deck, thrustN, foundN, 6e-5, SameMesh);
        Published.Check(Outside, deck, outsideN, foundN, 0.005 * outsideN, "curved solid beams against chords");
    }

    [Theory]
    [InlineData("c2_arch_hinged_crown")]
    [InlineData("c2_arch_hinged_udl")]
    [InlineData("c2_arch_hinged_wind")]
    [InlineData("c2_arch_fixed_crown")]
    [InlineData("c2_arch_fixed_udl")]
    [InlineData("c2_arch_fixed_wind")]
    public void Every_node_of_an_arch_moves_and_bends_as_both_solvers_say(string deck)
    {
        var state = Solve(deck);
        double[][] rows = [.. File.ReadLines(Path.Combine(DeckReader.Folder, deck + ".csv")).Skip(1).Select(line => line.Split(',').Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToArray())];
        double greatestMm = rows.Max(row => Math.Max(Math.Abs(row[3]), Math.Abs(row[4]))), greatestNmm = rows.Max(row => Math.Abs(row[11]));
        for (int node = 0; node < rows.Length; node++)
        {
            double[] row = rows[node];
            var moved = state.Movement(node);
            double momentNmm = -1000 * state.At(Math.Min(node, rows.Length - 2), end: node == rows.Length - 1).MyNm;
            Published.Check(Independent, $"{deck} ux {node + 1}", row[5], 1000 * moved.X, 2e-5 * greatestMm, SameMesh);
            Published.Check(Independent, $"{deck} uy {node + 1}", row[6], 1000 * moved.Z, 2e-5 * greatestMm, SameMesh);
            Published.Check(Independent, $"{deck} M {node + 1}", row[11], momentNmm, 2e-5 * greatestNmm, SameMesh);
            Published.Check(Outside, $"{deck} ux {node + 1}", row[3], 1000 * moved.X, 0.005 * greatestMm, "curved solid beams against chords");
            Published.Check(Outside, $"{deck} uy {node + 1}", row[4], 1000 * moved.Z, 0.005 * greatestMm, "curved solid beams against chords");
            Published.Check(Outside, $"{deck} M {node + 1}", row[9], momentNmm, 0.02 * greatestNmm, "moments of solid beams are carried from inner points to the nodes");
        }
    }

    [Theory]
    [InlineData("c3_archbuckle_hinged_radial", 1.23279, 1.23306)]
    [InlineData("c3_archbuckle_hinged_udl", 1.31543, 1.31592)]
    [InlineData("c3_archbuckle_fixed_radial", 3.39126, 3.38956)]
    [InlineData("c3_archbuckle_fixed_udl", 3.86208, 3.86165)]
    public void An_arch_buckles_as_both_solvers_say(string deck, double outside, double factor)
    {
        double found = FrameSolver.Solve(DeckReader.Read(deck, FrameAnalysisKind.Buckling, planar: true, shear: true)).Buckling[0].Factors[0];
        Published.Check(Independent, deck, factor, found, 2e-5, SameMesh);
        Published.Check(Outside, deck, outside, found, 0.002 * outside, "curved solid beams against chords");
    }

    [Theory]
    [InlineData(1, 17, 255.3746, -34.7951, -4.0231, 255.0535, -34.8436, -3.9493)]
    [InlineData(1, 29, 235.5243, 27.6427, 7.2756, 235.1591, 27.6067, 7.2968)]
    [InlineData(6, 302, 269.6610, -35.7303, -4.1176, 269.3472, -35.7924, -4.0438)]
    [InlineData(6, 314, 243.3495, 40.3713, 7.2820, 243.0084, 40.2989, 7.3032)]
    [InlineData(6, 326, 235.1493, 49.9694, 15.8436, 234.9112, 49.9552, 15.8099)]
    [InlineData(10, 554, 199.6618, 41.2729, 15.8694, 199.5585, 41.2756, 15.8355)]
    public void A_row_of_ten_bows_moves_in_wind_as_both_solvers_say(int bow, int node, double outsideXMm, double outsideZMm, double outsideYMm, double xMm, double zMm, double yMm)
    {
        Row("tunnel_10", $"10 bows, bow {bow}, node {node}", node, (outsideXMm, outsideYMm, outsideZMm), (xMm, yMm, zMm));
    }

    [Theory]
    [InlineData(1, 29, 178.1627, 26.8835, 12.5676, 177.8779, 26.8527, 12.5716)]
    [InlineData(2, 86, 168.2028, 23.5952, 12.5633, 167.9929, 23.5789, 12.5673)]
    [InlineData(3, 155, 152.0523, 28.6424, 28.2910, 151.9780, 28.6648, 28.1822)]
    public void A_row_of_three_bows_moves_in_wind_as_both_solvers_say(int bow, int node, double outsideXMm, double outsideZMm, double outsideYMm, double xMm, double zMm, double yMm)
    {
        Row("tunnel_3", $"3 bows, bow {bow}, node {node}", node, (outsideXMm, outsideYMm, outsideZMm), (xMm, yMm, zMm));
    }

    [Fact]
    public void A_row_of_ten_bows_balances_and_comes_to_rest_at_second_order()
    {
        var state = FrameSolver.Solve(DeckReader.Read("tunnel_10", FrameAnalysisKind.SecondOrder)).States[0];
        var moved = state.Movement(313);
        Published.Check(Independent, "crown of bow 6, ux", 217.189, 1000 * moved.X, 0.06, AxialOnly);
        Published.Check(Independent, "crown of bow 6, uz", 38.385, 1000 * moved.Z, 0.06, AxialOnly);
        Published.Check(Independent, "crown of bow 6, uy", 5.928, 1000 * moved.Y, 0.1, AxialOnly);
        double[] sums = [.. Enumerable.Range(0, 3).Select(axis => Enumerable.Range(0, state.Reactions.Length / 6).Sum(node => state.Reactions[(6 * node) + axis]))];
        Published.Check("the loads of the deck, summed", "across", -19968.551, sums[0], 0.01, "printed digits");
        Published.Check("the loads of the deck, summed", "along", -1200, sums[1], 1e-4, "printed digits");
        Published.Check("the loads of the deck, summed", "up", -16154.210, sums[2], 0.01, "printed digits");
    }

    [Fact]
    public void A_row_of_ten_bows_buckles_under_snow_as_both_solvers_say()
    {
        var factors = FrameSolver.Solve(DeckReader.Read("tunnel_10_snowbuckle", FrameAnalysisKind.Buckling, modes: 4)).Buckling[0].Factors;
        double[] outside = [4.225094, 5.453607, 6.055593, 14.32694], independent = [4.2301, 5.4550, 6.0722, 14.3519];
        for (int mode = 0; mode < 4; mode++)
        {
            Published.Check(Independent, $"factor {mode + 1}", independent[mode], factors[mode], 2e-4, "printed digits");
            Published.Check(Outside, $"factor {mode + 1}", outside[mode], factors[mode], 0.01 * outside[mode], "curved solid beams against chords");
        }
    }

    // The independent solver counted shear in the arches and left it out of the rows.
    private static FrameState Solve(string deck) => FrameSolver.Solve(DeckReader.Read(deck, FrameAnalysisKind.Linear, shear: deck.StartsWith("c2", StringComparison.Ordinal))).States[0];

    private static void Row(string deck, string what, int node, (double X, double Y, double Z) outsideMm, (double X, double Y, double Z) independentMm)
    {
        var moved = Solve(deck).Movement(node - 1);
        double scaleMm = Math.Abs(outsideMm.X);
        foreach (var (axis, outside, independent, found) in new[] { ("across", outsideMm.X, independentMm.X, moved.X), ("along", outsideMm.Y, independentMm.Y, moved.Y), ("up", outsideMm.Z, independentMm.Z, moved.Z) })
        {
            Published.Check(Independent, $"{what} {axis}", independent, 1000 * found, 1.5e-4, SameMesh);
            Published.Check(Outside, $"{what} {axis}", outside, 1000 * found, 0.005 * scaleMm, "of the node's whole movement; curved solid beams against chords");
        }
    }
}
