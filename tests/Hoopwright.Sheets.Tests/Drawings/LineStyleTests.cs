using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Tests.Drawings;

public sealed class LineStyleTests
{
    // The widths are those of the series of ISO 128-2:2020 (0.13, 0.18, 0.25, 0.35, 0.5 mm), from memory.
    [Theory]
    [InlineData(LineRole.Cut, 0.50, false)]
    [InlineData(LineRole.Outline, 0.35, false)]
    [InlineData(LineRole.Hidden, 0.18, true)]
    [InlineData(LineRole.Dimension, 0.18, false)]
    [InlineData(LineRole.Centre, 0.13, true)]
    [InlineData(LineRole.Texture, 0.13, false)]
    public void Each_role_has_its_weight(LineRole role, double weightMm, bool isDashed)
    {
        Assert.Equal(weightMm, LineStyle.Of(role).WeightMm);
        Assert.Equal(isDashed, !LineStyle.Of(role).DashesMm.IsEmpty);
    }

    // WCAG 2.2, 1.4.6 (text 7:1) and 1.4.11 (marks 3:1), relative luminance as defined there.
    [Theory]
    [InlineData(Ink.Black, 7)]
    [InlineData(Ink.Zinc, 3)]
    [InlineData(Ink.Lumber, 3)]
    [InlineData(Ink.Film, 3)]
    [InlineData(Ink.Earth, 3)]
    [InlineData(Ink.Leaf, 3)]
    [InlineData(Ink.Amber, 3)]
    [InlineData(Ink.Brick, 3)]
    public void Inks_stand_out_from_the_paper(Ink ink, double least) =>
        Assert.True((Luminance(Ink.Paper) + 0.05) / (Luminance(ink) + 0.05) >= least);

    [Fact]
    public void Black_text_stands_out_from_every_tint()
    {
        foreach (Ink tint in (Ink[])[Ink.FilmTint, Ink.LumberTint, Ink.EarthTint, Ink.ZincTint])
            Assert.True((Luminance(tint) + 0.05) / (Luminance(Ink.Black) + 0.05) >= 7);
    }

    private static double Luminance(Ink ink)
    {
        InkColour colour = InkColour.Of(ink);
        return (0.2126 * Linear(colour.Red)) + (0.7152 * Linear(colour.Green)) + (0.0722 * Linear(colour.Blue));
    }

    private static double Linear(byte part)
    {
        double share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
