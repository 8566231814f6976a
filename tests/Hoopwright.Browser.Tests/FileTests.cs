using System.Text;
using Hoopwright.Plans;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>Plans come in as files and go out as files.</summary>
public sealed class FileTests(Site site)
{
    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("round-14ft")]
    [InlineData("metric-9m")]
    public async Task A_plan_that_goes_in_comes_out_as_the_writer_of_plans_writes_it_and_again_the_same(string example)
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ImportAsync(page, Visit.Example(example));
        string saved = await SavedPlanAsync(page);
        Assert.Equal(Encoding.UTF8.GetString(PlanWriter.Write(PlanReader.Read(File.ReadAllBytes(Visit.Example(example))).Plan)), saved);
        string file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".json");
        File.WriteAllText(file, saved);
        await page.GotoAsync("/");
        await Visit.ImportAsync(page, file);
        File.Delete(file);
        Assert.Equal(saved, await SavedPlanAsync(page));
    }

    [Fact]
    public async Task A_file_dropped_on_the_page_is_opened_and_one_that_is_no_plan_is_told()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await DropAsync(page, "shopping.txt", "milk, screws");
        await Assertions.Expect(page.GetByRole(AriaRole.Alert).First).ToContainTextAsync("no plan");
        await DropAsync(page, "metric-9m.json", File.ReadAllText(Visit.Example("metric-9m")));
        await page.Locator(".paper svg").WaitForAsync();
        string name = PlanReader.Read(File.ReadAllBytes(Visit.Example("metric-9m"))).Plan.Name!;
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync(name);
    }

    [Fact]
    public async Task A_file_dropped_while_the_page_is_still_loading_is_opened_once_it_is_up()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await visitor.NewPageAsync();
        page.SetDefaultTimeout(60_000);
        TaskCompletionSource dropped = new();
        await page.RouteAsync("**/_framework/**", async route =>
        {
            await dropped.Task;
            await route.ContinueAsync();
        });
        await page.GotoAsync("/", new() { WaitUntil = WaitUntilState.Commit });
        await Assertions.Expect(page.GetByText("Loading.")).ToBeVisibleAsync();
        await DropAsync(page, "metric-9m.json", File.ReadAllText(Visit.Example("metric-9m")));
        dropped.SetResult();
        await page.Locator(".paper svg").WaitForAsync();
    }

    [Fact]
    public async Task A_file_dropped_on_the_page_of_a_plan_is_opened_in_its_place()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ExampleAsync(page);
        await DropAsync(page, "metric-9m.json", File.ReadAllText(Visit.Example("metric-9m")));
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync(PlanReader.Read(File.ReadAllBytes(Visit.Example("metric-9m"))).Plan.Name!);
        await page.GotoAsync("/");
        await Assertions.Expect(page.Locator(".plans").First.Locator("li")).ToHaveCountAsync(2);
    }

    [Fact]
    public async Task A_removed_plan_is_gone_after_a_second_word_and_the_others_stay()
    {
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ImportAsync(page, Visit.Example("round-14ft"));
        await page.GotoAsync("/");
        await Visit.ExampleAsync(page);
        await page.GotoAsync("/");
        ILocator plans = page.Locator(".plans").First.Locator("li");
        await Assertions.Expect(plans).ToHaveCountAsync(2);
        string goes = await plans.First.Locator("a").InnerTextAsync(), stays = await plans.Last.Locator("a").InnerTextAsync();
        await plans.First.GetByRole(AriaRole.Button, new() { Name = "Remove" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep it" }).ClickAsync();
        await Assertions.Expect(plans).ToHaveCountAsync(2);
        await plans.First.GetByRole(AriaRole.Button, new() { Name = "Remove" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove for good" }).ClickAsync();
        await Assertions.Expect(plans).ToHaveCountAsync(1);
        await page.ReloadAsync();
        await Assertions.Expect(plans).ToHaveCountAsync(1);
        await Assertions.Expect(plans.Locator("a")).ToHaveTextAsync(stays);
        Assert.NotEqual(goes, stays);
    }

    private static async Task<string> SavedPlanAsync(IPage page)
    {
        await Visit.StageAsync(page, "Packet");
        return await Visit.SavedAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save the plan file" }));
    }

    private static async Task DropAsync(IPage page, string name, string text)
    {
        IJSHandle carried = await page.EvaluateHandleAsync("([name, text]) => { const carried = new DataTransfer(); carried.items.add(new File([text], name)); return carried; }", new[] { name, text });
        await page.DispatchEventAsync("main", "drop", new { dataTransfer = carried });
    }
}
