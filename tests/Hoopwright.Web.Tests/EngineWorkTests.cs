using System.Text;
using System.Text.Json;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Testing;
using Hoopwright.Web.Engine;

namespace Hoopwright.Web.Tests;

public sealed class EngineWorkTests
{
    [Fact]
    public void The_page_gets_the_very_results_of_the_command_line()
    {
        string plan = Encoding.UTF8.GetString(SamplePlans.ExampleBytes("round-14ft"));
        using JsonDocument whole = JsonDocument.Parse(EngineWork.Whole(plan));
        string results = Encoding.UTF8.GetString(ResultsJson.Write(TunnelWorks.Plan(PlanReader.Read(Encoding.UTF8.GetBytes(plan)))));
        Assert.Equal(results.TrimEnd('\n'), whole.RootElement.GetProperty("results").GetRawText().TrimEnd('\n'));
    }

    [Fact]
    public void A_quick_look_says_what_is_wrong_and_draws_nothing_wrong()
    {
        const string Wrong = """{"hoopwright":"1.0","frame":{"span":"26"}}""";
        using JsonDocument look = JsonDocument.Parse(EngineWork.Look(Wrong)), drawn = JsonDocument.Parse(EngineWork.Draw(Wrong, "bow"));
        Assert.Equal(JsonValueKind.Null, drawn.RootElement.GetProperty("drawing").ValueKind);
        Assert.Equal(0, look.RootElement.GetProperty("figures").GetArrayLength());
        Assert.NotEqual(0, look.RootElement.GetProperty("results").GetProperty("diagnostics").GetArrayLength());
    }

    [Fact]
    public void A_quick_look_names_the_drawings_and_each_can_be_had()
    {
        string plan = Encoding.UTF8.GetString(SamplePlans.ExampleBytes("gothic-26ft"));
        using JsonDocument look = JsonDocument.Parse(EngineWork.Look(plan));
        string[] names = [.. look.RootElement.GetProperty("figures").EnumerateArray().Select(name => name.GetString()!)];
        Assert.NotEmpty(names);
        Assert.All(names, name => Assert.Equal(name, Name(name)));
        Assert.Equal(names[0], Name("none of that name"));

        string Name(string asked)
        {
            using JsonDocument drawn = JsonDocument.Parse(EngineWork.Draw(plan, asked));
            return drawn.RootElement.GetProperty("drawing").GetProperty("name").GetString()!;
        }
    }

    [Fact]
    public void A_scene_shows_how_the_worst_bow_moves_as_its_drawing_does()
    {
        string plan = Encoding.UTF8.GetString(SamplePlans.ExampleBytes("gothic-26ft"));
        Strength.BowDiagram worst = TunnelWorks.Plan(PlanReader.Read(Encoding.UTF8.GetBytes(plan))).Strength!.Worst!;
        using JsonDocument scene = JsonDocument.Parse(EngineWork.Scene(plan, withStrength: true));
        JsonElement moved = scene.RootElement.GetProperty("moved");
        Assert.Equal(worst.Bow, moved.GetProperty("bow").GetInt32());
        Assert.True(worst.TimesDrawn > 1);
        Strength.BowDiagramPoint[] points = [.. worst.Points];
        JsonElement[] drawn = [.. moved.GetProperty("points").EnumerateArray()];
        Assert.Equal(points.Length, drawn.Length);
        Assert.All(points.Zip(drawn), pair => Assert.Equal(pair.First.Place.Across.Metres + (pair.First.MovedAcross.Metres * worst.TimesDrawn), pair.Second[0].GetDouble(), 1e-5));
        Assert.Contains(points.Zip(drawn), pair => Math.Abs(pair.First.Place.Across.Metres - pair.Second[0].GetDouble()) > 0.1);
    }

    [Fact]
    public void A_scene_holds_every_bow_and_every_member_that_is_no_bow()
    {
        string plan = Encoding.UTF8.GetString(SamplePlans.ExampleBytes("round-14ft"));
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(Encoding.UTF8.GetBytes(plan)), depth: WorkDepth.Layout);
        using JsonDocument scene = JsonDocument.Parse(EngineWork.Scene(plan, withStrength: false));
        Assert.Equal(planned.Tunnel!.Stations.Length, scene.RootElement.GetProperty("bows").GetArrayLength());
        Assert.Equal(planned.Tunnel.Ends.Count(end => end.Closing == EndClosing.Framed), scene.RootElement.GetProperty("ends").GetArrayLength());
        Assert.Equal(JsonValueKind.Null, scene.RootElement.GetProperty("moved").ValueKind);
        Assert.Equal(planned.Tunnel.Members.Count(member => member.Role != Layout.MemberRole.Bow), scene.RootElement.GetProperty("members").GetArrayLength());
    }
}
