using Hoopwright.Geometry;
using Hoopwright.Quantities;

namespace Hoopwright.Sheets.Drawings;

/// <summary>Maps the drawn thing's own measures, up being up, to the paper at a stated scale.</summary>
/// <param name="Scale">The scale.</param>
/// <param name="Origin">Where the model's point (0, 0) lies on paper.</param>
public sealed record ModelView(DrawingScale Scale, SheetPoint Origin)
{
    /// <summary>A view at the largest standard scale at which the thing between two opposite corners fits a room on paper, in its middle.</summary>
    public static ModelView Fit(PlanePoint low, PlanePoint high, SheetBox room, UnitSystem units) =>
        At(DrawingScale.ToFit(high.Across - low.Across, high.Up - low.Up, room.WidthMm, room.HeightMm, units), low, high, room);

    /// <summary>A view at a given scale with the thing between two opposite corners in the middle of a room on paper.</summary>
    public static ModelView At(DrawingScale scale, PlanePoint low, PlanePoint high, SheetBox room) => new(scale, new SheetPoint(
        room.Middle.XMm - scale.PaperMm((low.Across + high.Across) / 2), room.Middle.YMm + scale.PaperMm((low.Up + high.Up) / 2)));

    /// <summary>Where a point of the thing lies on paper.</summary>
    public SheetPoint At(PlanePoint point) => At(point.Across, point.Up);

    /// <summary>Where a point of the thing lies on paper.</summary>
    public SheetPoint At(Length across, Length up) => new(Origin.XMm + Scale.PaperMm(across), Origin.YMm - Scale.PaperMm(up));

    /// <summary>How long a length of the thing is on paper, mm.</summary>
    public double PaperMm(Length length) => Scale.PaperMm(length);
}
