using CsCheck;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Strength.Models;
using Hoopwright.Strength.Steel;

namespace Hoopwright.Tests.Strength.Models;

public sealed class BowMeshTests
{
    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("round-14ft")]
    [InlineData("metric-9m")]
    public void Nodes_lie_on_the_middle_of_the_tube_and_chords_turn_no_more_than_the_rule(string example)
    {
        BowShape bow = BowStudyTests.TunnelOf(example).Bow;
        BowMesh mesh = BowMesh.Of(bow, []);
        for (int node = 0; node < mesh.AlongM.Length; node++)
            Assert.Equal(mesh.AlongM[node], BowMesh.NearestM(bow.CentreLine, new PlanePoint(Length.FromMetres(mesh.XM[node]), Length.FromMetres(mesh.ZM[node]))), 1e-5);
        for (int chord = 0; chord < mesh.Chords; chord++)
        {
            // A ridge is a corner: no chord lies across it, and the way along the path turns there at once.
            double from = bow.CentreLine.DirectionAt(Length.FromMetres(mesh.AlongM[chord] + 1e-6)).Radians, to = bow.CentreLine.DirectionAt(Length.FromMetres(mesh.AlongM[chord + 1] - 1e-6)).Radians;
            Assert.True(Math.Abs(to - from) <= BowMesh.MostTurnRad * 1.02, $"chord {chord} turns {Math.Abs(to - from) * 180 / Math.PI}°");
        }
        double polygonM = Enumerable.Range(0, mesh.Chords).Sum(mesh.LengthM);
        Assert.InRange(bow.CentreLine.Length.Metres - polygonM, 0, 0.002 * polygonM);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void An_even_bow_has_even_nodes_with_purlins_ties_and_braces_as_well(bool withMembers)
    {
        Tunnel tunnel = BowStudyTests.TunnelOf("gothic-26ft");
        BowMesh mesh = withMembers ? BowRow.Of(tunnel, new BowSteel(tunnel.BowTube, SteelGrades.Unknown)).Mesh : BowMesh.Of(tunnel.Bow, []);
        for (int node = 0; node < mesh.XM.Length; node++)
        {
            Assert.Equal(mesh.XM[0] + mesh.XM[^1], mesh.XM[node] + mesh.XM[^(node + 1)], 1e-4);
            Assert.Equal(mesh.ZM[node], mesh.ZM[^(node + 1)], 1e-4);
        }
        // The pointed ridge is a node: no chord cuts it off.
        Assert.Equal(tunnel.Bow.CentreLine.Highest().Metres, mesh.ZM.Max(), 1e-6);
    }

    [Fact]
    public void Places_that_are_asked_for_are_nodes_but_beside_a_ridge_where_that_is() => Gen.Double[0.05, 0.95].Array[1, 5].Sample(shares =>
    {
        BowShape bow = BowStudyTests.TunnelOf("gothic-26ft").Bow;
        double[] needed = [.. shares.Select(share => share * bow.CentreLine.Length.Metres)];
        BowMesh mesh = BowMesh.Of(bow, needed);
        double ridgeM = bow.CentreLine.Length.Metres / 2;
        return needed.All(at => mesh.AlongM.Any(node => Math.Abs(node - at) < 1e-6) || Math.Abs(at - ridgeM) < 0.07) && mesh.AlongM.Zip(mesh.AlongM.Skip(1)).All(pair => pair.Second > pair.First);
    }, iter: 50);
}
