using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Pdf;

namespace Hoopwright.Sheets.Pages;

/// <content>Contents, footers and the finished pages.</content>
public sealed partial class PacketBook
{
    private const double ClosestContentsMm = 4.7;
    private const int FewestContents = 8;

    private double ContentsLeadMm => LeadMm + 0.6;

    /// <summary>The finished pages. Contents that do not fit on the cover go on over pages after it.</summary>
    public ImmutableArray<PdfSheet> Pages()
    {
        List<Sheet> all = [.. sheets.Select(sheet => sheet.Copy())];
        List<ImmutableArray<PdfLink>> links = Contents(all);
        int added = all.Count - sheets.Count;
        ImmutableArray<PdfSheet>.Builder pages = ImmutableArray.CreateBuilder<PdfSheet>(all.Count);
        for (int index = 0; index < all.Count; index++)
        {
            Sheet sheet = all[index];
            // Before the tags are read: what a row leads to is settled in them.
            ImmutableArray<PdfLink> leads = index < links.Count ? links[index] : Leads(sheet, added);
            Pen foot = new("footer", sheet.Marks);
            double baseMm = sheet.HighMm - 7;
            if (index == all.Count - 1 && isInChapter) sheet.Tags.Add(new PdfTag(sheet.Marks.Count, null));
            sheet.Tags.Add(new PdfTag(sheet.Marks.Count, PdfRole.Artifact));
            string middle = paper.IsCard ? "" : words.Say("Do not scale from a screen; check the scale bar");
            double middleMm = Typeface.Of(LetterWeight.Regular).WidthMm(middle, Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm));
            // The name ends before what stands in the middle begins.
            foot.Text(new SheetPoint(10, baseMm), Shortened(running, paper.IsCard ? sheet.WideMm - 55 : Math.Min(70, ((sheet.WideMm - middleMm) / 2) - 14)));
            if (middle.Length > 0) foot.Text(new SheetPoint(sheet.WideMm / 2, baseMm), middle, TextAlign.Middle);
            foot.Text(new SheetPoint(sheet.WideMm - 10, baseMm), words.Say(string.Create(CultureInfo.InvariantCulture, $"{index + 1} of {all.Count}")), TextAlign.End);
            sheet.Tags.Add(new PdfTag(sheet.Marks.Count, null));
            Drawing page = new()
            {
                Title = sheet.Bookmark ?? running,
                Description = sheet.Description,
                WidthMm = sheet.WideMm,
                HeightMm = sheet.HighMm,
                Marks = [.. sheet.Marks],
            };
            pages.Add(new PdfSheet(page, sheet.Bookmark, leads)
            {
                IsInChapter = sheet.IsInChapter,
                Places = [.. sheet.Places],
                Label = sheet.Label,
                Tags = [.. sheet.Tags],
            });
        }

