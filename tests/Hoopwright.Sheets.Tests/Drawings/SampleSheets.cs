using Hoopwright.Geometry;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Pages;

namespace Hoopwright.Sheets.Tests.Drawings;

/// <summary>An invented sheet that uses every kind of mark, for tests and for looking at.</summary>
internal static class SampleSheets
{
    internal static PlanePoint At(double acrossFt, double upFt) => new(Length.FromFeet(acrossFt), Length.FromFeet(upFt));

    internal static string Tape(Length length) => TapeText.Of(length, UnitSystem.UsCustomary);

    internal static Drawing EndWall(Paper paper, Angle? north = null)
    {
        (double widthMm, double heightMm) = paper.DrawingSize(landscape: true);
        DrawingBuilder sheet = new(
            "Sample end wall", "An invented end wall with a door, posts in concrete, and every kind of dimension.", widthMm, heightMm,
            new TitleBlock("Invented tunnel, for tests", "1 of 2", "2026-03-01", UnitSystem.UsCustomary, north));
        Figure wall = sheet.Figure(At(-1, -3), At(21, 11), UnitSystem.UsCustomary, spareMm: 8);
        PlanePoint middle = At(10, 1);
        wall.On("earth").Hatch(ModelPath.Rectangle(At(-1, -0.6), At(21, 0)), Hatch.Earth).Line(At(-1, 0), At(21, 0), LineRole.Cut, Ink.Earth);
        foreach (double x in (double[])[6, 14])
        {
            wall.On("concrete").Hatch(ModelPath.Rectangle(At(x - 0.5, -2.5), At(x + 0.5, 0)), Hatch.Concrete).Rectangle(At(x - 0.5, -2.5), At(x + 0.5, 0));
            wall.On("posts").Fill(ModelPath.Rectangle(At(x - 0.15, -1.5), At(x + 0.15, 9)), Ink.LumberTint)
                .Hatch(ModelPath.Rectangle(At(x - 0.15, -1.5), At(x + 0.15, 9)), Hatch.Wood).Rectangle(At(x - 0.15, -1.5), At(x + 0.15, 9));
        }

        wall.On("film").Hatch(ModelPath.Rectangle(At(1, 1), At(5, 4)), Hatch.Film).Rectangle(At(1, 1), At(5, 4), LineRole.Hidden);
        wall.On("bow").Path(ModelPath.Arc(middle, Length.FromFeet(10), Angle.Zero, Angle.FromDegrees(180)), LineRole.Cut)
            .Line(At(0, 0), At(0, 1), LineRole.Cut).Line(At(20, 0), At(20, 1), LineRole.Cut);
        wall.On("centre").Line(At(10, -0.5), At(10, 11.5), LineRole.Centre);
        wall.On("door").Rectangle(At(6.15, 0), At(13.85, 7));
        wall.Chain(Side.Below, [At(0, 0), At(5.85, 0), At(6.15, 0), At(13.85, 0), At(14.15, 0), At(20, 0)], Tape)
            .Overall(Side.Below, At(0, 0), At(20, 0), Tape)
            .Running(Side.Below, [At(0, 0), At(6, 0), At(10, 0), At(14, 0), At(20, 0)], Tape)
            .Chain(Side.Left, [At(0, 0), At(0, 1), At(0, 1.2), At(10, 11)], Tape)
            .Running(Side.Right, [At(20, 0), At(20, 1), At(14, 9), At(10, 11)], Tape)
            .Chain(Side.Above, Enumerable.Range(0, 21).Select(x => At(x, 11)), Tape);
        wall.Radius(middle, At(10 + (10 * Math.Cos(2.2)), 1 + (10 * Math.Sin(2.2))), "R 10' 0\"")
            .AngleAt(At(0, 0), Angle.Zero, Angle.FromDegrees(45), "45°")
            .Aligned(At(6.15, 0), At(13.85, 7), "10' 4-7/8\"", 5)
            .Callout(At(14.15, 5), "post 4x4, treated,\ntop cut to the bow", Angle.Zero)
            .Callout(At(10 + (10 * Math.Cos(0.6)), 1 + (10 * Math.Sin(0.6))), "bow", Angle.FromDegrees(45))
            .SurfaceCallout(At(3, 2.5), "film", Angle.FromDegrees(120))
            .SurfaceCallout(At(6, -2.2), "concrete, top slopes away", Angle.FromDegrees(200))
            .Label(At(8, 3), "door", bold: true);
        return sheet.Build();
    }

    internal static Drawing Metric(Paper paper)
    {
        (double widthMm, double heightMm) = paper.DrawingSize(landscape: false);
        DrawingBuilder sheet = new(
            "Sample plan", "An invented plan seen from above with a diagonal.", widthMm, heightMm,
            new TitleBlock("Invented tunnel, for tests", "2 of 2", "2026-03-01", UnitSystem.Metric, Angle.FromDegrees(30)));
        PlanePoint Of(double acrossM, double upM) => new(Length.FromMetres(acrossM), Length.FromMetres(upM));
        string Write(Length length) => TapeText.Of(length, UnitSystem.Metric);
        Figure plan = sheet.Figure(Of(0, 0), Of(9, 24), UnitSystem.Metric, spareMm: 6);
        plan.On("strings").Path(ModelPath.Rectangle(Of(0, 0), Of(9, 24)), LineRole.Centre);
        plan.On("diagonals").Line(Of(0, 0), Of(9, 24), LineRole.Centre).Line(Of(9, 0), Of(0, 24), LineRole.Centre);
        foreach (double y in Enumerable.Range(0, 13).Select(bay => bay * 2.0))
            plan.On("posts").Circle(Of(0, y), Length.FromMillimetres(60)).Circle(Of(9, y), Length.FromMillimetres(60));
        plan.Running(Side.Left, Enumerable.Range(0, 13).Select(bay => Of(0, bay * 2)), Write)
            .Overall(Side.Below, Of(0, 0), Of(9, 0), Write)
            .Along(Of(0, 0), Of(9, 24), Write(Length.FromMetres(Math.Sqrt(657))))
            .Callout(Of(9, 24), "corner stake", Angle.FromDegrees(60))
            .Label(Of(4.5, 4), "front", bold: true);
        return sheet.Build();
    }
}
