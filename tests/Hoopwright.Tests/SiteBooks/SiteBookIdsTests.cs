using CsCheck;
using Hoopwright.SiteBooks;

namespace Hoopwright.Tests.SiteBooks;

public sealed class SiteBookIdsTests
{
    private static readonly DateTimeOffset Morning = new(2026, 4, 1, 8, 15, 0, TimeSpan.FromHours(-5));

    [Fact]
    public void An_identity_says_its_time_in_universal_time()
    {
        string id = SiteBookIds.Next(Morning, 0x1234567);
        Assert.StartsWith("20260401T131500000Z-", id, StringComparison.Ordinal);
        Assert.Equal(Morning, SiteBookIds.TimeOf(id));
    }

    [Theory]
    [InlineData("20260401T131500", true)]
    [InlineData("20260401T1315-a", true)]
    [InlineData("a note", false)]
    [InlineData("", false)]
    public void Older_forms_say_their_time_and_others_none(string id, bool says) => Assert.Equal(says ? Morning : null, SiteBookIds.TimeOf(id));

    [Fact]
    public void Each_sorts_after_the_last_whatever_the_clock_says() => Gen.Select(Gen.Int[-100_000, 100_000], Gen.Long).Array[2, 20].Sample(draws =>
    {
        string? last = null;
        foreach ((int seconds, long drawn) in draws)
        {
            string id = SiteBookIds.Next(Morning.AddSeconds(seconds), drawn, last);
            Assert.True(string.CompareOrdinal(last, id) < 0, $"{last} is not before {id}");
            last = id;
        }
    });

    [Fact]
    public void Within_one_millisecond_the_second_is_a_millisecond_later() =>
        Assert.Equal(Morning.AddMilliseconds(1), SiteBookIds.TimeOf(SiteBookIds.Next(Morning, 31, SiteBookIds.Next(Morning, 1))));

    [Fact]
    public void It_sorts_after_an_identity_of_another_form() => Assert.True(string.CompareOrdinal("post 3", SiteBookIds.Next(Morning, 5, "post 3")) < 0);
}
