using Hoopwright.Inside.Air;

namespace Hoopwright.Inside.Heat;

/// <summary>What of a tunnel the heat balance needs, over a m² of floor.</summary>
internal sealed record HeatHouse
{
    /// <summary>Film over floor.</summary>
    internal required double CoverOverFloor { get; init; }

    /// <summary>Volume over floor, m.</summary>
    internal required double HeightM { get; init; }

    /// <summary>Floor, m²: only changes of air are over it.</summary>
    internal required double FloorM2 { get; init; }

    /// <summary>One or two films.</summary>
    internal required int Layers { get; init; }

    internal required FilmWarmthRays Film { get; init; }

    /// <summary>Part of the floor under a crop.</summary>
    internal required double CropCover { get; init; }

    /// <summary>Air changes an hour through cracks.</summary>
    internal required double LeakPerHour { get; init; }

    /// <summary>True when water evaporates and condenses; false for checks against dry models.</summary>
    internal bool Damp { get; init; } = true;
}

/// <summary>What comes from outside in an hour, over a m² of floor.</summary>
internal readonly record struct HeatHour
{
    internal required double OutsideK { get; init; }

    internal required double WindMps { get; init; }

    internal required double SkyWPerM2 { get; init; }

    /// <summary>Water in the air outside, kg/kg.</summary>
    internal double Water { get; init; }

    /// <summary>Of the air, Pa.</summary>
    internal double PressurePa { get; init; }

    /// <summary>Light that ground and crop take up.</summary>
    internal double SunWPerM2 { get; init; }

    /// <summary>Light that the film takes up.</summary>
    internal double SunOnFilmWPerM2 { get; init; }

    /// <summary>Open sides, doors and vents; null when all is shut.</summary>
    internal AirExchange? Open { get; init; }

    /// <summary>Wind at what is open, m/s.</summary>
    internal double WindAtOpeningsMps { get; init; }

    /// <summary>What the ground asks of its surface.</summary>
    internal required double SoilConductance { get; init; }

    internal required double SoilK { get; init; }

    /// <summary>Of the air an hour before, K; not a number for a steady state.</summary>
    internal required double AirBeforeK { get; init; }

    /// <summary>Water on the film, kg/m² of floor.</summary>
    internal double FilmWaterKg { get; init; }

    /// <summary>True with a row cover over the crop.</summary>
    internal bool RowCover { get; init; }

    /// <summary>Temperature that a heater holds, K; not a number without one.</summary>
    internal double HeatToK { get; init; }
}
