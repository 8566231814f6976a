using System.Collections.Immutable;
using System.Text;
using System.Text.Json.Nodes;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.SiteBooks;
using Hoopwright.Testing;

namespace Hoopwright.Tests.SiteBooks;

// The laws of a join semilattice, by which copies converge whatever the order: Shapiro, Preguiça, Baquero and Zawirski, Conflict-free
// Replicated Data Types, SSS 2011 (from memory).
public sealed class PlanMergeTests
{
    private const int Stories = 400;

    [Fact]
    public void It_does_not_matter_which_copy_comes_first() => ThreeDevices.Stories.Sample(story =>
    {
        ImmutableArray<byte[]> copies = ThreeDevices.Live(story).Copies;
        Same(Merge(copies[0], copies[1]), Merge(copies[1], copies[0]));
    }, iter: Stories);

    [Fact]
    public void It_does_not_matter_which_two_are_put_together_first() => ThreeDevices.Stories.Sample(story =>
    {
        ImmutableArray<byte[]> copies = ThreeDevices.Live(story).Copies;
        Same(Merge(Merge(copies[0], copies[1]), copies[2]), Merge(copies[0], Merge(copies[1], copies[2])));
    }, iter: Stories);

    [Fact]
    public void Putting_a_copy_in_again_changes_nothing() => ThreeDevices.Stories.Sample(story =>
    {
        ImmutableArray<byte[]> copies = ThreeDevices.Live(story).Copies;
        byte[] both = Merge(copies[0], copies[1]);
        Same(both, Merge(both, copies[0]));
        Same(both, Merge(copies[1], both));
        Same(both, Merge(both, both));
    }, iter: Stories);

    [Fact]
    public void No_entry_that_was_kept_is_lost_or_doubled() => ThreeDevices.Stories.Sample(story =>
    {
        ThreeDevices devices = ThreeDevices.Live(story);
        PlanReading reading = PlanReader.Read(Merge(Merge(devices.Copies[0], devices.Copies[1]), devices.Copies[2]));
        Assert.Equal(devices.Acknowledged.Order(StringComparer.Ordinal), reading.Plan.SiteBook.Select(entry => entry.Id));
        Assert.Empty(reading.Diagnostics.Where(each => each.Code is PlanCodes.SiteBookDuplicate or PlanCodes.SiteBookOrder));
    }, iter: Stories);

    [Fact]
    public void Every_field_that_waits_for_a_decision_is_told_when_the_plan_is_read() => ThreeDevices.Stories.Sample(story =>
    {
        ImmutableArray<byte[]> copies = ThreeDevices.Live(story).Copies;
        byte[] both = Merge(copies[0], copies[2]);
        IEnumerable<string> undecided = PlanMerge.Undecided(both).Select(field => field.Path), told = PlanReader.Read(both).Diagnostics.Where(each => each.Code == PlanCodes.Undecided).Select(each => each.Message);
        Assert.Equal(undecided.Count(), told.Count());
        Assert.All(undecided, path => Assert.Contains(told, message => message.Contains($"different things of {path}:", StringComparison.Ordinal)));
    }, iter: Stories);

    [Fact]
    public void What_was_written_knowing_of_the_other_stands_without_a_question()
    {
        byte[] old = Plan("""{ "hoopwright": "1.0", "frame": { "span": "26 ft" } }""");
        byte[] edited = PlanEdits.Record(old, Plan("""{ "hoopwright": "1.0", "frame": { "span": "30 ft" } }"""), Author(1))!;
        MergedPlan merged = PlanMerge.Merge(edited, old);
        Assert.Empty(merged.Undecided);
        Assert.Equal("30 ft", PlanReader.Read(merged.Document).Plan.Frame.Span?.Text);
    }

    [Fact]
    public void Two_edits_that_knew_nothing_of_each_other_stand_side_by_side_until_somebody_decides()
    {
        byte[] old = Plan("""{ "hoopwright": "1.0", "frame": { "span": "26 ft" } }""");
        byte[] wider = PlanEdits.Record(old, Plan("""{ "hoopwright": "1.0", "frame": { "span": "30 ft" } }"""), Author(1))!;
        byte[] narrower = PlanEdits.Record(old, Plan("""{ "hoopwright": "1.0", "frame": { "span": "20 ft" } }"""), Author(2))!;
        MergedPlan merged = PlanMerge.Merge(wider, narrower);
        UndecidedField span = Assert.Single(merged.Undecided);
        Assert.Equal("frame.span", span.Path);
        Assert.Equal([new("\"20 ft\"", "person 2", "phone 2"), new("\"30 ft\"", "person 1", "phone 1")], span.Said);
        Diagnostic told = Assert.Single(PlanReader.Read(merged.Document).Diagnostics, each => each.Code == PlanCodes.Undecided);
        Assert.Equal(Severity.Warning, told.Severity);

        byte[] decided = PlanEdits.Decide(merged.Document, "frame.span", "\"30 ft\"", Author(3))!;
        MergedPlan again = PlanMerge.Merge(decided, narrower);
        Assert.Empty(again.Undecided);
        Assert.Equal("30 ft", PlanReader.Read(again.Document).Plan.Frame.Span?.Text);
    }

