using System.IO.Compression;
using System.Text.Json;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Sharing;
using Hoopwright.Testing;

namespace Hoopwright.Server.Tests.Api;

public sealed class KeeperTests(PostgresServer postgres)
{
    [Theory, OnBoth]
    public async Task The_audit_tells_what_was_changed_through_which_link_and_by_whom(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        NewLinkAnswer made = await keeper.MakeLinkAsync(new NewLink(LinkKind.Edit, "the crew"));
        SharedPlanClient crew = host.With(made.Token);
        await crew.PushAsync(Entries.Push(Entries.Measured(1), Entries.Measured(2)));
        await crew.PushAsync(Entries.Push(Entries.Measured(1)));
        await crew.PushAsync(new DocumentPush(Host.Plan.Replace("26 ft", "30 ft", StringComparison.Ordinal), "Bo"));
        await keeper.RevokeLinkAsync(made.Id);

        AuditPage audit = await keeper.AuditAsync();

        Assert.Equal(["shared", "link-made", "entries-added", "plan-changed", "link-revoked"], audit.Rows.Select(row => row.What));
        Assert.Equal(["Ada", null, null, "Bo", null], audit.Rows.Select(row => row.By));
        Assert.Equal("Entries 1 to 2 were added.", audit.Rows[2].Detail);
        Assert.Equal((made.Id, LinkKind.Edit, "the crew"), (audit.Rows[3].LinkId, audit.Rows[3].LinkKind, audit.Rows[3].LinkLabel));
        Assert.All(audit.Rows, row => Assert.Equal(host.Clock.Now, row.At));
        Assert.False(audit.More);
        Assert.Equal([5], (await keeper.AuditAsync(after: 4)).Rows.Select(row => row.Number));
    }

    [Theory, OnBoth]
    public async Task The_export_holds_everything_and_its_plan_opens_with_its_site_book_in_order(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        string document = await File.ReadAllTextAsync(Path.Combine(SamplePlans.Root, "examples", "gothic-26ft.json"));
        SharedPlanClient keeper = await host.ShareAsync(document);
        int[] numbers = [.. Enumerable.Range(0, 250).Select(number => number * 7 % 250)];
        await keeper.PushAsync(Entries.Push([.. numbers.Select(number => Entries.Measured(number))]));
        await keeper.MakeLinkAsync(new NewLink(LinkKind.Read, "the neighbours"));

        using ZipArchive zip = new(new MemoryStream(await keeper.ExportAsync()));

        Assert.Equal(["plan.json", "document.json", "entries.jsonl", "links.json", "audit.json"], zip.Entries.Select(entry => entry.FullName));
        Assert.Equal((await keeper.GetAsync()).Document, Read("document.json"));
        PlanReading plan = PlanReader.Read(System.Text.Encoding.UTF8.GetBytes(Read("plan.json")));
        Assert.DoesNotContain(plan.Diagnostics, each => each.Severity == Severity.Error);
        Assert.Equal(Enumerable.Range(0, 250).Select(Entries.Id), plan.Plan!.SiteBook.Select(entry => entry.Id));
        Assert.Equal(numbers.Select(Entries.Id), Read("entries.jsonl").TrimEnd('\n').Split('\n').Select(line => JsonDocument.Parse(line).RootElement.GetProperty("id").GetString()));
        Assert.Contains("the neighbours", Read("links.json"), StringComparison.Ordinal);
        Assert.Contains("\"exported\"", Read("audit.json"), StringComparison.Ordinal);

        string Read(string name)
        {
            using StreamReader reader = new(zip.GetEntry(name)!.Open());
            return reader.ReadToEnd();
        }
    }

    [Theory, OnBoth]
    public async Task Deleting_everything_leaves_nothing_behind(StoredIn kind)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        NewLinkAnswer link = await keeper.MakeLinkAsync(new NewLink(LinkKind.Read));
        await keeper.PushAsync(Entries.Push(Entries.Measured(1, "a very private measurement")));

        await keeper.DeleteEverythingAsync();

        Assert.Equal("link-unknown", (await Assert.ThrowsAsync<SharingException>(() => keeper.GetAsync())).Problem.Code);
        Assert.Equal("link-unknown", (await Assert.ThrowsAsync<SharingException>(() => host.With(link.Token).GetAsync())).Problem.Code);
        Assert.Equal(0, await host.Database.ReadAsync(session => session.GetAsync<long>(
            "SELECT (SELECT count(*) FROM share) + (SELECT count(*) FROM link) + (SELECT count(*) FROM entry) + (SELECT count(*) FROM audit)")));
        if (kind == StoredIn.Sqlite)
        {
            // Not even in pages that are free now, or in the log.
            foreach (string file in new[] { host.DatabaseFile, host.DatabaseFile + "-wal" })
            {
                await using FileStream stream = new(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
                using StreamReader reader = new(stream, System.Text.Encoding.Latin1);
                Assert.DoesNotContain("private", await reader.ReadToEndAsync(), StringComparison.Ordinal);
            }
        }
    }
}
