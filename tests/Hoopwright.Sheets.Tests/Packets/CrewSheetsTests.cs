using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Hoopwright.CoverSteps;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Packets;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Pdf;
using Hoopwright.Sheets.Words;
using Hoopwright.Testing;

namespace Hoopwright.Sheets.Tests.Packets;

public sealed partial class CrewSheetsTests
{
    private static readonly DateOnly Day = new(2026, 3, 1);

    [Theory]
    [MemberData(nameof(Examples))]
    public void No_English_is_left_on_the_sheets_of_a_Spanish_crew(string example)
    {
        PlannedTunnel planned = Planned(example);
        // What the plan itself says, and the names of members that are written on them, stay as they are.
        HashSet<string> own = [.. planned.Tunnel!.Members.Select(member => member.Id), .. planned.Cuts!.Sheets.SelectMany(sheet => sheet.Bars).SelectMany(bar => bar.Pieces).Select(piece => piece.MemberId), planned.Plan.Name!];
        string[] english = [.. EnglishOnly().Split(' ')];
        // The table that says what the English words in the marks mean.
        HashSet<string> marks = [.. MarkWords(planned)];
        foreach (PdfSheet page in CrewSheets.Pages(planned, Paper.Letter, Day, "es"))
        {
            foreach (string text in page.Page.Marks.OfType<TextMark>().Select(mark => mark.Text).Where(text => !marks.Contains(text)))
            {
                string left = own.OrderByDescending(each => each.Length).Aggregate(text, (rest, each) => rest.Replace(each, "", StringComparison.Ordinal));
                Assert.DoesNotContain(Word().Matches(left).Select(match => match.Value.ToLowerInvariant()), word => english.Contains(word));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void No_text_of_a_Spanish_drawing_says_what_the_English_one_says(string example)
    {
        PlannedTunnel planned = Planned(example);
        ImmutableArray<PdfSheet> english = Drawings("en"), spanish = Drawings("es");
        Assert.Equal(english.Length, spanish.Length);
        string[] shown = [.. english.Select(page => page.Bookmark!)];
        foreach (string wanted in (string[])["Set-out", "Details at the ground", "Details of a side", "Details of film and doors"]) Assert.Contains(wanted, shown);
        foreach ((PdfSheet one, PdfSheet other) in english.Zip(spanish))
        {
            HashSet<string> said = [.. Texts(one)];
            // Sizes in inches and the tunnel's name are alike in both.
            Assert.DoesNotContain(Texts(other), text => text != planned.Plan.Name && Word().Matches(text).Any(word => word.Length > 2) && said.Contains(text));
            Assert.NotEqual(one.Page.Description, other.Page.Description);
        }

        ImmutableArray<PdfSheet> Drawings(string language) => [.. CrewSheets.Pages(planned, Paper.Letter, Day, language).Where(page => page.Label is not null)];
        static IEnumerable<string> Texts(PdfSheet page) => page.Page.Marks.OfType<TextMark>().Select(mark => mark.Text);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void No_text_of_the_drawings_meets_another_or_leaves_its_sheet_in_Spanish(string example)
    {
        foreach (Paper paper in new[] { Paper.Letter, Paper.A4 })
        {
            foreach (PdfSheet page in CrewSheets.Pages(Planned(example), paper, Day, "es").Where(page => page.Page.WidthMm > page.Page.HeightMm))
                Assert.Empty(Collisions.In(page.Page));
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_letter_of_the_sheets_is_in_the_face(string example) => Assert.All(
        CrewSheets.Pages(Planned(example), Paper.Letter, Day, "es").SelectMany(page => page.Page.Marks.OfType<TextMark>()), text => Assert.True(Typeface.Of(text.Weight).Has(text.Text), text.Text));

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_item_and_place_of_the_results_is_known_in_Spanish(string example)
    {
        PlannedTunnel planned = Planned(example);
        CrewWords words = CrewWords.Of("es");
        IEnumerable<string> read =
        [
            .. planned.Takeoff!.Lines.Select(line => line.Item), .. planned.Cuts!.Sheets.SelectMany(sheet => (string[])[sheet.Item, sheet.Size, sheet.Proof]),
            .. planned.Cuts.Sheets.SelectMany(sheet => sheet.Bars).SelectMany(bar => bar.Pieces).Select(piece => piece.Place),
            .. planned.Cover!.Pieces.Select(piece => piece.Place), .. planned.Cover.Pieces.SelectMany(piece => piece.AlongParts).Select(part => part.Name), .. planned.Cover.Runs.Select(run => run.Place),
            .. MarkWords(planned).Select(word => word + " in a mark"),
            .. planned.Film!.Rolls.SelectMany(roll => roll.Levels).SelectMany(level => level.Pieces).Select(piece => piece.Label), .. planned.Tunnel!.Ends.SelectMany(end => end.Doors).Select(door => door.Id),
        ];
        Assert.DoesNotContain(read.Distinct(), text => !words.Knows(text));
    }

    public static TheoryData<string> Covers { get; } =
    [
        "\"cover\": { \"layers\": 2 }",
        "\"cover\": { \"layers\": 2, \"inflated\": false, \"endsOnBow\": false, \"order\": \"roofFirst\" }",
        "\"cover\": { \"endsOnBow\": false }, \"crew\": { \"people\": 3 }, \"site\": { \"frontFaces\": \"S\" }, \"coverDay\": { \"windFrom\": \"W\" }",
        "\"sides\": { \"left\": { \"kind\": \"drop\", \"hipHeight\": \"4 ft\" }, \"right\": { \"kind\": \"rollUp\", \"hipHeight\": \"4 ft\" } }, \"site\": { \"fallAcross\": \"3 %\" }",
        "\"ends\": { \"front\": { \"closing\": \"roofSheet\" }, \"back\": { \"closing\": \"open\" } }, \"loads\": { \"installTemperature\": \"100 °F\" }",
        "\"loads\": { \"installTemperature\": \"5 °F\" }",
    ];

    [Theory]
    [MemberData(nameof(Covers))]
    public void Every_sentence_of_putting_the_film_on_is_known_in_Spanish_and_its_drawings_are_clear(string rest)
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Simple(rest: rest));
        CrewWords words = CrewWords.Of("es");
        FasteningPlan plan = planned.Fastening!;
        Phrase[] phrases = [.. plan.Steps.SelectMany(step => step.Does.Concat(step.Good).Append(step.Title)), .. plan.CrewRules.Select(rule => rule.Says), .. plan.Stands.Select(stand => stand.Does), plan.RollSide.Why, .. plan.WithFewer is { } fewer ? (Phrase[])[fewer] : []];
        Assert.DoesNotContain(phrases, phrase => !words.Knows(phrase.Pattern));
        // Values are measures and numbers, or names that have a Spanish one.
        Assert.DoesNotContain(phrases.SelectMany(phrase => phrase.Values).Where(value => Word().Matches(value).Any(word => word.Value.Length > 3)), value => !words.Knows(value));
        Assert.DoesNotContain(plan.Steps.SelectMany(step => step.Materials), line => !words.Knows(line.Item));
        Assert.DoesNotContain(planned.Cover!.Pieces.SelectMany(piece => piece.AlongParts), part => !words.Knows(part.Name));
        Assert.All(planned.Takeoff!.Lines, line => Assert.DoesNotMatch(EnglishSize(), words.Say(line.Size)));
        Assert.DoesNotContain(Enum.GetValues<UnitSystem>().SelectMany(units => StepCaution.All(units)), caution => !words.Knows(caution.Text) || !words.Knows(caution.Id));
        foreach (Paper paper in new[] { Paper.Letter, Paper.A4 })
        {
            foreach (PdfSheet page in CrewSheets.Pages(planned, paper, Day, "es").Concat(PacketWriter.Pages(planned, paper, Day)))
                Assert.True(Collisions.In(page.Page).IsEmpty, $"{page.Bookmark}\n{string.Join("\n", Collisions.In(page.Page))}");
        }
    }

    [Fact]
    public void A_caution_stands_in_full_once_before_the_first_step_that_bears_it()
    {
        string[] texts = [.. CrewSheets.Pages(Planned("gothic-26ft"), Paper.Letter, Day, "en").SelectMany(page => page.Page.Marks.OfType<TextMark>()).Select(mark => mark.Text)];
        foreach (string id in (string[])["wind", "ladder", "knife", "lines", "lift", "spring"]) Assert.Single(texts, text => text == $"Caution: {id}");
        Assert.True(Array.IndexOf(texts, "Caution: knife") > Array.IndexOf(texts, "Caution: ladder"));
        Assert.Contains(texts, text => text.StartsWith("Mind again:", StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_sheets_can_be_had_in_English_and_the_file_says_which_language_it_is()
    {
        PlannedTunnel planned = Planned("round-14ft");
        PacketFile english = CrewSheets.Write(planned, Paper.Letter, Day, "en"), spanish = CrewSheets.Write(planned, Paper.Letter, Day, "es");
        Assert.Equal(("crew-en.pdf", "crew-es.pdf"), (english.Name, spanish.Name));
        using UglyToad.PdfPig.PdfDocument read = UglyToad.PdfPig.PdfDocument.Open([.. spanish.Bytes]);
        Assert.Contains("Listas de corte", string.Concat(read.GetPages().Select(page => page.Text)), StringComparison.Ordinal);
        Assert.Contains("crew-es.pdf", PacketWriter.Write(planned, Paper.Letter, Day, choice: new PacketChoice { Crew = "es" }).Select(file => file.Name));
        Assert.DoesNotContain(PacketWriter.Write(planned, Paper.Letter, Day), file => file.Name.StartsWith("crew", StringComparison.Ordinal));
    }

    [Fact]
    public void Numbers_keep_their_places()
    {
        CrewWords words = CrewWords.Of("es");
        Assert.Equal("frente, a 4' 4-7/8\" del hilo izquierdo", words.Say("front end, 4' 4-7/8\" from the left string"));
        Assert.Equal("1.315 x 0.065 in", words.Say("1.315 x 0.065 in"));
        Assert.Equal("a lo más 1.8 % sobre el menor costo posible, con uniones elegidas entre 78 maneras", words.Say("at most 1.8 % over the least possible cost for the joints chosen from 78 ways"));
    }

    private static IEnumerable<string> MarkWords(PlannedTunnel planned) => planned.Tunnel!.Members.SelectMany(member => Word().Matches(member.Id)).Select(match => match.Value).Distinct();

    public static TheoryData<string> Examples() => [.. SamplePlans.GoodExamples];

    private static PlannedTunnel Planned(string example) => TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes(example)));

    // Words of the packet that are no words of Spanish.
    private static string EnglishOnly() =>
        "the and of from left right front back end side post posts bow bows cut keep roll film piece pieces board door leaf hole deep wide mark marks bar saw stop length with over under above below between ground string strings sheet tube made wood yes out hinged swings least cost ways chosen possible proven layer inside check across along both alike falls " +
        "brace lock channel curtain staple nail layers sheds water leg stands wire screw screws bolts apart hip pack hard away beside lowest middle seen large foot baseboard batten pair makers details detail treated galvanized";

    [GeneratedRegex(@"\b(for|bag|heavy|strap|treated|galvanized|with|washer)\b")]
    private static partial Regex EnglishSize();

    [GeneratedRegex(@"\p{L}{2,}")]
    private static partial Regex Word();
}
