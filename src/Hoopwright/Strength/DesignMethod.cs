namespace Hoopwright.Strength;

/// <summary>How loads and strengths are brought together.</summary>
internal enum DesignMethod
{
    /// <summary>Allowable strength design: loads as they are, strength divided by Ω.</summary>
    Asd,

    /// <summary>Load and resistance factor design: factored loads, strength times φ.</summary>
    Lrfd,
}
