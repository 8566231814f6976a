using Hoopwright.Sources;

namespace Hoopwright.Weather;

/// <summary>How wind grows with height over the ground, in air that is neither stable nor stirred by heat.</summary>
internal static class WindProfile
{
    internal static readonly Formula Log = new("u/u10", "ln(z/z0)/ln(10/z0)", "", Register.BoundaryLayer.At("the logarithmic profile"));

    internal static readonly Formula Power = new("u/u10", "(z/10)^a", "", Register.BoundaryLayer.At("the power-law profile; 1/7 over open country"));

    /// <summary>Wind at a height over that at another, by the logarithmic law.</summary>
    /// <param name="heightM">z, m; above z0.</param>
    /// <param name="roughnessM">z0, m: 0.01 mown grass, 0.03 open country, 0.1 crops and hedges, 0.3 orchards and farmsteads.</param>
    /// <param name="referenceM">The other height, m.</param>
    internal static double LogRatio(double heightM, double roughnessM, double referenceM = 10) => Math.Log(heightM / roughnessM) / Math.Log(referenceM / roughnessM);

    /// <summary>The same by the power law.</summary>
    /// <param name="heightM">z, m.</param>
    /// <param name="exponent">a.</param>
    /// <param name="referenceM">The other height, m.</param>
    internal static double PowerRatio(double heightM, double exponent, double referenceM = 10) => Math.Pow(heightM / referenceM, exponent);
}
