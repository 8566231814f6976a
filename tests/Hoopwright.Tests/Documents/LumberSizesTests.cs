using System.Globalization;
using System.Text;
using Hoopwright.Plans;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Documents;

public sealed class LumberSizesTests
{
    private const string Source = "National Design Specification for Wood Construction, Supplement, Table 1A (as quoted second-hand)";

    [Theory]
    [InlineData("2x4", 1.5, 3.5)]
    [InlineData("2x6", 1.5, 5.5)]
    [InlineData("4x4", 3.5, 3.5)]
    [InlineData("6x6", 5.5, 5.5)]
    public void Dry_dressed_sizes_are_the_published_ones(string nominal, double thicknessIn, double widthIn)
    {
        LumberSize size = LumberSizes.Find(nominal)!;
        Published.Check(Source, $"thickness of {nominal}, in", thicknessIn, size.Thickness.Inches, 1e-9, "exact by definition of the inch");
        Published.Check(Source, $"width of {nominal}, in", widthIn, size.Width.Inches, 1e-9, "exact by definition of the inch");
    }

    [Theory]
    [InlineData("2x6", "2x6")]
    [InlineData("2 x 6", "2x6")]
    [InlineData("2×6", "2x6")]
    [InlineData(" 6X2 ", "2x6")]
    [InlineData("2 by 6", "2x6")]
    [InlineData("1x12", "1x12")]
    [InlineData("45x145 mm", "45x145 mm")]
    [InlineData("145 × 45mm", "45x145 mm")]
    [InlineData("47.5x100 mm", "47.5x100 mm")]
    public void A_size_is_brought_to_one_way_of_writing(string typed, string name)
    {
        LumberSize? size = LumberSizes.Find(typed);
        Assert.Equal(name, size?.Name);
        Assert.Equal(size, LumberSizes.Find(name));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("2")]
    [InlineData("3x7")]
    [InlineData("5x5")]
    [InlineData("2x6 ft")]
    [InlineData("2x6x8")]
    [InlineData("-2x6")]
    [InlineData("0x0 mm")]
    [InlineData("45x1450 mm")]
    [InlineData("2,0x6")]
    public void What_is_not_sold_is_not_found(string? typed) => Assert.Null(LumberSizes.Find(typed));

    [Fact]
    public void A_nominal_size_is_never_less_than_the_wood_measures() => Assert.All(LumberSizes.Nominal, size =>
    {
        string[] nominal = size.Name.Split('x');
        Assert.True(size.Thickness.Inches < double.Parse(nominal[0], CultureInfo.InvariantCulture));
        Assert.True(size.Width.Inches < double.Parse(nominal[1], CultureInfo.InvariantCulture));
        Assert.True(size.Thickness <= size.Width);
    });

    [Theory]
    [InlineData("3x7", "2x6")]
    [InlineData("5x5", "4x4")]
    [InlineData("nothing", "2x4")]
    public void The_nearest_size_is_named(string typed, string nearest) => Assert.Equal(nearest, LumberSizes.Nearest(typed).Name);

    [Theory]
    [InlineData("3x7", "2x6, or an actual size such as 45x145 mm")]
    [InlineData("50x148", "50x148 mm")]
    public void A_size_that_is_not_sold_is_answered_with_the_nearest_or_with_the_unit_that_was_left_out(string typed, string accepted)
    {
        PlanReading reading = PlanReader.Read(Encoding.UTF8.GetBytes(
            "{ \"hoopwright\": \"1.0\", \"frame\": { \"span\": \"20 ft\", \"length\": \"48 ft\", \"bow\": { \"shape\": \"round\", \"peakHeight\": \"11 ft\" } }, "
            + "\"ground\": { \"baseboard\": { \"size\": \"" + typed + "\" } } }"));
        Assert.Equal(accepted, Assert.Single(reading.Diagnostics).Accepted);
    }
}
