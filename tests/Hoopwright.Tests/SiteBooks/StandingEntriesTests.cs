using Hoopwright.Plans;
using Hoopwright.SiteBooks;

namespace Hoopwright.Tests.SiteBooks;

public sealed class StandingEntriesTests
{
    [Fact]
    public void A_correction_gives_an_earlier_entry_another_value()
    {
        StandingEntry standing = Assert.Single(StandingEntries.Of(Book(Entry("1", "26 ft"), Correction("2", "1", "26' 1\""))));
        Assert.Equal("26' 1\"", standing.Entry.Value);
        Assert.Equal("26 ft", standing.AsWritten.Value);
        Assert.Equal("2", Assert.Single(standing.Corrections).Id);
        Assert.False(standing.IsTakenBack);
    }

    [Fact]
    public void A_correction_without_a_value_takes_it_back_and_a_later_one_gives_it_again()
    {
        SiteBookEntry first = Entry("1", "26 ft"), back = Correction("2", "1", null), again = Correction("3", "2", "25 ft");
        Assert.True(Assert.Single(StandingEntries.Of(Book(first, back))).IsTakenBack);
        StandingEntry standing = Assert.Single(StandingEntries.Of(Book(first, back, again)));
        Assert.Equal((false, "25 ft"), (standing.IsTakenBack, standing.Entry.Value));
    }

    [Fact]
    public void The_order_in_the_file_does_not_matter() => Assert.Equal(
        StandingEntries.Of(Book(Entry("1", "a"), Entry("2", "b"), Correction("3", "1", "c"))).Select(each => each.Entry.Value),
        StandingEntries.Of(Book(Correction("3", "1", "c"), Entry("2", "b"), Entry("1", "a"))).Select(each => each.Entry.Value));

    [Theory]
    [InlineData("9")]
    [InlineData("4")]
    [InlineData(null)]
    public void A_correction_of_nothing_itself_or_a_later_entry_corrects_nothing(string? corrected)
    {
        StandingEntry standing = Assert.Single(StandingEntries.Of(Book(Entry("5", "a"), Correction("4", corrected, "b"))));
        Assert.Equal("a", standing.Entry.Value);
        Assert.Equal("a", Assert.Single(StandingEntries.Of(Book(Entry("5", "a"), Correction("4", "5", "b")))).Entry.Value);
    }

    private static Plan Book(params SiteBookEntry[] entries) => new() { SiteBook = [.. entries] };

    private static SiteBookEntry Entry(string id, string value) => new() { Id = id, Kind = SiteBookKind.Measurement, Of = "frame.span", Value = value };

    private static SiteBookEntry Correction(string id, string? corrects, string? value) => new() { Id = id, Kind = SiteBookKind.Correction, Corrects = corrects, Value = value };
}