        return pages.MoveToImmutable();
    }

    /// <summary>Links from rows of tables, now that pages are known, which are written where a row asks for its page. A row that leads nowhere here has none.</summary>
    private ImmutableArray<PdfLink> Leads(Sheet sheet, int added)
    {
        var links = ImmutableArray.CreateBuilder<PdfLink>();
        for (int at = 0; at < sheet.Tags.Count; at++)
        {
            if (sheet.Tags[at] is not { Opens: PdfRole.Link } tag) continue;
            (SheetBox area, string to, int? pageMark) = sheet.Leads[tag.Link];
            bool isKnown = places.TryGetValue(to, out int page);
            string number = isKnown ? (page + added).ToString(CultureInfo.InvariantCulture) : "";
            if (pageMark is { } mark && sheet.Marks[mark] is TextMark text) sheet.Marks[mark] = text with { Text = number };
            sheet.Tags[at] = isKnown ? tag with { Link = links.Count } : tag with { Opens = PdfRole.Paragraph };
            if (isKnown) links.Add(new PdfLink(area, page + added, Drawings.TryGetValue(to, out string? sheetNumber) ? $"{words.Fill("Sheet {0}", sheetNumber)}, {words.Fill("page {0}", number)}" : words.Fill("page {0}", number)));
        }
        return links.ToImmutable();
    }

    /// <summary>Writes the contents on the first pages, putting in as many as it takes, and returns the links of each.</summary>
    private List<ImmutableArray<PdfLink>> Contents(List<Sheet> all)
    {
        if (all.Count == 0 || all[0].ContentsTopMm is not { } firstTopMm) return [];
        double roomMm = FloorMm - firstTopMm;
        // A few lines too many are set closer rather than left on a page of their own.
        double leadMm = entries.Count * ContentsLeadMm > roomMm && entries.Count * ClosestContentsMm <= roomMm ? roomMm / entries.Count : ContentsLeadMm;
        ImmutableArray<int> counts = OnPages((int)((roomMm / leadMm) + 1e-9), (int)((FloorMm - MarginMm) / leadMm));
        int added = counts.Length - 1;
        for (int page = 0; page < added; page++)
            all.Insert(1 + page, new Sheet(paper.ShortMm, paper.LongMm));

        List<ImmutableArray<PdfLink>> links = [];
        for (int page = 0, next = 0; page <= added; page++)
        {
            int count = counts[page];
            List<PdfTag> tags = all[page].Tags;
            if (page == 0) tags.Add(new PdfTag(all[page].Marks.Count, PdfRole.Contents));
            links.Add([.. entries.Skip(next).Take(count).Select((entry, line) =>
            {
                tags.AddRange([new PdfTag(all[page].Marks.Count, PdfRole.ContentsItem), new PdfTag(all[page].Marks.Count, PdfRole.Link, null, line)]);
                PdfLink link = Entry(new Pen("contents", all[page].Marks), entry.Title, entry.Page + added, entry.IsChapter, (page == 0 ? firstTopMm : MarginMm) + (line * leadMm), leadMm);
                tags.AddRange([new PdfTag(all[page].Marks.Count, null), new PdfTag(all[page].Marks.Count, null)]);
                return link;
            })]);
            if (page == added) tags.Add(new PdfTag(all[page].Marks.Count, null));
            next += count;
        }

        return links;
    }

    /// <summary>How many lines of the contents stand on the cover and on each page after it: no page has but a few, and a chapter is not parted from what stands under it.</summary>
    private ImmutableArray<int> OnPages(int onCover, int onPage)
    {
        var counts = ImmutableArray.CreateBuilder<int>();
        for (int next = 0; counts.Count == 0 || next < entries.Count; next += counts[^1])
        {
            int left = entries.Count - next, count = Math.Min(counts.Count == 0 ? onCover : onPage, left);
            if (count < left && Math.Min(count, left - FewestContents) is var most && most > 0)
            {
                count = Enumerable.Range(0, Math.Min(most, FewestContents)).Select(back => most - back).FirstOrDefault(each => entries[next + each].IsChapter, most);
            }
            counts.Add(count);
        }
        return counts.ToImmutable();
    }

    private PdfLink Entry(Pen pen, string title, int page, bool isChapter, double atMm, double leadMm)
    {
        LetterWeight weight = isChapter ? LetterWeight.Bold : LetterWeight.Regular;
        pen.Text(new SheetPoint(MarginMm + (isChapter ? 0 : 6), atMm + 4), Shortened(title, TextWidthMm - 26), TextAlign.Start, 2.6, weight);
        pen.Text(new SheetPoint(MarginMm + TextWidthMm, atMm + 4), page.ToString(CultureInfo.InvariantCulture), TextAlign.End, 2.6, weight);
        return new PdfLink(new SheetBox(MarginMm, atMm, MarginMm + TextWidthMm, atMm + leadMm), page, string.Create(CultureInfo.InvariantCulture, $"{title}, {page}"));
    }
}
