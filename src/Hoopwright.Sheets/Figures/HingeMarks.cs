using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using static Hoopwright.Sheets.Figures.FigureSheet;

namespace Hoopwright.Sheets.Figures;

/// <summary>The strap hinges of a door leaf, as many as are bought for it: a knuckle at the edge and a strap into the leaf.</summary>
internal static class HingeMarks
{
    private const double KnuckleMm = 0.7;

    /// <summary>Marks the hinges of a leaf; none where it slides.</summary>
    /// <param name="figure">Where to draw.</param>
    /// <param name="leaf">The leaf.</param>
    /// <param name="low">The leaf's lower left corner in the figure.</param>
    public static void Draw(Figure figure, DoorLeaf leaf, PlanePoint low)
    {
        if (leaf.HingeLeft is not { } hingeLeft) return;
        Length edge = hingeLeft ? low.Across : low.Across + leaf.Width;
        Length strapEnd = edge + (leaf.Width * (hingeLeft ? 0.2 : -0.2));
        for (int hinge = 0; hinge < leaf.Hinges; hinge++)
        {
            Length up = low.Up + (leaf.Height * (0.1 + (0.8 * hinge / (leaf.Hinges - 1))));
            PlanePoint knuckle = At(edge, up);
            figure.On("hinges").Line(knuckle, At(strapEnd, up), LineRole.Cut)
                .OnPaper((view, pen) => pen.Path(SheetPath.Circle(view.At(knuckle), KnuckleMm), LineRole.Outline, Ink.Black));
        }
    }
}
