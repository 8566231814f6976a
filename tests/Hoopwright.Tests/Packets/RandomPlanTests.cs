using System.Text;
using System.Text.Json;
using CsCheck;
using Hoopwright.Cutting;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing.Generators;

namespace Hoopwright.Tests.Packets;

public sealed class RandomPlanTests
{
    private static readonly string[] Sections =
        ["site", "frame", "ground", "ends", "sides", "members", "cover", "takeoff", "orders", "cuts", "rules", "assumptions", "diagnostics"];

    [Fact]
    public void Ten_thousand_random_plans_all_give_complete_results() => Generate.ValidPlanText.Sample(text =>
    {
        // What a tunnel stands takes most of the time, so of ten thousand plans only every tenth or so is asked for it.
        bool withStrength = text.Length % 10 == 0;
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(Encoding.UTF8.GetBytes(text)), null, CutEffort.Least, withStrength ? WorkDepth.Whole : WorkDepth.Orders);
        Assert.Equal(withStrength, planned.Strength is { Says.Length: > 0 });
        Diagnostic[] errors = [.. planned.Diagnostics.Where(found => found.Severity == Severity.Error)];
        Assert.True(errors.Length == 0, text + "\n" + string.Join("\n", (object[])errors));
        foreach (Member member in planned.Tunnel!.Members)
            Assert.True(double.IsFinite(member.CutLength.Metres) && member.CutLength > Length.Zero, $"{text}\n{member.Id} is {member.CutLength.Metres} m");
        Assert.Equal(planned.Tunnel.Members.Length, planned.Tunnel.Members.Select(member => member.Id).Distinct().Count());
        using JsonDocument results = JsonDocument.Parse(ResultsJson.Write(planned));
        foreach (string section in Sections)
            Assert.True(results.RootElement.TryGetProperty(section, out JsonElement found) && found.ValueKind is JsonValueKind.Object or JsonValueKind.Array, $"{text}\nno {section}");
        Assert.Equal(planned.Tunnel.Members.Length, results.RootElement.GetProperty("members").GetArrayLength());
        Assert.Equal(planned.Orders!.Lines.Length, results.RootElement.GetProperty("orders").GetProperty("lines").GetArrayLength());
    }, iter: 10_000);

    [Fact]
    public void Random_plans_give_complete_results_in_which_everything_adds_up() => Generate.ValidPlanText.Sample(text =>
    {
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(Encoding.UTF8.GetBytes(text)));
        Assert.False(planned.Diagnostics.Any(found => found.Severity == Severity.Error), text + "\n" + string.Join("\n", planned.Diagnostics.Where(found => found.Severity == Severity.Error)));
        Assert.NotNull(planned.Orders);
        // Every member is cut: each of its pieces lies on one bar, and together they are as long as it is.
        var cut = planned.Cuts!.Sheets.SelectMany(sheet => sheet.Bars).SelectMany(bar => bar.Pieces.Select(piece => (piece.MemberId, piece.Length.Metres)))
            .Concat(planned.Cuts.Sheets.SelectMany(sheet => sheet.MadeToLength).Select(need => (need.MemberId, need.Length.Metres)))
            .GroupBy(piece => piece.MemberId).ToDictionary(group => group.Key, group => group.Sum(piece => piece.Metres));
        foreach (Member member in planned.Tunnel!.Members)
            Assert.True(Math.Abs(cut[member.Id] - member.CutLength.Metres) < 0.02, $"{text}\n{member.Id}: {cut[member.Id]} of {member.CutLength.Metres} m");
        foreach (var sheet in planned.Cuts.Sheets)
        {
            foreach (var bar in sheet.Bars)
                Assert.Equal(bar.Stock.Metres, sheet.Trim.Metres + bar.Pieces.Sum(piece => piece.Length.Metres) + bar.KerfLost.Metres + bar.Leftover.Metres, 1e-9);
        }
        Assert.Equal(planned.Orders!.Total.Amount, planned.Orders.Lines.Sum(line => line.Extension?.Amount ?? 0));
        Assert.Equal(planned.Orders.Total.Amount, planned.Orders.Stages.Sum(stage => stage.Cost.Amount));
        Assert.NotEmpty(ResultsJson.Write(planned));
    }, iter: 150);
}
