using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Hoopwright.BuildSteps;
using Hoopwright.CoverSteps;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Sheets.Words;
using Hoopwright.Testing;

namespace Hoopwright.Sheets.Tests.Packets;

/// <summary>A card for each step, in English and Spanish.</summary>
public sealed partial class StepCardsTests
{
    private const string Framed = "\"ends\": { \"front\": { \"closing\": \"framed\", \"doors\": [ { \"kind\": \"double\", \"width\": \"8 ft\", \"height\": \"7 ft\", \"ventHeight\": \"12 in\" } ] } }";
    private static readonly DateOnly Day = new(2026, 3, 1);

    public static TheoryData<string> Rests { get; } =
    [
        Framed,
        Framed + ", \"cover\": { \"order\": \"roofFirst\", \"layers\": 2 }, \"site\": { \"wind\": \"100 mph\", \"frostDepth\": \"30 in\" }",
        Framed + ", \"ground\": { \"anchor\": \"boards\" }",
        Framed + ", \"ground\": { \"postConcrete\": \"all\" }, \"sides\": { \"left\": { \"kind\": \"drop\", \"hipHeight\": \"4 ft\" }, \"right\": { \"kind\": \"rollUp\", \"hipHeight\": \"4 ft\" } }",
        "\"ends\": { \"front\": { \"closing\": \"framed\", \"postTop\": \"bracket\", \"doors\": [ { \"kind\": \"sliding\", \"width\": \"4 ft\", \"leafCover\": \"sheet\" } ] }, \"back\": { \"closing\": \"framed\", \"doors\": [ { \"kind\": \"overhead\", \"width\": \"8 ft\" } ] } }",
        "\"ends\": { \"front\": { \"closing\": \"roofSheet\" }, \"back\": { \"closing\": \"open\" } }, \"sides\": { \"left\": { \"kind\": \"fixed\" } }",
    ];

    [Theory]
    [MemberData(nameof(Rests))]
    public void Every_sentence_of_the_cards_is_known_in_Spanish(string rest)
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Simple(frame: "\"tie\": { \"height\": \"8 ft\" }", rest: rest));
        CrewWords words = CrewWords.Of("es");
        var unknown = new SortedSet<string>(StringComparer.Ordinal);
        foreach (BuildStep step in planned.Steps!.Steps.Concat(planned.RecoverSteps!.Steps))
        {
            Phrase[] phrases = [step.Title, step.Purpose, step.Overnight, .. step.Parts.SelectMany(part => part.Does), .. step.Parts.Select(part => part.Title).OfType<Phrase>(), .. step.Good, .. step.Hold is { } hold ? (Phrase[])[hold] : [], .. StepCards.Weather(step.Weather, planned.Units)];
            foreach (Phrase phrase in phrases.Where(phrase => !words.Knows(phrase.Pattern))) unknown.Add(phrase.Pattern);
            // Values are measures and numbers, or names that have a Spanish one.
            foreach (string value in phrases.SelectMany(phrase => phrase.Values).Where(value => Word().Matches(value).Any(word => word.Value.Length > 3) && !words.Knows(value))) unknown.Add(value);
            foreach (string name in step.Tools.Select(tool => tool.Name).Concat(step.Drawings.Select(drawing => drawing.Replace('-', ' '))).Concat(step.Materials.Select(line => line.Item)).Where(name => !words.Knows(name))) unknown.Add(name);
            foreach (StepCaution caution in step.Cautions)
            {
                if (!words.Knows(caution.Text)) unknown.Add(caution.Text);
                if (!words.Knows(caution.Id)) unknown.Add(caution.Id);
            }
        }
        Assert.True(unknown.Count == 0, string.Join("\n", unknown));
    }

    [Theory]
    [MemberData(nameof(Rests))]
    public void No_text_meets_another_and_every_letter_is_in_the_face(string rest)
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Simple(frame: "\"tie\": { \"height\": \"8 ft\" }", rest: rest));
        foreach (string language in CrewWords.Languages)
        {
            foreach (Paper paper in new[] { Paper.Letter, Paper.A4 })
            {
                foreach (PdfSheet page in StepCards.Pages(planned, paper, Day, language).Concat(StepCards.Pages(planned, paper, Day, language, BuildJob.Recover)))
                {
                    Assert.True(Collisions.In(page.Page).IsEmpty, $"{page.Bookmark}\n{string.Join("\n", Collisions.In(page.Page))}");
                    Assert.All(page.Page.Marks.OfType<TextMark>(), text => Assert.True(Typeface.Of(text.Weight).Has(text.Text), text.Text));
                    Assert.Equal((paper.Half.ShortMm, paper.Half.LongMm), (page.Page.WidthMm, page.Page.HeightMm));
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Rests))]
    public void Every_drawing_that_a_step_names_is_in_the_packet(string rest)
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Simple(frame: "\"tie\": { \"height\": \"8 ft\" }", rest: rest));
        ImmutableArray<string> drawn = [.. TunnelFigures.Offers(planned, new FigureSheet(260, 190, "Tunnel", "2026-03-01", planned.Units)).Select(offer => offer.Name)];
        Assert.DoesNotContain(planned.Steps!.Steps.Concat(planned.RecoverSteps!.Steps).SelectMany(step => step.Drawings).Distinct(), name => !drawn.Any(each => each.StartsWith(name, StringComparison.Ordinal)));
    }

    [Fact]
    public void There_is_a_card_for_each_step_and_the_packet_has_them_in_the_language_of_the_crew()
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Example("round-14ft"));
        Assert.Equal(planned.Steps!.Steps.Length, StepCards.Pages(planned, Paper.Letter, Day, "en").Count(page => page.Bookmark is not null));
        string[] files = [.. PacketWriter.Write(planned, Paper.Letter, Day, choice: new PacketChoice { Crew = "es" }).Select(file => file.Name)];
        Assert.Contains("cards.pdf", files);
        Assert.Contains("cards-es.pdf", files);
        using UglyToad.PdfPig.PdfDocument read = UglyToad.PdfPig.PdfDocument.Open([.. StepCards.Write(planned, Paper.Letter, Day, "es").Bytes]);
        string text = string.Concat(read.GetPages().Select(page => page.Text));
        Assert.Contains("Levantar los arcos", text, StringComparison.Ordinal);
        Assert.Contains("Firme antes de seguir", text, StringComparison.Ordinal);
    }

    [GeneratedRegex("[A-Za-z]+")]
    private static partial Regex Word();
}
