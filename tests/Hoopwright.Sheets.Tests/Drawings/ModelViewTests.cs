using CsCheck;
using Hoopwright.Geometry;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Tests.Drawings;

public sealed class ModelViewTests
{
    [Fact]
    public void A_quarter_inch_scale_makes_one_foot_a_quarter_inch_of_paper()
    {
        foreach (DrawingScale scale in DrawingScale.UsCustomary.Where(scale => scale.Name.Contains("1'-0\"", StringComparison.Ordinal)))
        {
            Reading<Length> paper = QuantityText.ReadLength(scale.Name.Split(" = ")[0]);
            Assert.True(paper.IsRead, scale.Name);
            Assert.Equal(paper.Value.Millimetres, scale.PaperMm(Length.FromFeet(1)), 1e-9);
        }
    }

    [Fact]
    public void Each_scale_is_smaller_than_the_one_before()
    {
        foreach (UnitSystem units in Enum.GetValues<UnitSystem>())
            Assert.Equal(DrawingScale.Of(units).Select(scale => scale.Denominator).Order().Distinct(), DrawingScale.Of(units).Select(scale => scale.Denominator));
    }

    [Fact]
    public void The_largest_scale_that_fits_is_taken() =>
        Gen.Select(Gen.Double[0.2, 200], Gen.Double[0.2, 100], Gen.Enum<UnitSystem>()).Sample((wideM, highM, units) =>
        {
            Length wide = Length.FromMetres(wideM), high = Length.FromMetres(highM);
            DrawingScale taken = DrawingScale.ToFit(wide, high, 240, 160, units);
            Assert.True(taken.PaperMm(wide) <= 240 && taken.PaperMm(high) <= 160);
            foreach (DrawingScale larger in DrawingScale.Of(units).TakeWhile(scale => scale != taken))
                Assert.True(larger.PaperMm(wide) > 240 || larger.PaperMm(high) > 160);
        });

    [Fact]
    public void What_is_drawn_lies_in_the_middle_of_its_room_with_up_upwards()
    {
        PlanePoint low = new(Length.FromMetres(-1), Length.FromMetres(2)), high = new(Length.FromMetres(5), Length.FromMetres(4));
        ModelView view = ModelView.Fit(low, high, new SheetBox(10, 20, 210, 120), UnitSystem.Metric);
        Assert.Equal(new SheetPoint(110, 70), new SheetPoint((view.At(low).XMm + view.At(high).XMm) / 2, (view.At(low).YMm + view.At(high).YMm) / 2));
        Assert.True(view.At(high).YMm < view.At(low).YMm);
        Assert.Equal("1:40", view.Scale.Name);
    }

    [Fact]
    public void An_arc_on_paper_is_the_arc_of_the_model_at_scale() =>
        Gen.Select(Gen.Double[-6, 6], Gen.Double[-6, 6], Gen.Double[0.1, 5], Gen.Double[-6, 6]).Sample((fromRad, sweepRad, radiusM, acrossM) =>
        {
            ModelView view = new(DrawingScale.Metric[5], new SheetPoint(40, 90));
            PlanePoint centre = new(Length.FromMetres(acrossM), Length.FromMetres(1));
            ModelPath model = ModelPath.Arc(centre, Length.FromMetres(radiusM), Angle.FromRadians(fromRad), Angle.FromRadians(sweepRad));
            SheetPath paper = SheetPath.Arc(view.At(centre), radiusM * 1000 / 25, Angle.FromRadians(fromRad), Angle.FromRadians(sweepRad));
            Assert.Equal(0, paper.End.DistanceMm(model.On(view).End), 1e-9);
            foreach (SheetPoint point in model.On(view).Flattened())
                Assert.Equal(radiusM * 40, point.DistanceMm(view.At(centre)), 1e-9);
        });

    [Fact]
    public void Flattened_arcs_stay_within_a_twentieth_of_a_millimetre() =>
        Gen.Select(Gen.Double[0.2, 300], Gen.Double[-6.28, 6.28]).Sample((radiusMm, sweepRad) =>
        {
            SheetPoint centre = new(0, 0);
            var points = SheetPath.Arc(centre, radiusMm, Angle.FromRadians(1), Angle.FromRadians(sweepRad)).Flattened();
            for (int index = 1; index < points.Length; index++)
                Assert.True(radiusMm - points[index - 1].Towards(points[index], 0.5).DistanceMm(centre) <= 0.0501);
        });
}
