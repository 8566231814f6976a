using Bunit;
using Hoopwright.BuildSteps;
using Hoopwright.Packets;
using Hoopwright.Sheets.Words;
using Hoopwright.Testing;
using Hoopwright.Web.Parts;
using Hoopwright.Web.State;
using Hoopwright.Web.Words;
using Microsoft.Extensions.DependencyInjection;

namespace Hoopwright.Web.Tests;

/// <summary>What the screen of steps shows, by the engine itself.</summary>
public sealed class StepsPanelTests : BunitContext
{
    private readonly PanelDesk desk;

    public StepsPanelTests()
    {
        desk = new PanelDesk(Services);
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddSingleton<PageScript>().AddSingleton(TimeProvider.System);
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing) desk.Dispose();
        base.Dispose(disposing);
    }

    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("round-14ft")]
    [InlineData("metric-9m")]
    public async Task Every_step_stands_there_in_both_languages_with_all_its_cautions_and_what_it_takes(string example)
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Example(example));
        await desk.OpenAsync(example);
        IRenderedComponent<StepsPanel> panel = Render<StepsPanel>();
        panel.WaitForAssertion(() => Assert.Equal(planned.Steps!.Steps.Select(step => step.Title.ToString()), panel.FindAll(".step-list .name").Select(name => name.TextContent)));
        BuildStep bows = planned.Steps!.Steps.Single(step => step.Id == "bows");
        await panel.InvokeAsync(() => panel.Find("summary[data-step=bows]").Click());
        Assert.Equal(bows.Cautions.Select(caution => caution.Text), panel.FindAll(".step-list .caution").Select(caution => caution.TextContent));
        Assert.Contains("screws in all", panel.Find("li.waits details[open]").TextContent, StringComparison.Ordinal);
        Services.GetRequiredService<Wording>().Choose("es");
        CrewWords words = CrewWords.Of("es");
        panel.WaitForAssertion(() => Assert.Contains(words.Fill("Raise the bows"), panel.FindAll(".step-list .name").Select(name => name.TextContent)));
        Assert.Contains("espera", panel.Find("summary[data-step=bows] .mark").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_steps_of_new_film_are_a_choice_away()
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Example("round-14ft"));
        await desk.OpenAsync("round-14ft");
        IRenderedComponent<StepsPanel> panel = Render<StepsPanel>();
        panel.WaitForElement(".step-list li");
        panel.FindAll(".choices button")[1].Click();
        panel.WaitForAssertion(() => Assert.Equal(planned.RecoverSteps!.Steps.Select(step => step.Title.ToString()), panel.FindAll(".step-list .name").Select(name => name.TextContent)));
    }
}
