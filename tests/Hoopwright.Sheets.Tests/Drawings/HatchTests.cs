using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Tests.Drawings;

public sealed class HatchTests
{
    private static readonly SheetPath Shape = SheetPath.Arc(new(50, 50), 20, Angle.FromDegrees(30), Angle.FromDegrees(260)).LineTo(new(50, 44)).Close();

    [Theory]
    [InlineData(Hatch.Concrete)]
    [InlineData(Hatch.Earth)]
    [InlineData(Hatch.Wood)]
    [InlineData(Hatch.Film)]
    public void A_texture_stays_inside_its_outline(Hatch kind)
    {
        var marks = HatchLines.Of(new HatchMark("any", Shape, kind));
        Assert.NotEmpty(marks.OfType<LineMark>());
        foreach (LineMark line in marks.OfType<LineMark>())
        {
            // A hair inwards from each end, since a stroke that was cut off ends on the outline itself.
            var points = line.Path.Flattened();
            foreach (double part in (double[])[0.02, 0.5, 0.98])
                Assert.True(new Outline(Shape).Holds(points[0].Towards(points[1], part)));
        }
    }

    [Fact]
    public void Concrete_has_dots_and_triangles()
    {
        var marks = HatchLines.Of(new HatchMark("any", Shape, Hatch.Concrete));
        Assert.True(marks.OfType<FillMark>().Count() > 50);
        Assert.True(marks.OfType<LineMark>().Count(line => line.Path.Closed && line.Path.Pieces.Length == 2) > 10);
    }
}
