namespace Hoopwright.Strength.Wood;

/// <summary>How hot the wood stays for long. A shut film house in sun can pass 100 °F.</summary>
internal enum WoodTemperature
{
    /// <summary>Up to 100 °F (38 °C).</summary>
    UpTo100F,

    /// <summary>Over 100 to 125 °F (52 °C).</summary>
    UpTo125F,

    /// <summary>Over 125 to 150 °F (66 °C).</summary>
    UpTo150F,
}
