using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.BeforeCuts;
using Hoopwright.Cuts.Film;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Sheets.Tables;
using Hoopwright.Sheets.Words;

namespace Hoopwright.Sheets.Packets;

/// <summary>What those who set out, dig, cover and cut need, as one PDF in their language: cautions, tables and drawings, no prices.</summary>
public static class CrewSheets
{
    // The drawings without which nobody can set out or cut.
    private static readonly ImmutableArray<string> Wanted = ["set-out", "ground-details", "side-details", "film-details", "film-cuts", "film-pull", "front-end-film", "back-end-film", "roof-pull", "cut-lists"];

    /// <summary>Whether the sheets have a drawing of that name.</summary>
    internal static bool Wants(string figure) => Wanted.Any(wanted => figure.StartsWith(wanted, StringComparison.Ordinal));

    /// <summary>The sheets as a file, crew-es.pdf for Spanish.</summary>
    /// <param name="planned">A plan worked out to its end; it must have a tunnel.</param>
    /// <param name="paper">Letter or A4.</param>
    /// <param name="date">The day on the sheets.</param>
    /// <param name="language">One of <see cref="CrewWords.Languages"/>.</param>
    public static PacketFile Write(PlannedTunnel planned, Paper paper, DateOnly date, string language)
    {
        CrewWords words = CrewWords.Of(language);
        PdfDetails details = new(PacketWriter.Name(planned), words.Say("Crew sheets"), new DateTimeOffset(date.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero), words.Language);
        return new PacketFile($"crew-{words.Language}.pdf", [.. PdfWriter.Write(Pages(planned, paper, date, language), details)]);
    }

    /// <summary>The pages alone.</summary>
    /// <param name="planned">A plan worked out to its end; it must have a tunnel.</param>
    /// <param name="paper">Letter or A4.</param>
    /// <param name="date">The day on the sheets.</param>
    /// <param name="language">One of <see cref="CrewWords.Languages"/>.</param>
    public static ImmutableArray<PdfSheet> Pages(PlannedTunnel planned, Paper paper, DateOnly date, string language)
    {
        Tunnel tunnel = PacketWriter.Built(planned);
        CrewWords words = CrewWords.Of(language);
        PacketTables tables = new(planned, tunnel, words);
        string name = PacketWriter.Name(planned);
        (double widthMm, double heightMm) = paper.DrawingSize(landscape: true);
        FigureSheet sheet = new(widthMm, heightMm, name, PacketWriter.Written(date), planned.Units) { Words = words, Paper = paper.Name };
        ImmutableArray<(FigureChapter Chapter, string Shows, Drawing Drawing)> drawings =
            [.. TunnelFigures.Offers(planned, sheet).Where(offer => Wants(offer.Name)).Select(offer => (offer.Chapter, TunnelFigure.ShownBy(offer.Name), offer.Draw()))];
        PacketBook book = new PacketBook(paper, name, words) { Drawings = PacketWriter.NumbersOf(drawings.Select(each => (each.Shows, each.Drawing.Sheet))) }.Cover(name,
        [
            words.Say("Crew sheets"),
            words.Fill("{0} wide, {1} long, {2} bows", TapeText.Of(tunnel.Span, planned.Units), TapeText.Of(tunnel.Length, planned.Units), tunnel.Stations.Length.ToString(CultureInfo.InvariantCulture)),
            words.Fill("Made {0}", PacketWriter.Written(date)),
            words.Fill("For those who set out, dig, cover and cut. The whole packet is in English."),
        ]);
        if (words.Language != "en") book.Chapter(words.Say("Marks of parts")).Table(tables.MarkWords);
        book.Chapter(words.Say("Set-out")).Caution(PacketCautions.Digging(planned.Units), words).Table(tables.SideMarks).Table(tables.Ordinates);
        if (!tables.Purlins.Rows.IsEmpty) book.Table(tables.Purlins);
        Drawn(FigureChapter.SetOut);
        book.Chapter(words.Say("Ground and ends")).Caution(PacketCautions.Concrete, words).Mind(planned, words, CutCheckKind.Concrete, CutCheckKind.Posts);
        if (!tunnel.Holes.IsEmpty) book.Table(tables.Holes);
        foreach (Table posts in tables.EndPosts) book.Table(posts);
        if (tunnel.Ends.Any(end => !end.Doors.IsEmpty)) book.Table(tables.Doors);
        Drawn(FigureChapter.Ends);
        book.Chapter(words.Say("Cover")).Caution(PacketCautions.Film, words).Mind(planned, words, CutCheckKind.Film).Table(tables.Film).Table(tables.FilmMarks)
            .Paragraph(words.Fill(FilmCutPlan.FoldNote)).Paragraph(words.Fill(FilmCutPlan.FaceNote)).Table(tables.Fastening).Table(tables.Pull);
        Drawn(FigureChapter.Cover);
        FasteningChapter.Set(book, planned, tunnel, tables, words);
        Drawn(FigureChapter.Covering);
        book.Chapter(words.Say("Cut lists")).Caution(PacketCautions.Saw, words).Mind(planned, words, CutCheckKind.Boards, CutCheckKind.Channel);
        foreach (Table cuts in tables.Cuts) book.Table(cuts);
        Drawn(FigureChapter.Cuts);
        return book.Pages();

        void Drawn(FigureChapter chapter)
        {
            foreach (var each in drawings.Where(each => each.Chapter == chapter)) book.Figure(each.Drawing, each.Shows);
        }
    }
}
