using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Sheets.Svg;
using Hoopwright.Testing;

namespace Hoopwright.Sheets.Tests.Drawings;

public sealed class SampleSheetTests
{
    [Fact]
    public void A_sheet_with_every_kind_of_mark_has_no_collision()
    {
        foreach (Drawing drawing in (Drawing[])
            [SampleSheets.EndWall(Paper.Letter), SampleSheets.EndWall(Paper.A4, Angle.FromDegrees(-20)), SampleSheets.Metric(Paper.A4), SampleSheets.Metric(Paper.Letter)])
            Assert.Equal([], Collisions.In(drawing));
    }

    [Fact]
    public void The_sample_end_wall_is_the_kept_svg() =>
        Golden.Match(SvgWriter.Write(SampleSheets.EndWall(Paper.Letter), withFont: false), "Hoopwright.Sheets.Tests/Golden/end-wall.svg");

    [Fact]
    public void The_sample_plan_is_the_kept_svg() =>
        Golden.Match(SvgWriter.Write(SampleSheets.Metric(Paper.A4), withFont: false), "Hoopwright.Sheets.Tests/Golden/plan.svg");

    [Fact]
    public void The_sample_sheets_are_the_kept_pdf() => Golden.Match(SamplePdf(), "Hoopwright.Sheets.Tests/Golden/sheets.pdf");

    internal static byte[] SamplePdf() => PdfWriter.Write(
        [new PdfSheet(SampleSheets.EndWall(Paper.Letter), "End wall"), new PdfSheet(SampleSheets.Metric(Paper.A4), "Plan", ImmutableArray.Create(new PdfLink(new SheetBox(10, 10, 60, 20), 1)))],
        new PdfDetails("Sample sheets", "Invented sheets for tests", new DateTimeOffset(2026, 3, 1, 12, 0, 0, TimeSpan.Zero)));
}
