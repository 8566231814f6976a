using Hoopwright.Sources;

namespace Hoopwright.Strength.Loads;

/// <summary>Snow by EN 1991-1-3, cylindrical roofs. Loads are over the plan.</summary>
internal static class EnSnow
{
    /// <summary>Steeper parts carry no snow.</summary>
    internal const double BareDeg = 60;

    // A leg is a wall: it carries none.
    private const double UprightDeg = 90;

    /// <summary>The highest site that the standard covers, m over the sea (1.1(2), from memory).</summary>
    internal const double HighestM = 1500;

    /// <summary>Upper limit of μ3 that the standard recommends.</summary>
    internal const double MostMu3 = 2.0;

    /// <summary>μ of the even load.</summary>
    internal const double Even = 0.8;

    internal static readonly Formula Roof = new("s", "μ·Ce·Ct·sk", "Pa", LoadSources.EnSnow("Eq. 5.1"));

    internal static readonly Formula Mu3 = new("μ3", "0.2 + 10·h/b, at most 2.0; 0 where the slope is over 60°", "", LoadSources.EnSnow("5.3.5"));

    internal static readonly Formula Exposure = new("Ce", "0.8 windswept, 1.0 normal, 1.2 sheltered", "", LoadSources.EnSnow("Table 5.1"));

    internal static readonly Formula Thermal = new("Ct", "1.0; no credit for heat is taken", "", LoadSources.EnSnow("5.2(8)"));

    /// <summary>μ3 of the uneven load.</summary>
    /// <param name="risePerSpan">h/b, rise over span.</param>
    internal static double Mu3Of(double risePerSpan) => Math.Min(MostMu3, 0.2 + (10 * risePerSpan));

    internal static readonly Formula Pitched = new(
        "μ1", "0.8 up to 30°, then straight to 0 at 60°; 0.8 at any slope where something hinders snow from sliding; uneven: half of it on one slope", "",
        LoadSources.EnSnow("5.3.3 and Table 5.2"));

    /// <summary>μ1 of a pitched roof.</summary>
    /// <param name="slopeDeg">Slope, degrees; 0 or more.</param>
    /// <param name="slidesFree">True where nothing hinders snow from sliding off.</param>
    internal static double Mu1(double slopeDeg, bool slidesFree) => Even * (slidesFree ? Math.Clamp((BareDeg - slopeDeg) / 30, 0, 1) : slopeDeg < UprightDeg ? 1 : 0);

    /// <summary>Ce, exposure factor.</summary>
    internal static double Ce(Plans.RoofExposure roof) => roof switch
    {
        Plans.RoofExposure.Exposed => 0.8,
        Plans.RoofExposure.Partly => 1.0,
        Plans.RoofExposure.Sheltered => 1.2,
    };

    /// <summary>μ of the uneven load at a place of the snowed width: two triangles, half as high on one side.</summary>
    /// <param name="mu3">μ3.</param>
    /// <param name="part">Place across the snowed width, from 0 at the side with half the load to 1.</param>
    internal static double Uneven(double mu3, double part)
    {
        double half = part < 0.5 ? part : part - 0.5, peak = part < 0.5 ? mu3 / 2 : mu3;
        return peak * (1 - Math.Abs((4 * half) - 1));
    }
}
