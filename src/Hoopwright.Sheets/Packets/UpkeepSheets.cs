using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Sheets.Tables;
using Hoopwright.Sheets.Words;
using Hoopwright.Upkeep;

namespace Hoopwright.Sheets.Packets;

/// <summary>The storm card, one page to hang by the door, and the checklists of the rounds behind it.</summary>
public static class UpkeepSheets
{
    // The rest stands in the results.
    private const int MostWeaker = 4;

    // Room to write in.
    private static readonly string Room = new(Table.Joiner, 14);

    /// <summary>The sheets as a file, upkeep.pdf, or upkeep-es.pdf in Spanish.</summary>
    /// <param name="planned">A plan worked out to its end; it must have a tunnel.</param>
    /// <param name="paper">Letter or A4.</param>
    /// <param name="date">The day on the sheets.</param>
    /// <param name="language">One of <see cref="CrewWords.Languages"/>.</param>
    public static PacketFile Write(PlannedTunnel planned, Paper paper, DateOnly date, string language)
    {
        CrewWords words = CrewWords.Of(language);
        PdfDetails details = new(PacketWriter.Name(planned), words.Say("Storm card and rounds"), new DateTimeOffset(date.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero), words.Language);
        return new PacketFile(words.Language == "en" ? "upkeep.pdf" : $"upkeep-{words.Language}.pdf", [.. PdfWriter.Write(Pages(planned, paper, date, language), details)]);
    }

    /// <summary>The pages alone.</summary>
    /// <param name="planned">A plan worked out to its end; it must have a tunnel.</param>
    /// <param name="paper">Letter or A4.</param>
    /// <param name="date">The day on the sheets.</param>
    /// <param name="language">One of <see cref="CrewWords.Languages"/>.</param>
    public static ImmutableArray<PdfSheet> Pages(PlannedTunnel planned, Paper paper, DateOnly date, string language)
    {
        Tunnel tunnel = PacketWriter.Built(planned);
        ArgumentNullException.ThrowIfNull(paper);
        UpkeepReport upkeep = planned.Upkeep ?? throw new ArgumentException("The plan was not worked out to its end.", nameof(planned));
        CrewWords words = CrewWords.Of(language);
        var book = new PacketBook(paper, $"{PacketWriter.Name(planned)}, {PacketWriter.Written(date)}", words, isClose: true);
        if (upkeep.Card is { } card) Card(book, card, words, planned.Units, MostWeakerOn(paper, card, words, planned.Units));
        book.Chapter(words.Say("Rounds"));
        foreach (InspectionRound round in upkeep.Rounds) book.Table(Round(round, words));
        book.Heading(words.Say("The next cover")).Paragraph(words.Say(StormWords.Film(upkeep.Film, date)));
        book.Paragraph(words.Say("Film is cut by the film cuts of the packet, once the frame that stands is measured. It takes, beside what can be used again:"));
        book.Paragraph(new PacketTableMaker(planned, tunnel, words).Uses(upkeep.Order) + ".");
        return book.Pages();
    }

    /// <summary>As many of the weaker parts as leave the card on one page.</summary>
    private static int MostWeakerOn(Paper paper, StormCard card, CrewWords words, UnitSystem units)
    {
        for (int most = MostWeaker; most > 0; most--)
        {
            var book = new PacketBook(paper, "", words, isClose: true);
            Card(book, card, words, units, most);
            if (book.Pages().Length == 1) return most;
        }
        return 0;
    }

    private static void Card(PacketBook book, StormCard card, CrewWords words, UnitSystem units, int weaker)
    {
        book.Chapter(words.Say("Storm card"));
        book.Caution(words.Say("Caution"), string.Join(" ", card.Cautions.Select(caution => words.Fill(caution.Text))));
        if (StormWords.Roof(card, units) is { } roof)
        {
            book.Paragraph(words.Say(roof));
            book.Table(new Table("storm-snow", words.Say("Snow on the roof, where it lies deepest"),
                [new(words.Say("Snow"), 3), new(words.Say("Clear at"), 1.6, TextAlign.End), new(words.Say("At its limit"), 1.6, TextAlign.End), new(words.Say("Weighs"), 1.8, TextAlign.End)],
                [.. card.Snow.Select(snow => TableRow.Of(words.Say(snow.Kind.Words), StormWords.Depth(snow.ClearAt, units), StormWords.Depth(snow.AtLimit, units), TapeText.Of(snow.Kind.Density, units)))]));
        }
        if (!card.Gusts.IsEmpty)
        {
            book.Table(new Table("storm-gusts", words.Say("Gusts in the forecast"),
                [new(words.Say("From"), 1.1, TextAlign.End), new(words.Say("Do"), 5.4), new(words.Say("Why"), 2.6)],
                [.. card.Gusts.Select(gust => TableRow.Of(StormWords.Gust(gust.Gust, units), words.Say(gust.Does), words.Say(gust.Why)))]));
        }
        book.Heading(words.Say("Clearing snow, in this order"));
        for (int at = 0; at < card.Order.Length; at++) book.Paragraph($"{(at + 1).ToString(CultureInfo.InvariantCulture)}. {words.Say(card.Order[at].Text)}");
        if (weaker > 0 && !card.Weaker.IsEmpty) book.Heading(words.Say(StormWords.WeakerTitle)).Points(StormWords.Weaker(card, units).Take(weaker).Select(words.Say));
        if (card.Limits.NoParts is { } none) book.Paragraph(words.Say(none));
        book.Paragraph(words.Fill(StormWords.Limits));
    }

    private static Table Round(InspectionRound round, CrewWords words) => new("round-" + round.Id, words.Say(round.Title),
        [new(words.Say("Look at"), 6), new(words.Say("Day"), 1.2), new(words.Say("Name"), 1.4)],
        [.. round.Items.Select(item => TableRow.Of(words.Say(item.What), Room, Room))]);
}
