using Hoopwright.Inside.Air;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Inside.Heat;

/// <summary>Air that fans must move on the brightest day, where sides and vents cannot.</summary>
/// <param name="Rise">How much warmer than outside the air inside may get.</param>
/// <param name="ByBalance">Air for that, by the balance of heat in the brightest hour.</param>
/// <param name="ByRule">Air by the rule for fans, 8 ft³ a minute for each ft² of floor.</param>
public sealed record FanSize(TemperatureDifference Rise, AirFlow ByBalance, AirFlow ByRule)
{
    /// <summary>How it is worked out.</summary>
    public static Formula Rule { get; } = new("ΔT", "S·Af·(1 - E)/(U·Ac + ρ·cp·Q), solved for Q", "K", new Citation("steady balance of heat of a vented house, any handbook of greenhouse climate", "", Standing.FromMemory));

    /// <summary>8 ft³ a minute for each ft² of floor.</summary>
    public static Formula Thumb { get; } = new("Q", "8 ft³/min for each ft² of floor", "", new Citation("New England Vegetable Management Guide", "ventilation", Standing.Published));

    private const double DensityKgM3 = 1.15, ThumbM3PerSPerM2 = 8 * 0.3048 / 60;

    // 9 °F: common practice, no source.
    internal const double UsualRiseK = 5;

    /// <summary>ΔT, K.</summary>
    /// <param name="sunWPerM2">S, light taken up, over a m² of floor.</param>
    /// <param name="vapour">E, part of it that turns water into vapour.</param>
    /// <param name="floorM2">Af.</param>
    /// <param name="lossWPerK">U·Ac.</param>
    /// <param name="flowM3PerS">Q.</param>
    internal static double RiseK(double sunWPerM2, double vapour, double floorM2, double lossWPerK, double flowM3PerS) =>
        sunWPerM2 * floorM2 * (1 - vapour) / (lossWPerK + (DensityKgM3 * MoistAir.HeatJPerKgK * flowM3PerS));

    /// <summary>Q, m³/s; 0 where the film loses enough.</summary>
    internal static double FlowM3PerS(double sunWPerM2, double vapour, double floorM2, double lossWPerK, double riseK) =>
        Math.Max(0, ((sunWPerM2 * floorM2 * (1 - vapour) / riseK) - lossWPerK) / (DensityKgM3 * MoistAir.HeatJPerKgK));

    internal static FanSize Of(double sunWPerM2, double vapour, double floorM2, double lossWPerK) => new(
        TemperatureDifference.FromKelvins(UsualRiseK), AirFlow.FromCubicMetresPerSecond(FlowM3PerS(sunWPerM2, vapour, floorM2, lossWPerK, UsualRiseK)),
        ByThumb(floorM2));

    /// <summary>Air by the rule for fans.</summary>
    internal static AirFlow ByThumb(double floorM2) => AirFlow.FromCubicMetresPerSecond(ThumbM3PerSPerM2 * floorM2);
}
