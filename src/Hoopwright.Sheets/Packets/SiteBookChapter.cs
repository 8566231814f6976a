using System.Collections.Immutable;
using Hoopwright.BeforeCuts;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Words;

namespace Hoopwright.Sheets.Packets;

/// <summary>The pages on what to measure before each cut and on what was measured, and the note on each sheet that is not to be cut by yet.</summary>
internal static class SiteBookChapter
{
    private const string Title = "Before you cut or pour";

    /// <summary>Sets both chapters; that on what was measured only where something was.</summary>
    public static void Set(PacketBook book, PlannedTunnel planned, SiteBookTables tables)
    {
        book.Chapter(Title).Paragraph("What is cut too short, or poured in the wrong place, cannot be put right. Each measurement goes into the site book under its name; then this page is printed again.")
            .Table(tables.Checks).Table(tables.Needs);
        if (planned.AsBuilt is not { } built || tables.Measured is not { } measured) return;
        book.Chapter("As built").Paragraph("The latest reading that counts takes the place of what was planned, and everything else in this packet follows it. Tolerances are from memory where the plan does not give them.");
        book.Table(measured);
        ImmutableArray<string> right = [.. built.Deviations.Where(each => each.IsOut).Select(each => $"{Capital(each.Measurement.Of.What)}: {each.PutRightText} {each.OrElse}")];
        if (!right.IsEmpty) book.Heading("Out of tolerance, and how to put it right").Points(right);
        if (tables.Changed is { Rows.IsEmpty: false } changed) book.Table(changed);
        if (tables.Worth is { } worth) book.Table(worth);
        if (tables.Corners is { } corners && tables.Residuals is { } residuals) book.Table(corners).Table(residuals);
        if (built.OverBowWithin is { } over)
        {
            book.Paragraph(FormattableString.Invariant($"{built.BowsMeasured} of {built.Planned.Stations.Length} bows were measured over their outside. The longest of them is known within {TapeText.Of(TapeText.RoundUpForLimit(over, planned.Units), planned.Units)}, nineteen times of twenty, ")
                + (built.Noise.IsAssumed ? "by the accuracy of the tape." : "by the spread of what was measured more than once."));
        }
    }

    /// <summary>Says on a sheet that it is not to be cut by yet.</summary>
    public static PacketBook Mind(this PacketBook book, PlannedTunnel planned, CrewWords words, params ReadOnlySpan<CutCheckKind> kinds)
    {
        foreach (CutCheckKind kind in kinds)
        {
            if (planned.Checks?.Of(kind) is not { } check) continue;
            switch (check.Verdict)
            {
                case CutVerdict.Go: break;
                case CutVerdict.MeasureFirst or CutVerdict.Stop: book.Caution($"{words.Say(Title)}: {words.Say(SiteBookTables.NameOf(kind).ToLowerInvariant())}", words.Say(check.Says)); break;
            }
        }
        return book;
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
