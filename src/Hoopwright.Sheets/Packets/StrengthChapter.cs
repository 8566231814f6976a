using System.Collections.Immutable;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Tables;
using Hoopwright.Strength;

namespace Hoopwright.Sheets.Packets;

/// <summary>The chapter of the packet on what the tunnel stands.</summary>
internal static class StrengthChapter
{
    private const string Beside = "About strength: for planning only";

    /// <summary>Sets the chapter.</summary>
    public static void Set(PacketBook book, StrengthReport report, StrengthTables tables)
    {
        book.Chapter("Strength", "strength").Paragraph(report.Says).Caution(Beside, StrengthCaution.Text);
        if (report.NotChecked is not null)
            book.Paragraph("There is no limit, no utilisation and no drawing of forces here, for this reason alone.");
        if (report.Combinations is [{ Utilisation: null }, ..])
            book.Paragraph($"A bow buckles under the worst combination before it carries the loads. {(report.Worst is null ? "So it does under every other, and there are no forces to draw." : "The drawing shows the worst combination that it carries without buckling.")}");
        foreach (Table table in tables.All) book.Table(table);
    }

    /// <summary>What the summary says of strength.</summary>
    public static void Summarise(PacketBook book, StrengthReport? report)
    {
        if (report is null)
        {
            book.Caution("What this plan does not tell",
                "Whether the frame stands your snow and wind is not worked out here. The maker of the frame or a licensed engineer decides, by the loads that your building office gives. Local codes come first.");
            return;
        }
        book.Heading("Strength").Paragraph(report.Says).Caution(Beside, StrengthCaution.Text);
    }

    /// <summary>The tables of a report; none without one.</summary>
    public static ImmutableArray<Table> TablesOf(StrengthTables? tables) => tables?.All ?? [];
}
