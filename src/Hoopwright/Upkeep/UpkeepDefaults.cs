using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Upkeep;

/// <summary>What the upkeep of a tunnel is worked out with where the plan does not say.</summary>
internal static class UpkeepDefaults
{
    internal static Usual<int> FilmLife { get; } = new(
        4, "Film of greenhouse grade is changed after so many years; its maker says how many it is made for.",
        new Citation("Interim Conservation Practice Standard 798, Seasonal High Tunnel System for Crops, slides of the U.S. Natural Resources Conservation Service (Idaho, 2010 and 2011)", "practice life 4 years", Standing.Published), Matters: true);

    internal static Usual<Ratio> ClearAt { get; } = new(Ratio.FromPercent(50), "The roof is cleared when so much of the snow at the limit lies on it: it comes down faster than two people clear it.", Citation.CommonPractice, Matters: true);

    internal static Usual<Speed> CloseWind { get; } = new(Speed.FromMilesPerHour(30), "Doors, sides and vents are shut before gusts of this: small trees sway, and what flaps tears.", Citation.CommonPractice, Matters: true);

    internal static Usual<Speed> TightenWind { get; } = new(Speed.FromMilesPerHour(40), "Wire, ropes and latches are gone over before gusts of this: twigs break off trees.", Citation.CommonPractice, Matters: true);

    internal static Usual<Ratio> WindShare { get; } = new(Ratio.FromPercent(75), "From this part of the gust at the limit on, which is little over half of its load, nobody is in or at the tunnel.", Citation.CommonPractice, Matters: true);
}
