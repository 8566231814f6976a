using Hoopwright.Layout;
using Hoopwright.Takeoff;
using Hoopwright.Testing;
using Hoopwright.Tests.Orders;

namespace Hoopwright.Tests.Takeoff;

public class EveryMemberTests
{
    public static TheoryData<string> Examples => [.. SamplePlans.GoodExamples];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_member_is_made_from_exactly_one_line(string example)
    {
        WholeOrder all = WholeOrder.OfExample(example);
        foreach (Member member in all.Tunnel.Members)
        {
            MaterialLine line = Assert.Single(all.Takeoff.Lines, line => line.Unit == MaterialUnit.CutLengths && line.TraceIds.Contains(member.Id));
            Assert.Single(line.Pieces, piece => piece.MemberId == member.Id);
            Assert.Equal(line, all.Takeoff.MadeFrom(member.Id));
            Assert.Equal((member.Section.Item, member.Section.Size), (line.Item, line.Size));
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_line_says_by_which_rule_and_source_and_for_what(string example)
    {
        foreach (MaterialLine line in WholeOrder.OfExample(example).Takeoff.Lines)
        {
            Assert.True(line.Quantity > 0, line.Id);
            Assert.Equal(line.Quantity, line.Parts.Sum(part => part.Quantity));
            Assert.All(line.Parts, part => Assert.True(part.Rule.Length > 0 && part.Source.Title.Length > 0 && !part.TraceIds.IsEmpty, line.Id));
            Assert.Equal(line.TraceIds.Order(), line.Parts.SelectMany(part => part.TraceIds).Distinct().Order());
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Lines_stand_by_stage_then_item_then_size_and_have_names_of_their_own(string example)
    {
        TakeoffList takeoff = WholeOrder.OfExample(example).Takeoff;
        Assert.Equal(takeoff.Lines.Length, takeoff.Lines.Select(line => line.Id).Distinct().Count());
        Assert.Equal(
            takeoff.Lines.OrderBy(line => line.Stage).ThenBy(line => line.Item, StringComparer.Ordinal).ThenBy(line => line.Size, StringComparer.Ordinal).Select(line => line.Id),
            takeoff.Lines.Select(line => line.Id));
    }
}
