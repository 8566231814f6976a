using System.Text;
using Bunit;
using Hoopwright.Cover.Pull;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Testing;
using Hoopwright.Web.Parts;
using Hoopwright.Web.State;
using Hoopwright.Web.Words;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.DependencyInjection;

namespace Hoopwright.Web.Tests;

/// <summary>What the screens of cover and weather show, by the engine itself.</summary>
public sealed class CoveringPanelTests : BunitContext
{
    private readonly PanelDesk desk;

    public CoveringPanelTests()
    {
        desk = new PanelDesk(Services);
        // Charts tell the browser when they are looked at large.
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing) desk.Dispose();
        base.Dispose(disposing);
    }

    [Fact]
    public async Task The_pull_of_a_typed_temperature_is_that_of_the_domain_and_the_chart_reads_it_off()
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Example("gothic-26ft"));
        await desk.OpenAsync("gothic-26ft");
        IRenderedComponent<CoveringPanel> panel = Render<CoveringPanel>();
        foreach (double fahrenheit in (double[])[35, 53, 75, 118])
        {
            panel.Find("input").Change(fahrenheit.ToString(System.Globalization.CultureInfo.InvariantCulture));
            PullRow row = planned.Cover!.Pull.At(Temperature.FromFahrenheit(fahrenheit));
            string along = TapeText.Of(TapeText.RoundToMark(row.PastSnugAlong.Abs(), planned.Units), planned.Units);
            panel.WaitForAssertion(() =>
            {
                string said = panel.Find("#pull-said").TextContent;
                Assert.StartsWith($"Film at {fahrenheit} °F", said, StringComparison.Ordinal);
                if (row.Advice is PullAdvice.PastSnug or PullAdvice.Loose) Assert.Contains(along, said, StringComparison.Ordinal);
                if (row.Advice == PullAdvice.TooHot) Assert.Contains("do not pull", said, StringComparison.Ordinal);
                Assert.Contains($"{fahrenheit} °F", panel.Find(".chart svg").TextContent, StringComparison.Ordinal);
            });
        }
    }

    [Fact]
    public async Task Every_step_stands_there_in_the_language_chosen_with_each_caution_once_in_full()
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Example("gothic-26ft"));
        await desk.OpenAsync("gothic-26ft");
        IRenderedComponent<CoveringPanel> panel = Render<CoveringPanel>();
        panel.WaitForAssertion(() => Assert.Equal(planned.Fastening!.Steps.Select(step => step.Title.ToString()), panel.FindAll(".steps h4").Select(title => title.TextContent)));
        Assert.Distinct(panel.FindAll(".steps .caution").Select(caution => caution.TextContent));
        Assert.Equal(planned.Fastening!.Steps.SelectMany(step => step.Cautions).Distinct().Count(), panel.FindAll(".steps .caution").Count);
        Services.GetRequiredService<Wording>().Choose("es");
        panel.WaitForAssertion(() => Assert.Equal("Esperar el día", panel.Find(".steps h4").TextContent));
        Assert.DoesNotContain(panel.FindAll(".steps li"), line => line.TextContent.Contains(" the ", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_forecast_gives_ranked_windows_with_reasons_and_a_file_that_is_none_says_so()
    {
        await desk.OpenAsync("gothic-26ft");
        IRenderedComponent<WeatherPanel> panel = Render<WeatherPanel>();
        string forecast = File.ReadAllText(Path.Combine(SamplePlans.Root, "examples", "forecast-invented.json"));
        panel.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText(forecast, "forecast.json"));
        panel.WaitForAssertion(() => Assert.NotEmpty(panel.FindAll(".windows li")), TimeSpan.FromSeconds(20));
        Assert.Contains("2026-04-18", panel.Find(".windows li").TextContent, StringComparison.Ordinal);
        Assert.Contains("of the limit on", panel.Find(".windows li").TextContent, StringComparison.Ordinal);
        Assert.NotNull(panel.Find(".chart svg"));
        Assert.NotEmpty(panel.FindAll("table tbody tr"));
        Services.GetRequiredService<WeatherDesk>().Open("hello", "letter.txt");
        panel.WaitForAssertion(() => Assert.NotEmpty(panel.FindAll(".findings .error")), TimeSpan.FromSeconds(20));
        Assert.Empty(panel.FindAll(".windows li"));
    }

    [Fact]
    public async Task Hours_are_told_by_the_clock_that_is_chosen_and_are_the_same_hours()
    {
        await desk.OpenAsync("gothic-26ft");
        IRenderedComponent<WeatherPanel> panel = Render<WeatherPanel>();
        // A table that says its clock: UTC-05:00. In daylight-saving time the clock on the wall is an hour ahead.
        var text = new StringBuilder("# latitude: 42.5\n# longitude: -76.5\n# utc offset: -5\ntime,temperature [°F],wind [mph],precipitation [mm]\n");
        for (DateTime hour = new(2026, 4, 18); hour.Day < 24; hour = hour.AddHours(1))
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"{hour:yyyy-MM-dd HH:mm},58,2,0\n");
        WeatherDesk weather = Services.GetRequiredService<WeatherDesk>();
        weather.Open(text.ToString(), "week.csv");
        panel.WaitForAssertion(() => Assert.NotEmpty(panel.FindAll(".windows li")), TimeSpan.FromSeconds(20));
        Assert.Equal("as in the file: UTC-05:00", panel.Find("select option").TextContent);
        (TimeOnly begin, string sun) = (Begin(), Sun());
        panel.Find("select").Change("-04:00");
        panel.WaitForAssertion(() => Assert.Equal(begin.AddHours(1), Begin()), TimeSpan.FromSeconds(20));
        Assert.NotEqual(sun, Sun());
        Assert.Equal("-04:00", weather.Clock);
        Assert.Contains("UTC-04:00", panel.FindAll("select option").Select(option => option.TextContent.Split(',')[0]));
        panel.Find("select").Change("");
        panel.WaitForAssertion(() => Assert.Equal(begin, Begin()), TimeSpan.FromSeconds(20));

        TimeOnly Begin() => TimeOnly.ParseExact(panel.Find(".windows strong").TextContent.Split(' ')[^1].Split('–')[0], "HH:mm", System.Globalization.CultureInfo.InvariantCulture);
        string Sun() => panel.Find(".windows li").TextContent.Split("sun ")[1].Split(')')[0];
    }

    [Fact]
    public async Task A_chart_is_enlarged_and_left_by_keyboard()
    {
        await desk.OpenAsync("gothic-26ft");
        IRenderedComponent<CoveringPanel> panel = Render<CoveringPanel>();
        panel.WaitForAssertion(() => Assert.NotNull(panel.Find(".chart svg")), TimeSpan.FromSeconds(20));
        await panel.InvokeAsync(() => panel.Find("button.enlarge").Click());
        Assert.NotNull(panel.Find("dialog.large svg"));
        Assert.Empty(panel.FindAll(".chart svg"));
        Assert.Equal("Pull chart", panel.Find("dialog").GetAttribute("aria-label"));
        await panel.InvokeAsync(panel.FindComponent<LargeView>().Instance.Closed);
        panel.WaitForAssertion(() => Assert.Empty(panel.FindAll("dialog")));
        Assert.NotNull(panel.Find(".chart svg"));
    }

    [Fact]
    public async Task A_year_inside_is_told_by_how_the_tunnel_is_kept_and_a_forecast_is_told_to_be_too_short()
    {
        await desk.OpenAsync("round-14ft");
        IRenderedComponent<InsidePanel> panel = Render<InsidePanel>();
        Services.GetRequiredService<WeatherDesk>().Open(File.ReadAllText(Path.Combine(SamplePlans.Root, "examples", "year-invented.csv")), "year.csv");
        panel.WaitForAssertion(() => Assert.NotEmpty(panel.FindAll("table tbody tr")), TimeSpan.FromSeconds(20));
        Assert.Equal("outside, to compare", panel.Find("tbody th").TextContent);
        Assert.Equal(3, panel.FindAll(".chart svg").Count);
        Assert.Contains("Light for plants", panel.Find("pre").TextContent, StringComparison.Ordinal);
        Services.GetRequiredService<Wording>().Choose("es");
        panel.WaitForAssertion(() => Assert.Equal("afuera, para comparar", panel.Find("tbody th").TextContent), TimeSpan.FromSeconds(20));
        Services.GetRequiredService<WeatherDesk>().Open(File.ReadAllText(Path.Combine(SamplePlans.Root, "examples", "forecast-invented.json")), "forecast.json");
        panel.WaitForAssertion(() => Assert.NotEmpty(panel.FindAll(".findings .error")), TimeSpan.FromSeconds(20));
        Assert.Empty(panel.FindAll("table"));
    }

    [Fact]
    public async Task A_year_gives_odds_by_month_in_Spanish_too()
    {
        await desk.OpenAsync("round-14ft");
        var text = new StringBuilder("# latitude: 42.5\n# longitude: -76.5\n# utc offset: -5\ntime,temperature [°F],wind [mph],precipitation [mm]\n");
        for (DateTime hour = new(2025, 1, 1); hour.Year == 2025; hour = hour.AddHours(1))
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"{hour:yyyy-MM-dd HH:mm},58,{(hour.Day <= hour.Month ? 2 : 20)},0\n");
        Services.GetRequiredService<Wording>().Choose("es");
        Services.GetRequiredService<WeatherDesk>().Open(text.ToString(), "year.csv");
        IRenderedComponent<WeatherPanel> panel = Render<WeatherPanel>();
        panel.WaitForAssertion(() => Assert.Equal("12 de 31", panel.FindAll("table")[0].QuerySelectorAll("tbody tr")[11].QuerySelectorAll("td")[0].TextContent), TimeSpan.FromSeconds(20));
        Assert.Equal("dic", panel.FindAll("table")[0].QuerySelectorAll("tbody th")[11].TextContent);
    }
}
