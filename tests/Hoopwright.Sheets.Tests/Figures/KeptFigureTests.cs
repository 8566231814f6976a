using System.Collections.Immutable;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Figures;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Svg;
using Hoopwright.Testing;

namespace Hoopwright.Sheets.Tests.Figures;

/// <summary>Every drawing of every bundled example as it was looked at, without the letters of the font, which would be most of the bytes.</summary>
public sealed class KeptFigureTests
{
    private const string Kept = "Hoopwright.Sheets.Tests/Golden/Drawings";

    public static TheoryData<string> Examples { get; } = [.. SamplePlans.GoodExamples, SamplePlans.BuiltExample];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_drawing_of_an_example_is_the_kept_one_byte_for_byte(string example)
    {
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes(example)));
        Paper paper = planned.Units == UnitSystem.Metric ? Paper.A4 : Paper.Letter;
        (double widthMm, double heightMm) = paper.DrawingSize(landscape: true);
        ImmutableArray<FigureOffer> offers = TunnelFigures.Offers(planned, new FigureSheet(widthMm, heightMm, planned.Plan.Name!, "2026-03-01", planned.Units) { Paper = paper.Name });
        string[] names = [.. offers.Select(offer => offer.Name + ".svg")];
        foreach ((FigureOffer offer, string name) in offers.Zip(names)) Golden.Match(SvgWriter.Write(offer.Draw(), withFont: false), $"{Kept}/{example}/{name}");
        // A drawing that is made no more must not stay among the kept ones.
        string folder = Path.Combine(SamplePlans.Root, "tests", Path.Combine(Kept.Split('/')), example);
        Assert.Equal(names.Order(StringComparer.Ordinal), Directory.EnumerateFiles(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal)!);
    }
}
