using Hoopwright.Plans;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Wood;

/// <summary>Reference design values of a species, grade and size, before any adjustment.</summary>
internal sealed record WoodValues
{
    /// <summary>Species group.</summary>
    internal required WoodSpecies Species { get; init; }

    /// <summary>Grade.</summary>
    internal required WoodGrade Grade { get; init; }

    /// <summary>Fb, bending.</summary>
    internal required double BendingPa { get; init; }

    /// <summary>Ft, tension along the grain.</summary>
    internal required double TensionPa { get; init; }

    /// <summary>Fv, shear along the grain.</summary>
    internal required double ShearPa { get; init; }

    /// <summary>Fc⊥, bearing across the grain.</summary>
    internal required double BearingPa { get; init; }

    /// <summary>Fc, compression along the grain.</summary>
    internal required double CompressionPa { get; init; }

    /// <summary>E, for deflection.</summary>
    internal required double YoungPa { get; init; }

    /// <summary>Emin, for buckling.</summary>
    internal required double YoungMinPa { get; init; }

    /// <summary>G, specific gravity, for fasteners.</summary>
    internal required double SpecificGravity { get; init; }

    /// <summary>True when the values of the table already hold the size factor.</summary>
    internal required bool HasSizeFactor { get; init; }

    /// <summary>True when the values of the table already hold for wet wood.</summary>
    internal required bool HoldsWet { get; init; }

    /// <summary>Where the values stand.</summary>
    internal required Citation Source { get; init; }
}
