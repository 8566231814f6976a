namespace Hoopwright.Strength.Loads;

/// <summary>What a load grows with. Loads of the last two kinds are held for a reference of 1 Pa.</summary>
public enum LoadScale
{
    /// <summary>Nothing: the load is held as it is.</summary>
    Fixed,

    /// <summary>The ground snow load: held for 1 Pa of it.</summary>
    Snow,

    /// <summary>The square of the wind speed: held for 1 Pa of ½·ρ·V², where ½·ρ is 0.613 kg/m³ by ASCE 7 and 0.625 kg/m³ by EN 1991.</summary>
    WindSpeedSquared,
}
