using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Pages;
using Hoopwright.Testing.Generators;

namespace Hoopwright.Sheets.Tests.Figures;

/// <summary>
/// Every drawing of random plans, looked at for what cannot be read. As many plans as HOOPWRIGHT_DRAWN_PLANS says, 40 where it says nothing; 500
/// are drawn before a release (see docs/drawings.md).
/// </summary>
public sealed class RandomDrawingTests
{
    [Fact]
    public void No_drawing_of_a_random_plan_has_a_collision()
    {
        int plans = int.TryParse(Environment.GetEnvironmentVariable("HOOPWRIGHT_DRAWN_PLANS"), CultureInfo.InvariantCulture, out int asked) ? asked : 40;
        ConcurrentBag<string> found = [];
        int drawn = 0;
        Generate.ValidPlanText.Sample(text =>
        {
            PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(Encoding.UTF8.GetBytes(text)));
            Paper paper = planned.Units == Quantities.UnitSystem.Metric ? Paper.A4 : Paper.Letter;
            (double widthMm, double heightMm) = paper.DrawingSize(landscape: true);
            foreach (TunnelFigure figure in TunnelFigures.Of(planned, new FigureSheet(widthMm, heightMm, "tunnel", "2026-03-01", planned.Units)))
            {
                Interlocked.Increment(ref drawn);
                foreach (Collision collision in Collisions.In(figure.Drawing)) found.Add($"{figure.Name}: {collision}\n{text}");
            }
        }, iter: plans, threads: 1);
        Assert.True(drawn > plans * 8);
        if (Environment.GetEnvironmentVariable("HOOPWRIGHT_DRAWN_INTO") is { Length: > 0 } file) File.WriteAllLines(file, found);
        Assert.True(found.IsEmpty, $"{found.Count} collisions in {drawn} drawings, such as\n{string.Join('\n', found.Take(5))}");
    }
}
