using System.Collections.Immutable;
using System.Text;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;

namespace Hoopwright.Tests.Documents;

public sealed class PlanReaderTests
{
    private const string Frame = "\"frame\": { \"span\": \"20 ft\", \"length\": \"48 ft\", \"bow\": { \"shape\": \"round\", \"sideHeight\": \"4 ft\", \"peakHeight\": \"11 ft\" } }";

    [Theory]
    [InlineData(PlanCodes.UnitMissing, "site.frostDepth", "\"site\": { \"frostDepth\": 30 }")]
    [InlineData(PlanCodes.UnitMissing, "site.frostDepth", "\"site\": { \"frostDepth\": \"30\" }")]
    [InlineData(PlanCodes.CommaInNumber, "site.frostDepth", "\"site\": { \"frostDepth\": \"1,2 m\" }")]
    [InlineData(PlanCodes.CommaInNumber, "site.frostDepth", "\"site\": { \"frostDepth\": \"1,200 mm\" }")]
    [InlineData(PlanCodes.Unreadable, "site.frostDepth", "\"site\": { \"frostDepth\": \"3 cubits\" }")]
    [InlineData(PlanCodes.OutOfRange, "site.frostDepth", "\"site\": { \"frostDepth\": \"90 ft\" }")]
    [InlineData(PlanCodes.WrongKind, "site.frostDepth", "\"site\": { \"frostDepth\": [] }")]
    [InlineData(PlanCodes.WrongKind, "site.organic", "\"site\": { \"organic\": \"yes\" }")]
    [InlineData(PlanCodes.UnknownField, "site.frostDeep", "\"site\": { \"frostDeep\": \"30 in\" }")]
    [InlineData(PlanCodes.DuplicateField, "site.soil", "\"site\": { \"soil\": \"loam\", \"soil\": \"clay\" }")]
    [InlineData(PlanCodes.UnknownWord, "ground.anchor", "\"ground\": { \"anchor\": \"post\" }")]
    [InlineData(PlanCodes.UnknownLumber, "ground.baseboard.size", "\"ground\": { \"baseboard\": { \"size\": \"3x7\" } }")]
    [InlineData(PlanCodes.NotWhole, "crew.people", "\"crew\": { \"people\": 2.5 }")]
    [InlineData(PlanCodes.BadDate, "build.start", "\"build\": { \"start\": \"2026-02-30\" }")]
    [InlineData(PlanCodes.BadClock, "build.begins", "\"build\": { \"begins\": \"24:00\" }")]
    [InlineData(PlanCodes.WrongKind, "build.begins", "\"build\": { \"begins\": 8 }")]
    [InlineData(PlanCodes.OutOfRange, "crew.people", "\"crew\": { \"people\": 0 }")]
    [InlineData(PlanCodes.EmptyText, "stock[0].item", "\"stock\": [ { \"item\": \"\" } ]")]
    [InlineData(PlanCodes.Missing, "stock[0].item", "\"stock\": [ { \"size\": \"2x6\" } ]")]
    [InlineData(PlanCodes.SiteBookDuplicate, "siteBook[1].id", "\"siteBook\": [ { \"id\": \"a\", \"kind\": \"note\" }, { \"id\": \"a\", \"kind\": \"note\" } ]")]
    [InlineData(PlanCodes.SiteBookOrder, "siteBook[1].id", "\"siteBook\": [ { \"id\": \"b\", \"kind\": \"note\" }, { \"id\": \"a\", \"kind\": \"note\" } ]")]
    public void A_faulty_field_is_named_with_its_code_and_place(string code, string path, string field)
    {
        PlanReading reading = Read("{ \"hoopwright\": \"1.0\", " + Frame + ", " + field + " }");
        Assert.Contains(reading.Diagnostics, found => found.Code == code && found.Path == path);
    }

    [Theory]
    [InlineData(PlanCodes.Empty, "")]
    [InlineData(PlanCodes.NotJson, "{ \"hoopwright\": \"1.0\",\n  \"site\" { } }")]
    [InlineData(PlanCodes.NotJson, "{ \"hoopwright\": \"1.0\"")]
    [InlineData(PlanCodes.WrongKind, "[]")]
    [InlineData(PlanCodes.BadVersion, "{ \"hoopwright\": \"one\" }")]
    [InlineData(PlanCodes.TooNew, "{ \"hoopwright\": \"2.0\", \"anything\": 1 }")]
    [InlineData(PlanCodes.Missing, "{ \"hoopwright\": \"1.0\" }")]
    [InlineData(PlanCodes.BadCharacter, "{ \"name\": \"\\ud800\" }")]
    public void A_faulty_document_is_refused_with_its_code(string code, string text)
    {
        PlanReading reading = Read(text);
        Assert.Contains(reading.Diagnostics, found => found.Code == code);
        Assert.False(reading.IsUsable);
    }

