using Hoopwright.BuildSteps;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Testing;

namespace Hoopwright.Tests.BuildSteps;

/// <summary>What the site book says of steps.</summary>
public sealed class StepMarksTests
{
    [Fact]
    public void The_later_entry_holds_whatever_the_order_in_the_file()
    {
        string done = """{ "id": "20260418T080000", "kind": "done", "of": "set-out", "value": "2026-04-18", "by": "K" }""";
        string signed = """{ "id": "20260418T081000", "kind": "signed", "of": "set-out", "by": "M" }""";
        string note = """{ "id": "20260418T082000", "kind": "note", "of": "set-out", "note": "stake 3 replaced" }""";
        string undone = """{ "id": "20260419T080000", "kind": "undone", "of": "set-out" }""";
        StepMark mark = MarkOf(note, signed, done);
        Assert.Equal((true, new DateOnly(2026, 4, 18), "M", "stake 3 replaced"), (mark.IsDone, mark.Day, mark.Signed?.By, Assert.Single(mark.Notes).Note));
        StepMark back = MarkOf(undone, done, signed, note);
        Assert.True(back is { IsDone: false, Day: null, Signed: null } && back.Notes.Length == 1);
    }

    [Fact]
    public void A_step_with_something_to_sign_lets_on_when_it_is_signed()
    {
        BuildPlan plan = TunnelWorks.Plan(SamplePlans.Example("round-14ft")).Steps!;
        BuildStep held = plan.Steps.First(step => step.Hold is not null), free = plan.Steps.First(step => step.Hold is null);
        StepMark done = new(true, null, null, []);
        Assert.False(done.LetsOn(held));
        Assert.True((done with { Signed = new SiteBookEntry() }).LetsOn(held));
        Assert.True(done.LetsOn(free));
        Assert.False(StepMark.None.LetsOn(free));
    }

    private static StepMark MarkOf(params string[] entries) => StepMarks.Of(SamplePlans.Simple(rest: $"\"siteBook\": [ {string.Join(", ", entries)} ]"))["set-out"];
}
