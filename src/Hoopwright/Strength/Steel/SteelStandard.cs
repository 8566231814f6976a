namespace Hoopwright.Strength.Steel;

/// <summary>Which rules a tube was checked by.</summary>
internal enum SteelStandard
{
    /// <summary>AISC 360, round tube.</summary>
    Aisc360Round,

    /// <summary>AISC 360, square tube.</summary>
    Aisc360Square,

    /// <summary>AISI S100, closed cylindrical tube.</summary>
    AisiS100Round,
}
