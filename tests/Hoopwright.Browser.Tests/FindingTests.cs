using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Microsoft.Playwright;

namespace Hoopwright.Browser.Tests;

/// <summary>Whatever the engine finds in a plan is told in the list and beside the field, and the list leads to the field.</summary>
public sealed class FindingTests(Site site)
{
    [Theory]
    [InlineData("wrong")]
    [InlineData("wrong-shape")]
    public async Task Everything_wrong_in_a_plan_file_stands_in_the_list_and_beside_its_field(string example)
    {
        ImmutableArray<Diagnostic> expected = [.. Found(example).Where(each => each.Severity != Severity.Assumption)];
        Assert.NotEmpty(expected);
        await using IBrowserContext visitor = await site.NewVisitorAsync();
        IPage page = await Visit.OpenAsync(visitor);
        await Visit.ImportAsync(page, Visit.Example(example));
        ILocator list = page.Locator(".findings li:not(.assumption)");
        await Assertions.Expect(list).ToHaveCountAsync(expected.Length);
        for (int at = 0; at < expected.Length; at++)
        {
            Diagnostic each = expected[at];
            await Assertions.Expect(list.Nth(at)).ToContainTextAsync(each.Message);
            ILocator go = list.Nth(at).Locator(".go");
            await go.ClickAsync();
            await page.WaitForFunctionAsync(KeyboardIsThere, each.Path);
            await Assertions.Expect(page.Locator(".questions [data-path] .error").Filter(new() { HasText = each.Message }).First).ToBeVisibleAsync();
            await page.Locator(".bays a").First.ClickAsync();
        }
    }

    // The field itself has the keyboard, or the first one of the nearest group that the page asks for.
    private const string KeyboardIsThere = """
        path => {
          for (let at = document.activeElement?.closest('[data-path]'); at; at = at.parentElement.closest('[data-path]')) {
            if (path.startsWith(at.dataset.path) || at.dataset.path.startsWith(path)) return true;
          }
          return false;
        }
        """;

    // Places within the text are those of the file that the user has.
    private static ImmutableArray<Diagnostic> Found(string example) => TunnelWorks.Plan(PlanReader.Read(File.ReadAllBytes(Visit.Example(example)))).Diagnostics;
}
