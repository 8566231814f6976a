using Hoopwright.Sources;

namespace Hoopwright.Strength.Steel;

/// <summary>A steel as tubes are sold, with the span in which its yield stress plausibly lies.</summary>
/// <param name="Name">As people call it.</param>
/// <param name="YieldPa">Fy that the product standard promises; the checks use it.</param>
/// <param name="UltimatePa">Fu that it promises.</param>
/// <param name="LeastYieldPa">Lower end of the span that results are shown for.</param>
/// <param name="MostYieldPa">Upper end of that span.</param>
/// <param name="Source">Where the promised values stand.</param>
/// <param name="SpanSource">What the span rests on.</param>
internal sealed record SteelGrade(string Name, double YieldPa, double UltimatePa, double LeastYieldPa, double MostYieldPa, Citation Source, Citation SpanSource)
{
    /// <summary>The material for a check by AISC 360.</summary>
    internal SteelMaterial Aisc => new(YieldPa, UltimatePa, SteelMaterial.AiscYoungPa);

    /// <summary>The material for a check by AISI S100.</summary>
    internal SteelMaterial Aisi => new(YieldPa, UltimatePa, SteelMaterial.AisiYoungPa);

    /// <summary>The same steel with another yield stress, for the ends of the span.</summary>
    /// <param name="yieldPa">Yield stress; the tensile strength follows where it would be less.</param>
    internal SteelGrade WithYield(double yieldPa) => this with { YieldPa = yieldPa, UltimatePa = Math.Max(UltimatePa, yieldPa) };
}
