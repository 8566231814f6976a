using System.Collections.Immutable;
using System.Text.Json;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>The words of a closed choice, as they stand in a plan.</summary>
internal static class PlanChoices
{
    /// <summary>Every value of an enum with its word, in the order of declaration.</summary>
    public static ImmutableArray<(TEnum Value, string Word)> Of<TEnum>()
        where TEnum : struct, Enum => [.. Enum.GetValues<TEnum>().Select(value => (value, Word(value)))];

    /// <summary>The word of one value.</summary>
    public static string Word(Enum value) => value switch
    {
        UnitSystem.UsCustomary => "us",
        TubeMaterial.GalvanizedSteel => "steel",
        LoadStandard.Asce7Of2016 => "asce7-16",
        LoadStandard.Asce7Of2022 => "asce7-22",
        TerrainCategory.Zero => "0",
        RiskCategory or Exposure or TerrainCategory => value.ToString(),
        _ => JsonNamingPolicy.CamelCase.ConvertName(value.ToString()),
    };
}
