using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Strength;

public sealed class VerdictSentenceTests
{
    // A hut under next to nothing on rock, held upright at the ground: the weaker end of what is known keeps every limit as well.
    private const string Hut = """ "ground": { "postConcrete": "all", "postEmbedment": "4 ft", "holeDepth": "4 ft", "holeDiameter": "14 in", "legBase": "fixed" }, "cover": { "thickness": "0.2 mm", "battenSpacing": "3 in", "sidesInChannel": true, "channelScrewSpacing": "6 in" }, "ends": { "front": { "postSpacing": "3 ft" } } """;

    [Theory]
    [InlineData("stands", StrengthVerdict.Stands, "The tunnel stands the entered loads on these assumptions: ", "5 psf", "15 mph")]
    [InlineData("marginal", StrengthVerdict.Marginal, "The tunnel is marginal under the entered loads on these assumptions: ", "10 psf", "90 mph")]
    [InlineData("does not stand", StrengthVerdict.DoesNotStand, "The tunnel does not stand the entered loads on these assumptions. Past a limit: the bows, ", "60 psf", "95 mph")]
    public void It_says_the_verdict_once_and_never_more_than_that(string verdict, StrengthVerdict expected, string begins, string snow, string wind)
    {
        bool hut = expected == StrengthVerdict.Stands;
        StrengthReport report = Report(hut, $$""" "groundSnow": "{{snow}}", "wind": "{{wind}}", "soilClass": "{{(hut ? "bedrock" : "gravel")}}" """);
        Assert.Equal(expected, report.Verdict);
        Assert.StartsWith(begins, report.Says, StringComparison.Ordinal);
        Assert.Equal(2, report.Says.Split("entered loads").Length);
        Assert.Equal(2, report.Says.Split(verdict).Length);
        Assert.DoesNotContain("safe", report.Says, StringComparison.OrdinalIgnoreCase);
        Assert.EndsWith(".", report.Says, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(""" "groundSnow": "5 psf" """, "No wind is given, so wind is not in this.")]
    [InlineData(""" "wind": "15 mph" """, "No ground snow is given, so snow is not in this.")]
    public void What_was_not_entered_is_said_last(string site, string says) =>
        Assert.EndsWith(says, Report(true, site).Says, StringComparison.Ordinal);

    [Fact]
    public void What_passes_a_limit_at_both_ends_is_named_before_what_passes_it_at_one()
    {
        StrengthReport report = Report(false, """ "groundSnow": "60 psf", "wind": "95 mph", "soilClass": "gravel", "frostDepth": "12 in" """);
        int besides = report.Says.IndexOf("Marginal besides: ", StringComparison.Ordinal);
        Assert.True(besides > 0, report.Says);
        // Five are named, the worst first; the rest are counted. The frame comes before the parts.
        Assert.All(report.Parts.Where(part => part.Verdict != StrengthVerdict.DoesNotStand), part => Assert.DoesNotContain(part.Words, report.Says[..besides], StringComparison.Ordinal));
        PartStrength[] failing = [.. report.Parts.Where(part => part.Verdict == StrengthVerdict.DoesNotStand).OrderByDescending(part => part.AtStrongest?.Value ?? double.PositiveInfinity)];
        Assert.All(failing.Take(5 - report.FrameParts.Length), part => Assert.Contains(part.Words, report.Says[..besides], StringComparison.Ordinal));
        PartStrength[] marginal = [.. report.Parts.Where(part => part.Verdict == StrengthVerdict.Marginal).OrderByDescending(part => part.AtWeakest?.Value ?? double.PositiveInfinity)];
        Assert.All(marginal.Take(5), part => Assert.Contains(part.Words, report.Says[besides..], StringComparison.Ordinal));
        Assert.EndsWith($"; and {marginal.Length - 5} more.", report.Says, StringComparison.Ordinal);
    }

    private static StrengthReport Report(bool hut, string site)
    {
        Plan plan = hut
            ? SamplePlans.Simple("10 ft", "12 ft", "\"shape\": \"round\", \"sideHeight\": \"2 ft\", \"peakHeight\": \"7 ft\"", "\"bowTube\": { \"outside\": \"1.9 in\", \"wall\": \"0.12 in\", \"yield\": \"50 ksi\" }", Hut)
            : SamplePlans.Example("gothic-26ft");
        Plan sited = SamplePlans.Simple(rest: $"\"site\": {{ {site} }}");
        return StrengthPlanner.Plan(SamplePlans.LayOut(plan with { Site = sited.Site }), new Answers(UnitSystem.UsCustomary));
    }
}
