namespace Hoopwright.Strength.Steel;

/// <summary>The strength of a member in compression, with what led to it.</summary>
/// <param name="Strength">Nominal and design strength, limit state and stress.</param>
/// <param name="ElasticBucklingPa">Fe, elastic buckling stress.</param>
/// <param name="EffectiveAreaM2">Ae, what is left of the area when the wall is slender.</param>
/// <param name="Wall">How slender the wall is.</param>
internal readonly record struct CompressionCapacity(SteelCapacity Strength, double ElasticBucklingPa, double EffectiveAreaM2, WallClass Wall)
{
    /// <summary>Slenderness Lc/r above which a standard advises against a compression member; AISC 360 E2, user note, from memory.</summary>
    internal const double MostSlenderness = 200;

    /// <summary>Lc/r that gives Fe, π√(E/Fe).</summary>
    internal double SlendernessOf(double youngPa) => Math.PI * Math.Sqrt(youngPa / ElasticBucklingPa);
}