    [Fact]
    public void Depth_and_size_beyond_reason_and_bytes_that_are_no_text_are_refused()
    {
        Assert.Contains(Read("{ \"a\": " + new string('[', 50) + new string(']', 50) + " }").Diagnostics, found => found.Code == PlanCodes.TooDeep);
        Assert.Contains(PlanReader.Read(new byte[33 * 1024 * 1024]).Diagnostics, found => found.Code == PlanCodes.TooLarge);
        Assert.Contains(PlanReader.Read(new byte[] { (byte)'{', (byte)'"', 0xFF, (byte)'"', (byte)':', (byte)'1', (byte)'}' }).Diagnostics, found => found.Code == PlanCodes.BadCharacter);
    }

    [Fact]
    public void What_is_not_JSON_says_line_and_column()
    {
        Diagnostic found = Assert.Single(Read("{\n  \"hoopwright\": \"1.0\",\n  \"site\" { }\n}").Diagnostics, found => found.Code == PlanCodes.NotJson);
        Assert.Contains("line 3", found.Message, StringComparison.Ordinal);
        Assert.Contains("column 10", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bare_number_is_asked_for_its_unit_and_shown_with_one()
    {
        Diagnostic found = Assert.Single(Read("{ \"hoopwright\": \"1.0\", " + Frame + ", \"site\": { \"frostDepth\": 30 } }").Diagnostics);
        Assert.Contains("no unit", found.Message, StringComparison.Ordinal);
        Assert.Contains("30 in", found.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_field_or_word_is_answered_with_the_nearest_known()
    {
        ImmutableArray<Diagnostic> found = Read("{ \"hoopwright\": \"1.0\", " + Frame + ", \"ground\": { \"postEmbedmnt\": \"30 in\", \"anchor\": \"bords\" } }").Diagnostics;
        Assert.Contains("postEmbedment", found[0].Accepted, StringComparison.Ordinal);
        Assert.Contains("boards", found[1].Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_wrong_is_told_in_one_pass_in_the_order_of_the_file()
    {
        PlanReading reading = Read("""
            {
              "hoopwright": "1.0",
              "crew": { "people": 0 },
              "site": { "wind": 100, "soil": 7 },
              "frame": { "span": "20", "length": "48 ft", "bow": { "shape": "oval", "peakHeight": "11 ft" } },
              "wrong": 1
            }
            """);
        Assert.Equal(
            ["crew.people", "site.wind", "site.soil", "frame.span", "frame.bow.shape", "wrong"],
            reading.Diagnostics.Select(found => found.Path));
    }

    [Fact]
    public void A_newer_major_version_is_left_as_it_is()
    {
        PlanReading reading = Read("{ \"hoopwright\": \"2.0\", \"frame\": 7 }");
        Assert.True(reading.TooNew);
        Diagnostic found = Assert.Single(reading.Diagnostics);
        Assert.Equal(PlanCodes.TooNew, found.Code);
        Assert.Contains("left as it is", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_newer_minor_version_keeps_its_unknown_fields_through_a_round_trip()
    {
        PlanReading reading = Read("{ \"hoopwright\": \"1.9\", " + Frame + ", \"site\": { \"moonlight\": { \"much\": [1, 2.50, \"x\"] } } }");
        Assert.Empty(reading.Diagnostics);
        string written = Encoding.UTF8.GetString(PlanWriter.Write(reading.Plan));
        Assert.Contains("\"1.9\"", written, StringComparison.Ordinal);
        Assert.Contains("moonlight", written, StringComparison.Ordinal);
        Assert.Contains("2.50", written, StringComparison.Ordinal);
        Assert.Equal(written, Encoding.UTF8.GetString(PlanWriter.Write(Read(written).Plan)));
    }

    private static PlanReading Read(string text) => PlanReader.Read(Encoding.UTF8.GetBytes(text));
}
