using Hoopwright.Geometry;
using Hoopwright.Quantities;

namespace Hoopwright.Sheets.Figures;

/// <summary>How a load on film acts.</summary>
internal enum LoadArrowKind
{
    /// <summary>Square to the film; positive presses inwards.</summary>
    SquareToFilm,

    /// <summary>Straight down, over the plan.</summary>
    OverPlan,

    /// <summary>Level, positive to the right.</summary>
    Sideways,
}

/// <summary>A load at a place of the film line.</summary>
/// <param name="Foot">The place.</param>
/// <param name="Value">The load.</param>
/// <param name="OutwardRad">Where its arrow lies from there.</param>
/// <param name="Kind">How it acts.</param>
internal readonly record struct LoadArrow(PlanePoint Foot, Pressure Value, double OutwardRad, LoadArrowKind Kind)
{
    /// <summary>The outer end of the arrow.</summary>
    public PlanePoint Tip(double metresPerPa)
    {
        Length away = Length.FromMetres(Math.Abs(Value.Pascals) * metresPerPa);
        return new PlanePoint(Foot.Across + (away * Math.Cos(OutwardRad)), Foot.Up + (away * Math.Sin(OutwardRad)));
    }

    /// <summary>The load with its direction.</summary>
    public string Words(UnitSystem units) => TapeText.Of(Pressure.FromPascals(Math.Abs(Value.Pascals)), units) + Kind switch
    {
        LoadArrowKind.SquareToFilm => Value.Pascals < 0 ? " out" : " in",
        LoadArrowKind.OverPlan => Value.Pascals < 0 ? " up" : " down",
        LoadArrowKind.Sideways => Value.Pascals < 0 ? " to the left" : " to the right",
    };
}
