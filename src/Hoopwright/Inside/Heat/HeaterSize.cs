using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Inside.Heat;

/// <summary>What a heater must give on the coldest night.</summary>
/// <param name="Inside">Temperature held.</param>
/// <param name="Outside">The coldest air.</param>
/// <param name="ThroughFilm">Heat lost through the film.</param>
/// <param name="WithAir">Heat lost with air through cracks.</param>
public sealed record HeaterSize(Temperature Inside, Temperature Outside, Power ThroughFilm, Power WithAir)
{
    /// <summary>How it is worked out.</summary>
    public static Formula Rule { get; } = new(
        "P", "U·A·ΔT + 0.335·V·n·ΔT, U 6.8 W/m²K under one film, 4.0 under two, 2.8 to 3.4 under two that hold warmth back, n air changes an hour", "W",
        new Citation("greenhouse chapter of the handbook of greenhouse heating; U of single glazing 5.7 to 6.8, of double 3.4 to 4.0, extension.org energy module", "", Standing.FromMemory));

    // Heat of a cubic metre of air, Wh/m³K.
    private const double AirWhPerM3K = 0.335;

    /// <summary>In all.</summary>
    public Power Whole => Power.FromWatts(ThroughFilm.Watts + WithAir.Watts);

    /// <summary>U, W/m²K.</summary>
    internal static double LossWPerM2K(int layers, bool holdsWarmth) => layers == 1 ? 6.8 : holdsWarmth ? 3.1 : 4.0;

    internal static HeaterSize Of(Temperature inside, Temperature outside, double lossWPerM2K, double coverM2, double volumeM3, double changesPerHour)
    {
        double warmer = Math.Max(0, inside.Kelvins - outside.Kelvins);
        return new(inside, outside, Power.FromWatts(lossWPerM2K * coverM2 * warmer), Power.FromWatts(AirWhPerM3K * volumeM3 * changesPerHour * warmer));
    }
}
