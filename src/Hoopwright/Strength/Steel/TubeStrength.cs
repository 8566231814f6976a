namespace Hoopwright.Strength.Steel;

/// <summary>All strengths of one member. Worked out once, then met with the forces of many load cases.</summary>
internal readonly record struct TubeStrength
{
    /// <summary>By which rules.</summary>
    internal required SteelStandard Standard { get; init; }

    /// <summary>Allowable strength or factored loads.</summary>
    internal required DesignMethod Method { get; init; }

    /// <summary>In compression.</summary>
    internal required CompressionCapacity Compression { get; init; }

    /// <summary>In tension.</summary>
    internal required SteelCapacity Tension { get; init; }

    /// <summary>In bending, about any axis.</summary>
    internal required SteelCapacity Bending { get; init; }

    /// <summary>In shear, in any direction.</summary>
    internal required SteelCapacity Shear { get; init; }

    /// <summary>In torsion.</summary>
    internal required SteelCapacity Torsion { get; init; }

    /// <summary>What a check divides by.</summary>
    internal TubeLimits Limits => new(Standard, Compression.Strength.Design, Tension.Design, Bending.Design, Shear.Design, Torsion.Design);

    /// <summary>The check of these strengths against one set of forces.</summary>
    internal TubeCheck Check(MemberForces forces) => TubeCheck.Of(this, forces);
}
