using System.Collections.Immutable;
using Hoopwright.CoverSteps;
using Hoopwright.Sources;

namespace Hoopwright.Upkeep;

/// <summary>What can hurt in a storm, beside ladders.</summary>
public static class StormCautions
{
    /// <summary>Snow overhead.</summary>
    public static StepCaution Loaded { get; } = new("loaded roof", "Nobody under a loaded roof, not for a minute and not for tools: bows give way without a sound. Clear from outside.", Citation.CommonPractice);

    /// <summary>Cutting film.</summary>
    public static StepCaution Cutting { get; } = new("cutting film", "Never cut or free film in wind: it takes people with it.", Citation.CommonPractice);

    /// <summary>Electricity.</summary>
    public static StepCaution Power { get; } = new("electricity", "Switch off what is electric inside before the storm. Keep away from lines that are down, and from wet cables.", Citation.CommonPractice);

    /// <summary>Burning heaters.</summary>
    public static StepCaution Heater { get; } = new("heaters", "No flame, grill or engine in a shut tunnel: its fumes kill. A heater brought in late melts little; no heat is counted on here.", Citation.CommonPractice);

    /// <summary>All of them, in the order of the card.</summary>
    public static ImmutableArray<StepCaution> All { get; } = [Loaded, StepCaution.Ladder, Cutting, Power, Heater];
}
