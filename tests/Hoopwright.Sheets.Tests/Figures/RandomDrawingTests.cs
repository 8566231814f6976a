using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Packets;
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
            FigureSheet sheet = new(widthMm, heightMm, "tunnel", "2026-03-01", planned.Units);
            // Those of the crew in the other language too, whose words are longer.
            foreach ((string name, Func<Drawing> draw) in TunnelFigures.Offers(planned, sheet).Select(offer => (offer.Name, offer.Draw))
                .Concat(TunnelFigures.Offers(planned, sheet with { Language = "es" }).Where(offer => CrewSheets.Wants(offer.Name)).Select(offer => (offer.Name + " (es)", offer.Draw))))
            {
                Interlocked.Increment(ref drawn);
                foreach (Collision collision in Collisions.In(draw())) found.Add($"{name}: {collision}\n{text}");
            }
        }, iter: plans, threads: 1);
        Assert.True(drawn > plans * 14);
        TestContext.Current.TestOutputHelper?.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{drawn} drawings of {plans} plans, {found.Count} collisions"));
        if (Environment.GetEnvironmentVariable("HOOPWRIGHT_DRAWN_INTO") is { Length: > 0 } file) File.WriteAllLines(file, found);
        Assert.True(found.IsEmpty, $"{found.Count} collisions in {drawn} drawings, such as\n{string.Join('\n', found.Take(5))}");
    }
}
