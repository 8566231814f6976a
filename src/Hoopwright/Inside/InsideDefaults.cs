using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Inside;

/// <summary>What the climate inside is worked out with where the plan does not say.</summary>
internal static class InsideDefaults
{
    internal static Usual<Ratio> FilmLight { get; } = new(Ratio.FromPercent(89), "New film lets this part of the light through, square to it; its maker says how much.", Citation.FromMemory);

    internal static Usual<Ratio> Dirt { get; } = new(Ratio.FromPercent(5), "Dirt, age and drops on the film take this part of the light: 2 to 5 % in the first year, 1 to 2 % a year after.", Citation.FromMemory);

    internal static Usual<FilmKind> Film { get; } = new(FilmKind.Plain, "The film is plain: over half of the warmth of the ground passes through it at night.", Citation.CommonPractice, Matters: true);

    internal static Usual<Ratio> LeakSingle { get; } = new(Ratio.FromValue(1), "Shut and under one film, the air is changed so often an hour; in wind and with age much more often.", LeakSource, Matters: true);

    internal static Usual<Ratio> LeakDouble { get; } = new(Ratio.FromValue(0.75), "Shut and under two films, the air is changed so often an hour; in wind and with age more often.", LeakSource, Matters: true);

    internal static Usual<Ratio> CropCover { get; } = new(Ratio.FromPercent(50), "A watered crop covers this part of the floor, and cools the air by what it gives off.", Citation.CommonPractice, Matters: true);

    internal static Usual<bool> DoorsOpen { get; } = new(true, "Doors stand open for air as well as sides and vents.", Citation.CommonPractice, Matters: true);

    internal static Usual<Temperature> VentAt { get; } = new(Temperature.FromFahrenheit(75), "Someone opens sides, vents and doors when the air inside gets warmer than this, and shuts them when it falls back.", Citation.CommonPractice, Matters: true);

    internal static Usual<bool> InnerCover { get; } = new(false, "No row cover lies over the crop at night.", Citation.CommonPractice);

    internal static Usual<Temperature> Coldest { get; } = new(Temperature.FromFahrenheit(32), "Hours with air inside colder than this count as too cold.", Citation.CommonPractice);

    internal static Usual<Temperature> Warmest { get; } = new(Temperature.FromFahrenheit(90), "Hours with air inside warmer than this count as too hot: blossoms of tomatoes drop.", Citation.CommonPractice);

    internal static Usual<Temperature> GrowthFrom { get; } = new(Temperature.FromFahrenheit(50), "Degree days of growth are counted from here.", Citation.CommonPractice);

    internal static Usual<Angle> FrontFaces { get; } = new(Angle.FromDegrees(180), "The front end faces south, so that the tunnel lies north and south.", Citation.CommonPractice, Matters: true);

    /// <summary>The band in which the change of air through cracks lies for a tunnel of film, an hour: no figure by wind was found.</summary>
    internal const double LeastLeak = 0.5, MostLeak = 2;

    /// <summary>Film of the inner cover, air under it: laid on low hoops. From memory.</summary>
    internal const double RowCoverHeightM = 0.5, RowCoverAreaOverFloor = 1.1, RowCoverChanges = 2;

    private static Citation LeakSource => new("handbook of greenhouse heating, and ASABE EP406", "air changes of new film houses: 0.75 to 1.5 single, 0.5 to 1 double", Standing.FromMemory);
}
