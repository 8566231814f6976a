using System.Text;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;

namespace Hoopwright.Tests.Documents;

public sealed class PlanSyntaxTests
{
    private const string Minimal = "\"hoopwright\": \"1.0\", \"frame\": { \"span\": \"20 ft\", \"length\": \"48 ft\", \"bow\": { \"shape\": \"round\", \"peakHeight\": \"11 ft\" } }";

    [Theory]
    [InlineData("{\n  \"name\": \"a\n\" }", "does not end on the line", "line 2, column 13", "the end of the line")]
    [InlineData("{ \"name\": \"a\tb\" }", "holds a tab", "line 1, column 13", "\uFFFDb\" }")]
    [InlineData("\0\0", "control character", "line 1, column 1", "\uFFFD\uFFFD")]
    [InlineData("{ \"hoopwright\": \"1.0\",, }", "A comma stands", "line 1, column 23", ", }")]
    [InlineData("{ \"name\": \"26' 6\"\", \"note\": \"\" }", "inch mark", "line 1, column 18", "\", \"note\": \"\" }")]
    [InlineData("/* a plan", "never closed", "line 1, column 1", "/* a plan")]
    [InlineData("{ 'name': 1 }", "double quotes", "line 1, column 3", "'name': 1 }")]
    [InlineData("{ “name”: 1 }", "typographic", "line 1, column 3", "“name”: 1 }")]
    [InlineData("{ \"name\": \"é\" \"note\": 1 }", "Something follows a text", "line 1, column 15", "\"note\": 1 }")]
    [InlineData("{ \"name\": 1 \"note\": 1 }", "A comma or a colon is missing", "line 1, column 13", "\"note\": 1 }")]
    [InlineData("{ \"name\": \"\\q\" }", "special character", "line 1, column 13", "q\" }")]
    [InlineData("{ name: 1 }", "without quotes", "line 1, column 3", "name: 1 }")]
    [InlineData("{ \"organic\": True }", "without quotes", "line 1, column 14", "True }")]
    [InlineData("{ \"frame\": { \"span\": \"1 ft\"", "before the group opened at line 1, column 3 is closed", "line 1, column 28", "the end of the file")]
    public void A_slip_in_the_JSON_is_named_in_words_with_its_place_and_what_stands_there(string text, string words, string place, string seen)
    {
        Diagnostic found = Assert.Single(Read(text).Diagnostics, found => found.Code == PlanCodes.NotJson);
        string said = $"{found.Message} {found.Accepted}";
        Assert.Contains(words, said, StringComparison.Ordinal);
        Assert.Contains(place, found.Message, StringComparison.Ordinal);
        Assert.Equal(seen, found.Seen);
    }

    [Fact]
    public void What_stands_before_the_place_where_the_file_breaks_off_is_still_checked_and_nothing_is_called_missing()
    {
        PlanReading reading = Read("{ \"hoopwright\": \"1.0\", \"crew\": { \"people\": 0 }, \"site\": { \"wind\": \"90 mph");
        Assert.Equal([PlanCodes.OutOfRange, PlanCodes.NotJson], reading.Diagnostics.Select(found => found.Code));
    }

    [Fact]
    public void Comments_trailing_commas_and_a_byte_order_mark_are_read_over()
    {
        string text = "// first\n{ /* in\nside */ " + Minimal + ", \"stock\": [ { \"item\": \"film\", }, ], }\n// last";
        Assert.Empty(Read(text).Diagnostics);
        Assert.Empty(PlanReader.Read(new byte[] { 0xEF, 0xBB, 0xBF }.Concat(Encoding.UTF8.GetBytes(text)).ToArray()).Diagnostics);
    }

    [Fact]
    public void A_file_saved_as_UTF_16_is_named_as_such_and_checked_all_the_same()
    {
        byte[] file = [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes("{ " + Minimal + ", \"crew\": { \"people\": 0 } }")];
        Assert.Equal([PlanCodes.BadCharacter, PlanCodes.OutOfRange], PlanReader.Read(file).Diagnostics.Select(found => found.Code));
    }

    [Fact]
    public void A_byte_that_is_no_character_is_shown_with_its_place_and_the_rest_is_checked()
    {
        byte[] file = Encoding.Latin1.GetBytes("{ " + Minimal + ",\n\"name\": \"caf\u00E9\", \"crew\": { \"people\": 0 } }");
        PlanReading reading = PlanReader.Read(file);
        Assert.Equal([PlanCodes.BadCharacter, PlanCodes.OutOfRange], reading.Diagnostics.Select(found => found.Code));
        Assert.Contains("line 2, column 13", reading.Diagnostics[0].Message, StringComparison.Ordinal);
        Assert.Equal("byte E9", reading.Diagnostics[0].Seen);
    }

    [Fact]
    public void No_diagnostic_repeats_what_could_steer_a_screen()
    {
        // Escape begins a terminal's commands; the second turns the direction of writing.
        PlanReading reading = Read("{ " + Minimal + ", \"units\": \"\\u001b[2J\", \"crew\": { \"skill\": \"\\u202Etsilb\" }, \"\\u0007\": 1 }");
        Assert.Equal(3, reading.Diagnostics.Length);
        Assert.All(reading.Diagnostics, found => Assert.DoesNotContain(
            $"{found.Path}{found.Message}{found.Seen}{found.Accepted}", c => char.IsControl(c) || c == '\u202E'));
    }

    [Fact]
    public void Half_of_a_character_is_told_where_it_stands()
    {
        PlanReading reading = Read("{ " + Minimal + ", \"stock\": [ { \"item\": \"\\ud83c\" } ], \"site\": { \"\\udf31\": 1 } }");
        Assert.Equal(["stock[0].item", "site"], reading.Diagnostics.Where(found => found.Code == PlanCodes.BadCharacter).Select(found => found.Path));
    }

    [Fact]
    public void A_path_leads_back_to_its_line_and_a_field_that_is_not_there_to_its_group()
    {
        PlanReading reading = Read("{ " + Minimal + ",\n  \"ends\": { \"front\": { \"doors\": [\n    { },\n      { \"width\": \"3 ft\" } ] } } }");
        Assert.Equal(new TextPlace(4, 9), reading.PlaceOf("ends.front.doors[1].width"));
        Assert.Equal(new TextPlace(4, 7), reading.PlaceOf("ends.front.doors[1].height"));
        Assert.Equal(new TextPlace(2, 13), reading.PlaceOf("ends.front.posts[7]"));
        Assert.Null(Read("").PlaceOf("frame"));
    }

    [Fact]
    public void A_long_text_is_shown_short_and_a_huge_number_as_a_number()
    {
        PlanReading reading = Read("{ " + Minimal + ", \"units\": \"" + new string('u', 1_000_000) + "\", \"crew\": { \"people\": 1e999 } }");
        Assert.Equal([61, 5], reading.Diagnostics.Select(found => found.Seen!.Length));
    }

    private static PlanReading Read(string text) => PlanReader.Read(Encoding.UTF8.GetBytes(text));
}
