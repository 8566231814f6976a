using Hoopwright.Quantities;

namespace Hoopwright.CoverSteps;

/// <summary>How many people a sheet takes in a wind.</summary>
/// <param name="Wind">Wind or gust at the bows.</param>
/// <param name="Pull">What it pulls at a sheet that stands in it.</param>
/// <param name="People">How many it takes to hold and pull it.</param>
/// <param name="IsFit">False beyond the highest gust of the plan: do not pull, however many there are.</param>
public sealed record CrewInWind(Speed Wind, Force Pull, int People, bool IsFit);
