using Hoopwright.BeforeCuts;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
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
