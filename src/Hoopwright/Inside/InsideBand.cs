using Hoopwright.Quantities;

namespace Hoopwright.Inside;

/// <summary>What is not known, on both sides.</summary>
/// <param name="HighestFrom">Hottest hour with more cracks and more wind.</param>
/// <param name="HighestTo">Hottest hour with fewer cracks and less wind.</param>
/// <param name="LowestFrom">Coldest hour with more cracks, more wind and a colder sky.</param>
/// <param name="LowestTo">Coldest hour with fewer cracks and less wind.</param>
/// <param name="NightLiftFrom">Mean gain of the nights with more cracks, more wind and a colder sky.</param>
/// <param name="NightLiftTo">Mean gain of the nights with fewer cracks and less wind.</param>
public sealed record InsideBand(
    Temperature HighestFrom, Temperature HighestTo, Temperature LowestFrom, Temperature LowestTo, TemperatureDifference NightLiftFrom, TemperatureDifference NightLiftTo);
