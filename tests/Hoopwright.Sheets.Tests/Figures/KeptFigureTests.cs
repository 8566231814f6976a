using Hoopwright.Packets;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Svg;
using Hoopwright.Testing;

namespace Hoopwright.Sheets.Tests.Figures;

public sealed class KeptFigureTests
{
    private static readonly Lazy<IReadOnlyDictionary<string, FigureOffer>> Figures = new(() =>
    {
        PlannedTunnel planned = TunnelWorks.Plan(SamplePlans.Example("gothic-26ft"));
        (double widthMm, double heightMm) = Paper.Letter.DrawingSize(landscape: true);
        return TunnelFigures.Offers(planned, new FigureSheet(widthMm, heightMm, planned.Plan.Name!, "2026-03-01", planned.Units), onlyLayout: true)
            .ToDictionary(figure => figure.Name, StringComparer.Ordinal);
    });

    // Without the letters of the font, which would be most of the bytes.
    [Theory]
    [InlineData("set-out")]
    [InlineData("bow")]
    [InlineData("front-end")]
    [InlineData("back-door-1-leaf")]
    public void A_drawing_of_the_gothic_example_is_the_kept_one_byte_for_byte(string name) =>
        Golden.Match(SvgWriter.Write(Figures.Value[name].Draw(), withFont: false), $"Hoopwright.Sheets.Tests/Golden/gothic-26ft-{name}.svg");
}
