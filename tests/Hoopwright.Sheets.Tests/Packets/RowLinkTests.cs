using System.Collections.Immutable;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Tables;
using Hoopwright.Testing;

namespace Hoopwright.Sheets.Tests.Packets;

public sealed class RowLinkTests
{
    // Tools, money, sources and what strength was worked out with are drawn nowhere; steps of the cover stand as text on pages.
    private static readonly ImmutableHashSet<string> NotDrawn = ["tools", "cost-by-stage", "sources", "as-built-worth", "strength-assumptions", "covering-steps", "rules"];

    // Fields of the plan that a drawing shows, by the section they stand in.
    private static readonly string[] DrawnSections = ["site", "frame", "ground", "ends", "sides", "cover", "cuts"];

    public static TheoryData<string> Examples { get; } = [.. SamplePlans.GoodExamples, SamplePlans.BuiltExample];

    public static TheoryData<string> Others { get; } =
    [
        "\"ends\": { \"front\": { \"closing\": \"roofSheet\" }, \"back\": { \"closing\": \"open\" } }",
        "\"ends\": { \"front\": { \"closing\": \"open\" }, \"back\": { \"closing\": \"roofSheet\" } }",
        "\"ends\": { \"front\": { \"closing\": \"open\" }, \"back\": { \"closing\": \"open\" } }",
        "\"ground\": { \"anchor\": \"boards\" }",
        "\"sides\": { \"left\": { \"kind\": \"drop\", \"hipHeight\": \"4 ft\" }, \"right\": { \"kind\": \"rollUp\", \"hipHeight\": \"4 ft\" } }",
    ];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_row_about_a_thing_leads_to_a_drawing_that_is_there(string example) => Holds(TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes(example))));

    [Theory]
    [MemberData(nameof(Others))]
    public void So_it_does_where_ends_are_open_posts_are_none_and_sides_differ(string rest) => Holds(TunnelWorks.Plan(SamplePlans.Simple(rest: rest)));

    private static void Holds(PlannedTunnel planned)
    {
        (double widthMm, double heightMm) = Paper.Letter.DrawingSize(landscape: true);
        HashSet<string> drawn = [.. TunnelFigures.Offers(planned, new FigureSheet(widthMm, heightMm, "tunnel", "2026-03-01", planned.Units)).Select(offer => TunnelFigure.ShownBy(offer.Name))];
        // A tunnel without loads has no drawing of them, and its rows lead nowhere.
        drawn.UnionWith(planned.Strength?.Worst is null ? ["strength-loads", "strength-bow"] : []);
        foreach (Table table in new PacketTables(planned, planned.Tunnel!).All)
        {
            IEnumerable<TableRow> rows = table.Name == "rules" ? table.Rows.Where(row => DrawnSections.Contains(row.Cells[0].Split('.', '[')[0])) : NotDrawn.Contains(table.Name) ? [] : table.Rows;
            foreach (TableRow row in rows.Where(row => !row.IsTotal))
            {
                string? to = row.LeadsTo ?? table.Drawing;
                Assert.True(to is not null && drawn.Contains(to), $"{table.Name}: {string.Join(" | ", row.Cells.Take(2))} leads to {to ?? "nothing"}; there are {string.Join(", ", drawn)}");
            }
        }
    }
}