    [Fact]
    public void Typing_another_value_into_the_file_decides_too()
    {
        MergedPlan merged = PlanMerge.Merge(Plan("""{ "hoopwright": "1.0", "name": "a" }"""), Plan("""{ "hoopwright": "1.0", "name": "b" }"""));
        Assert.Single(merged.Undecided);
        string typed = Encoding.UTF8.GetString(merged.Document.Span).Replace("\"name\": \"a\"", "\"name\": \"c\"", StringComparison.Ordinal);
        Assert.DoesNotContain(PlanReader.Read(Plan(typed)).Diagnostics, each => each.Code == PlanCodes.Undecided);
        Assert.Empty(PlanMerge.Merge(Plan(typed), merged.Document).Undecided);
    }

    [Fact]
    public void One_identity_with_two_contents_keeps_both_and_says_so()
    {
        MergedPlan merged = PlanMerge.Merge(Plan(Book("it rained")), Plan(Book("it snowed")));
        PlanReading reading = PlanReader.Read(merged.Document);
        Assert.Equal(["it rained", "it snowed"], reading.Plan.SiteBook.Select(entry => entry.Note));
        Assert.Equal(Severity.Warning, Assert.Single(reading.Diagnostics, each => each.Code == PlanCodes.SiteBookDuplicate).Severity);

        static string Book(string note) => $$"""{ "hoopwright": "1.0", "siteBook": [ { "id": "20260401T0815-a", "kind": "note", "note": "{{note}}" } ] }""";
    }

    [Theory]
    [InlineData("gothic-26ft")]
    [InlineData("round-14ft")]
    [InlineData("metric-9m")]
    public void A_plan_put_together_with_itself_says_the_same(string example)
    {
        byte[] file = SamplePlans.ExampleBytes(example);
        byte[] merged = Merge(file, file);
        Assert.Equal(Encoding.UTF8.GetString(PlanWriter.Write(PlanReader.Read(file).Plan)), Encoding.UTF8.GetString(PlanWriter.Write(PlanReader.Read(merged).Plan)));
        Assert.Null(JsonNode.Parse(merged)!["edits"]);
    }

    [Fact]
    public void A_faulty_value_goes_along_as_it_is()
    {
        byte[] merged = Merge(Plan("""{ "hoopwright": "1.0", "frame": { "span": 26, "odd": [ 1.50 ] } }"""), Plan("""{ "hoopwright": "1.0", "frame": "none" }"""));
        JsonNode plan = JsonNode.Parse(merged)!;
        Assert.Equal("26", plan["frame"]!["span"]!.ToJsonString());
        Assert.Equal("[1.50]", plan["frame"]!["odd"]!.ToJsonString());
        Assert.Contains(PlanMerge.Undecided(merged), field => field.Path == "frame" && field.Said.Any(said => said.Json == "\"none\""));
    }

    [Theory]
    [InlineData("{ \"hoopwright\": \"1.0\", ", PlanCodes.NotJson)]
    [InlineData("{ \"hoopwright\": \"9.0\" }", PlanCodes.TooNew)]
    [InlineData("", PlanCodes.Empty)]
    [InlineData("[]", PlanCodes.WrongKind)]
    public void A_copy_that_cannot_be_read_whole_is_refused(string file, string code)
    {
        MergedPlan merged = PlanMerge.Merge(Plan("""{ "hoopwright": "1.0" }"""), Plan(file));
        Assert.False(merged.IsMerged);
        Assert.Empty(merged.FirstDiagnostics);
        Assert.Contains(merged.SecondDiagnostics, each => each.Code == code);
    }

    [Fact]
    public void It_is_told_how_many_entries_were_in_both_and_how_many_only_in_one()
    {
        MergedPlan merged = PlanMerge.Merge(Plan(Book("a", "b", "c")), Plan(Book("b", "c", "d", "e")));
        Assert.Equal((2, 1, 2), (merged.EntriesAlready, merged.EntriesOfFirst, merged.EntriesOfSecond));
        Assert.Equal(5, JsonNode.Parse(merged.Document.Span)!["siteBook"]!.AsArray().Count);

        static string Book(params string[] ids) => $$"""{ "hoopwright": "1.0", "siteBook": [ {{string.Join(", ", ids.Select(id => $$"""{ "id": "20260401T0815-{{id}}", "kind": "note" }"""))}} ] }""";
    }

    [Fact]
    public void An_entry_with_its_fields_in_another_order_is_the_same_entry_and_what_is_no_entry_goes_along()
    {
        const string One = """{ "hoopwright": "1.0", "siteBook": [ { "id": "20260401T0815-a", "kind": "note", "note": "it rained" }, 5 ] }""", Other = """{ "hoopwright": "1.0", "siteBook": [ { "note": "it rained", "kind": "note", "id": "20260401T0815-a" } ] }""";
        JsonArray book = JsonNode.Parse(Merge(Plan(One), Plan(Other)))!["siteBook"]!.AsArray();
        Assert.Equal(["5", """{"id":"20260401T0815-a","kind":"note","note":"it rained"}"""], book.Select(entry => entry!.ToJsonString()));
    }

