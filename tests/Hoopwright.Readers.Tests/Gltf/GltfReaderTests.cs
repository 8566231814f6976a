using System.Text.Json;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Readers.Tests.Gltf;

/// <summary>The model as the Khronos glTF validator 2.0.0-dev.3.10 (npm gltf-validator) judges it, and as a reader of the format sees it.</summary>
public sealed class GltfReaderTests
{
    private const double MillimetreM = 0.001, Megabyte = 1024 * 1024;
    private static readonly Lazy<JsonElement> Seen = new(() => Outside.Read("gltf.js", "The npm package gltf-validator", Written.Folder));

    public static TheoryData<string> Names { get; } = [.. Written.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_khronos_validator_gives_no_error_and_no_warning(string name)
    {
        JsonElement issues = Model(name).GetProperty("issues");
        Assert.True(issues.GetProperty("numErrors").GetInt32() == 0 && issues.GetProperty("numWarnings").GetInt32() == 0, issues.GetRawText());
        Assert.True(Model(name).GetProperty("bytes").GetInt32() < 2 * Megabyte);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Bows_stand_where_they_are_set_out_to_the_millimetre(string name)
    {
        Tunnel tunnel = Written.Planned(name).Tunnel!;
        double half = tunnel.BowTube.Outside.Metres / 2;
        foreach (BowStation station in tunnel.Stations)
        {
            JsonElement[] pieces = [.. Nodes(name).Where(node => NameOf(node).StartsWith(FormattableString.Invariant($"bow-{station.Number:00}"), StringComparison.Ordinal))];
            Assert.Equal(tunnel.BowPieces, pieces.Length);
            Near(tunnel.Bow.FilmLine.Bounds().Least.Across.Metres, pieces.Min(piece => At(piece, "min", 0)));
            Near(tunnel.Bow.FilmLine.Bounds().Most.Across.Metres, pieces.Max(piece => At(piece, "max", 0)));
            Near((station.Base + tunnel.Bow.PeakHeight).Metres, pieces.Max(piece => At(piece, "max", 1)));
            Near(-station.Along.Metres - half, pieces.Min(piece => At(piece, "min", 2)));
            Near(-station.Along.Metres + half, pieces.Max(piece => At(piece, "max", 2)));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_member_is_a_node_of_its_name_from_end_to_end(string name)
    {
        Tunnel tunnel = Written.Planned(name).Tunnel!;
        Dictionary<string, JsonElement> nodes = Nodes(name).Where(node => node.TryGetProperty("mesh", out _)).ToDictionary(NameOf);
        foreach (Member member in tunnel.Members)
        {
            JsonElement node = nodes[member.Id];
            Assert.Equal(member.Role.ToString(), node.GetProperty("extras").GetProperty("role").GetString());
            Assert.Equal(member.Section is BoardSection ? "lumber" : "steel", node.GetProperty("material").GetString());
            if (member.Curve is not null) continue;
            // A slanting box reaches past its ends by less than the diagonal of its section.
            double reach = member.Section.Match(tube => tube.Outside, board => board.Depth).Metres * 0.75;
            (double[] start, double[] end) = (Axes(member.Start), Axes(member.End));
            for (int axis = 0; axis < 3; axis++)
            {
                (double low, double high) = (Math.Min(start[axis], end[axis]), Math.Max(start[axis], end[axis]));
                Assert.InRange(At(node, "min", axis), low - reach - MillimetreM, low + MillimetreM);
                Assert.InRange(At(node, "max", axis), high - MillimetreM, high + reach + MillimetreM);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_body_faces_outward_and_holds_what_its_section_times_its_length_holds(string name)
    {
        Tunnel tunnel = Written.Planned(name).Tunnel!;
        Dictionary<string, JsonElement> nodes = Nodes(name).Where(node => node.TryGetProperty("mesh", out _)).ToDictionary(NameOf);
        Assert.All(nodes.Values.Where(node => node.GetProperty("material").GetString() is not ("film" or "sheet" or "earth")), node => Assert.True(node.GetProperty("volume").GetDouble() > 0, NameOf(node)));
        foreach (Member member in tunnel.Members.Where(member => member.Bevel is null))
        {
            // A round of sixteen corners, as the model has it.
            double area = member.Section.Match(
                tube => tube.Form == TubeForm.Round ? 8 * Math.Sin(Math.PI / 8) * Math.Pow(tube.Outside.Metres / 2, 2) : Math.Pow(tube.Outside.Metres, 2),
                board => board.Thickness.Metres * board.Depth.Metres);
            double length = (member.Curve?.Length ?? member.Start.DistanceTo(member.End)).Metres;
            Assert.Equal(area * length, nodes[member.Id].GetProperty("volume").GetDouble(), 0.003 * area * length);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void One_sees_through_the_film_which_lies_on_the_bows(string name)
    {
        Tunnel tunnel = Written.Planned(name).Tunnel!;
        JsonElement film = Model(name).GetProperty("materials").EnumerateArray().Single(material => material.GetProperty("name").GetString() == "film");
        Assert.Equal("BLEND", film.GetProperty("alphaMode").GetString());
        Assert.True(film.GetProperty("doubleSided").GetBoolean());
        Assert.InRange(film.GetProperty("pbrMetallicRoughness").GetProperty("baseColorFactor")[3].GetDouble(), 0.1, 0.6);
        JsonElement roof = Nodes(name).Single(node => NameOf(node) == "roof-film");
        Near(tunnel.Stations.Max(station => station.Base + tunnel.Bow.PeakHeight).Metres, At(roof, "max", 1));
        Near(-tunnel.Length.Metres, At(roof, "min", 2));
        Near(0, At(roof, "max", 2));
        // Down to the hip board, or to the baseboard of a fixed side.
        Length lowest = Length.Min(Hem(tunnel.Left), Hem(tunnel.Right));
        Near((lowest + tunnel.Stations.Min(station => station.Base)).Metres, At(roof, "min", 1));
        foreach (SideWall side in tunnel.Sides) Assert.Equal(side.Kind != SideKind.Fixed, Nodes(name).Any(node => NameOf(node) == side.Name + "-curtain"));
        foreach (EndWall end in tunnel.Ends.Where(end => end.Closing == EndClosing.Framed)) Assert.Contains(Nodes(name), node => NameOf(node) == end.Name + "-end-film");
    }

    [Fact]
    public void A_hostile_name_is_a_text_and_no_more()
    {
        string scene = Model(Written.Hostile).GetProperty("scene").GetString()!;
        Assert.Contains("</script>", scene, StringComparison.Ordinal);
        Assert.DoesNotContain(scene, char.IsControl);
    }

    private static Length Hem(SideWall side) => side.Kind == SideKind.Fixed ? side.BaseboardHeight : side.HipHeight;

    // y is up, and along the tunnel goes towards negative z.
    private static double[] Axes(TunnelPoint point) => [point.X.Metres, point.Z.Metres, -point.Y.Metres];

    private static JsonElement Model(string name) => Seen.Value.GetProperty($"{name}/model/tunnel.glb");

    private static JsonElement.ArrayEnumerator Nodes(string name) => Model(name).GetProperty("nodes").EnumerateArray();

    private static string NameOf(JsonElement node) => node.GetProperty("name").GetString()!;

    private static double At(JsonElement node, string end, int axis) => node.GetProperty(end)[axis].GetDouble();

    private static void Near(double expected, double read) => Assert.Equal(expected, read, MillimetreM);
}
