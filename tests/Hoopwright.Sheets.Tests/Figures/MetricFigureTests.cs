using System.Text.RegularExpressions;
using Hoopwright.Packets;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Pages;
using Hoopwright.Testing;

namespace Hoopwright.Sheets.Tests.Figures;

/// <summary>The drawings of a plan in metres that leaves nearly all out show what a metric shop sells.</summary>
public sealed partial class MetricFigureTests
{
    [Fact]
    public void No_drawing_of_a_metric_plan_shows_a_size_in_inches()
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.FromJson(
            "\"units\": \"metric\", \"frame\": { \"span\": \"8 m\", \"length\": \"20 m\", \"bow\": { \"shape\": \"gothic\", \"sideHeight\": \"1.5 m\", \"peakHeight\": \"3.9 m\" }, \"tie\": {} }, "
            + "\"sides\": { \"left\": { \"kind\": \"rollUp\" } }, \"ends\": { \"front\": { \"doors\": [ { \"kind\": \"double\" } ] } }"));
        (double widthMm, double heightMm) = Paper.A4.DrawingSize(landscape: true);
        string[] texts =
        [
            .. TunnelFigures.Offers(planned, new FigureSheet(widthMm, heightMm, "tunnel", "2026-03-01", planned.Units))
                .SelectMany(offer => offer.Draw().Marks.OfType<TextMark>().Select(text => $"{offer.Name}: {text.Text}")),
        ];
        Assert.Contains(texts, text => text.Contains("48.3 x 2.5 mm", StringComparison.Ordinal));
        Assert.Contains(texts, text => text.Contains("45x145 mm", StringComparison.Ordinal));
        Assert.All(texts, text => Assert.DoesNotMatch(Inches(), text));
    }

    [GeneratedRegex(@"\d[""″]|\d ?'|\d (in|ft|mil)\b(?! the)|#\d|\b[124]x\d+\b(?! mm)")]
    private static partial Regex Inches();
}