    [Theory]
    [InlineData("\"1.0\"", null, "1.0")]
    [InlineData("\"0.9\"", "\"1.0\"", "1.0")]
    [InlineData("\"1.9\"", "\"1.12\"", "1.12")]
    [InlineData("\"odd\"", "\"1.0\"", "1.0")]
    [InlineData("\"odd a\"", "\"odd b\"", "odd b")]
    public void The_later_version_of_the_format_is_kept_whichever_copy_comes_first(string one, string? other, string kept)
    {
        byte[] first = Plan($"{{ \"hoopwright\": {one} }}"), second = Plan(other is null ? """{ "name": "a" }""" : $"{{ \"hoopwright\": {other} }}");
        Assert.Equal(kept, (string?)JsonNode.Parse(Merge(first, second))!["hoopwright"]);
        Assert.Equal(kept, (string?)JsonNode.Parse(Merge(second, first))!["hoopwright"]);
    }

    [Theory]
    [InlineData(".odd")]
    [InlineData("[0]")]
    [InlineData("")]
    public void A_group_with_a_name_that_no_path_can_say_goes_along_whole(string name)
    {
        byte[] odd = Plan($$"""{ "hoopwright": "1.0", "frame": { "{{name}}": 1, "span": "26 ft" } }""");
        JsonNode plan = JsonNode.Parse(Merge(odd, odd))!;
        Assert.Equal($$"""{"{{name}}":1,"span":"26 ft"}""", plan["frame"]!.ToJsonString());
        Assert.Null(plan["siteBook"]);
    }

    [Fact]
    public void A_group_typed_empty_over_what_was_edited_decides()
    {
        byte[] edited = PlanEdits.Record(Plan("""{ "hoopwright": "1.0" }"""), Plan("""{ "hoopwright": "1.0", "frame": "none" }"""), Author(1))!;
        JsonNode typed = JsonNode.Parse(edited)!;
        typed["frame"] = new JsonObject();
        MergedPlan merged = PlanMerge.Merge(Plan(typed.ToJsonString()), edited);
        Assert.Empty(merged.Undecided);
        Assert.Equal("{}", JsonNode.Parse(merged.Document.Span)!["frame"]!.ToJsonString());
    }

    [Fact]
    public void Of_two_who_said_the_same_the_first_is_named()
    {
        byte[] old = Plan("""{ "hoopwright": "1.0" }""");
        byte[] Said(string name, int by) => PlanEdits.Record(old, Plan($$"""{ "hoopwright": "1.0", "name": "{{name}}" }"""), Author(by))!;
        UndecidedField field = Assert.Single(PlanMerge.Merge(Merge(Said("a", 1), Said("a", 2)), Said("b", 3)).Undecided);
        Assert.Equal([new("\"b\"", "person 3", "phone 3"), new("\"a\"", "person 1", "phone 1")], field.Said);
    }

    [Fact]
    public void What_an_overtaken_value_had_overtaken_is_overtaken_by_what_came_last()
    {
        PlanHead first = new("1", "a", null, null, []), second = new("2", "b", null, null, ["1"]), third = new("3", "c", null, null, ["2"]);
        PlanHead left = Assert.Single(FieldHeads.Join([second], [third]));
        Assert.Equal(("3", "1 2"), (left.Id, string.Join(' ', left.After)));
        Assert.Equal("3", Assert.Single(FieldHeads.Join([left], [first])).Id);
    }

    // Copies of one typed value made by this version of the program and by another are one value only where all of them name it alike.
    [Theory]
    [InlineData("\"a\"", "", "typed-6a06adf48d32462401c1")]
    [InlineData(null, "1", "typed-f760977bbd8a6742575f")]
    public void A_value_typed_into_a_file_has_the_same_identity_for_ever(string? value, string after, string id)
    {
        PlanHead[] edits = after.Length == 0 ? [] : [new(after, "\"x\"", null, null, [])];
        Assert.Equal(id, Assert.Single(FieldHeads.Of("name", [.. edits], value, isAround: false)).Id);
    }

    private static EditAuthor Author(int number) => new(SiteBookIds.Next(DateTimeOffset.UnixEpoch.AddHours(number), number), $"person {number}", $"phone {number}");

    private static byte[] Merge(byte[] one, byte[] other)
    {
        MergedPlan merged = PlanMerge.Merge(one, other);
        Assert.True(merged.IsMerged);
        return merged.Document.ToArray();
    }

    private static void Same(byte[] one, byte[] other) => Assert.Equal(Encoding.UTF8.GetString(one), Encoding.UTF8.GetString(other));

    private static byte[] Plan(string json) => Encoding.UTF8.GetBytes(json);
}
