namespace Hoopwright.Strength.Steel;

/// <summary>Which check of a tube governs.</summary>
internal enum TubeGoverning
{
    /// <summary>Bending without axial force.</summary>
    Bending,

    /// <summary>Compression with bending.</summary>
    CompressionAndBending,

    /// <summary>Tension with bending.</summary>
    TensionAndBending,

    /// <summary>Axial force and bending with shear and torsion.</summary>
    CombinedWithTorsion,

    /// <summary>Bending with shear.</summary>
    BendingAndShear,

    /// <summary>Shear alone.</summary>
    Shear,

    /// <summary>Torsion alone.</summary>
    Torsion,
}
