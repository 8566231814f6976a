using Hoopwright.Sources;

namespace Hoopwright.Inside.Air;

/// <summary>How much of global light comes from the sky, for weather that has only the sum.</summary>
internal static class DiffusePart
{
    internal static readonly Formula Rule = new(
        "D/G", "1 - 0.09·k to k 0.22; 0.9511 - 0.1604·k + 4.388·k² - 16.638·k³ + 12.336·k⁴ to 0.8; 0.165 beyond; k = G/(E0·sin e)", "",
        new Citation("Erbs, Klein and Duffie, Solar Energy 28 (1982) 293", "hourly diffuse fraction", Standing.FromMemory));

    /// <summary>D/G.</summary>
    /// <param name="clearness">k, global light over that outside the air; 0 or more.</param>
    internal static double Of(double clearness) => clearness switch
    {
        <= 0.22 => 1 - (0.09 * clearness),
        <= 0.8 => 0.9511 + (clearness * (-0.1604 + (clearness * (4.388 + (clearness * (-16.638 + (clearness * 12.336))))))),
        _ => 0.165,
    };
}
