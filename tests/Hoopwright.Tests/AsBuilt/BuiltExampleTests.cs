using System.Text.Json;
using Hoopwright.BeforeCuts;
using Hoopwright.BuildSteps;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength;
using Hoopwright.Testing;

namespace Hoopwright.Tests.AsBuilt;

public sealed class BuiltExampleTests
{
    private static readonly PlannedTunnel Planned = TunnelWorks.Plan(SamplePlans.Example(SamplePlans.BuiltExample));

    [Fact]
    public void Its_site_book_is_said_to_be_invented_and_reads_but_for_the_slip_it_shows()
    {
        Assert.Contains("measurements are made up", Planned.Plan.Note, StringComparison.Ordinal);
        Assert.Equal("site-book.measurement.implausible", Assert.Single(Planned.Diagnostics, each => each.Code.StartsWith("site-book.", StringComparison.Ordinal)).Code);
        Assert.DoesNotContain(Planned.Diagnostics, each => each.Severity == Severity.Error);
        Assert.False(Planned.AsBuilt!.DoesNotFit);
    }

    [Fact]
    public void The_roof_is_as_much_wider_as_the_longest_bow_is_longer()
    {
        PlannedTunnel plain = TunnelWorks.Plan(Planned.Plan with { SiteBook = [] });
        double bowIn = Planned.Tunnel!.Bow.FilmLine.Length.Inches - plain.Tunnel!.Bow.FilmLine.Length.Inches;
        // 41' 10-1/2" at bow 10 is the longest.
        Assert.Equal(502.5, Planned.Tunnel.Bow.FilmLine.Length.Inches, 0.001);
        // The hip boards stand on upright legs, so that all of it lies between them; one is 1/8 in higher.
        Assert.Equal(bowIn - 0.125, Planned.Cover!.Pieces[0].AcrossRoll.Inches - plain.Cover!.Pieces[0].AcrossRoll.Inches, 0.01);
    }

    [Fact]
    public void Checks_say_what_the_story_asks() =>
        Assert.Equal([CutVerdict.Stop, CutVerdict.Stop, CutVerdict.Go, CutVerdict.Stop, CutVerdict.Stop], Planned.Checks!.All.Select(check => check.Verdict));

    [Fact]
    public void What_it_changed_in_money_and_strength_is_that_against_the_same_plan_without_a_site_book()
    {
        PlannedTunnel plain = TunnelWorks.Plan(Planned.Plan with { SiteBook = [] });
        Assert.Null(plain.ByPlan);
        Assert.Equal(plain.Orders!.Total, Planned.ByPlan!.Orders!.Total);
        Assert.NotEqual(plain.Orders.Total, Planned.Orders!.Total);
        Assert.Equal(plain.Strength!.InWind(StrengthLevel.Storm)!.Wind, Planned.StrengthByPlan!.InWind(StrengthLevel.Storm)!.Wind);
        using JsonDocument results = JsonDocument.Parse(ResultsJson.Write(Planned));
        JsonElement changed = results.RootElement.GetProperty("siteBook").GetProperty("changed");
        decimal more = Planned.Orders.Total.RoundToCents().Amount - plain.Orders.Total.RoundToCents().Amount;
        Assert.Equal(more, changed.GetProperty("more").GetDecimal(), 2);
        // Every line that is bought otherwise adds up to it, where each has a price.
        decimal lines = changed.GetProperty("orders").EnumerateArray().Sum(line => Extension(line, "after") - Extension(line, "before"));
        Assert.Equal(more, lines, 2);

        static decimal Extension(JsonElement line, string side) => line.TryGetProperty(side, out JsonElement bought) && bought.TryGetProperty("extension", out JsonElement cost) && cost.ValueKind == JsonValueKind.Number ? cost.GetDecimal() : 0;
    }

    [Fact]
    public void Steps_that_cut_or_pour_name_the_check_to_look_at_first()
    {
        Assert.Equal([CutCheckKind.Film], Step("film-cut").Checks);
        Assert.Equal([CutCheckKind.Concrete], Step("post-concrete").Checks);
        Assert.Equal([CutCheckKind.Posts], Step("front-posts").Checks);
        Assert.Equal([CutCheckKind.Channel], Step("channel").Checks);
        Assert.Equal([CutCheckKind.Boards], Step("front-boards").Checks);
        Assert.Empty(Step("bows").Checks);

        static BuildStep Step(string id) => Planned.Steps!.Steps.Single(step => step.Id == id);
    }

    [Fact]
    public void A_tolerance_of_the_plan_reaches_what_good_looks_like()
    {
        Plan strict = SamplePlans.Example("gothic-26ft") with { Tolerances = new BuildTolerances { Frame = new Written<Length>("3/8 in", Length.FromInches(0.375)) } };
        BuildStep bows = TunnelWorks.Plan(new PlanReading(strict, false, []), depth: WorkDepth.Orders).Steps!.Steps.Single(step => step.Id == "bows");
        Assert.Contains("plumb within 3/8\"", string.Join(' ', bows.Good), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_number_of_the_results_can_be_asked_about()
    {
        using Explainer explainer = Explainer.Of(Planned);
        string[] numbers = [.. explainer.NumberPaths().Where(path => path.StartsWith("siteBook.", StringComparison.Ordinal))];
        Assert.True(numbers.Length > 200, $"{numbers.Length} numbers are too few to mean anything.");
        Assert.DoesNotContain(numbers, path => Explainer.WorkingOf(path) is null);
        Explanation off = explainer.Explain("siteBook.measured[0].off")!;
        Assert.Equal(["siteBook.measured[0].measured", "siteBook.measured[0].planned"], off.Inputs.Select(input => input.Path));
        Assert.NotEmpty(explainer.Explain("siteBook.measured[0].tolerance")!.Rules);
    }

    [Fact]
    public void The_same_site_book_gives_the_same_bytes_in_whatever_order_its_entries_stand()
    {
        Plan turned = Planned.Plan with { SiteBook = [.. Planned.Plan.SiteBook.Reverse()] };
        // Only the places that diagnostics name differ.
        Assert.Equal(
            Planned.AsBuilt!.Measurements.Measured.Select(each => (each.Of.Name, each.Value)),
            TunnelWorks.Plan(turned).AsBuilt!.Measurements.Measured.Select(each => (each.Of.Name, each.Value)));
        Assert.Equal(ResultsJson.Write(Planned), ResultsJson.Write(TunnelWorks.Plan(SamplePlans.Example(SamplePlans.BuiltExample))));
    }
}
