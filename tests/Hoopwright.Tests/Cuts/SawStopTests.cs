using Hoopwright.Cuts;
using Hoopwright.Quantities;

namespace Hoopwright.Tests.Cuts;

public sealed class SawStopTests
{
    [Theory]
    [InlineData("A1", "A1")]
    [InlineData("A1 A2", "A1, A2")]
    [InlineData("A1 A2 A3", "A1 to A3")]
    [InlineData("A1 A3 A4 A5 A9 B10 B11", "A1, A3 to A5, A9, B10, B11")]
    [InlineData("K8 K9 K10 K11", "K8 to K11")]
    public void Numbers_that_follow_one_another_are_drawn_together(string pieces, string words) =>
        Assert.Equal(words, new SawStop(Length.FromFeet(4), [.. pieces.Split(' ')]).Numbers);
}
