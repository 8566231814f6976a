using System.Collections.Immutable;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Steel;

/// <summary>A tube under one set of forces. Costs a few multiplications; the words are made only when asked for.</summary>
internal readonly record struct TubeCheck : ICheck
{
    internal static readonly Formula AxialAndBending = new("utilisation",
        "Pr/Pc ≥ 0.2: Pr/Pc + 8/9·Mr/Mc; else Pr/(2·Pc) + Mr/Mc; Mr = √(My² + Mz²) for a round tube", "", Register.Aisc360.At("Eq. H1-1a, H1-1b; H1.2 for tension"));

    internal static readonly Formula WithTorsion = new("utilisation", "Tr > 0.2·Tc: Pr/Pc + Mr/Mc + (Vr/Vc + Tr/Tc)²", "", Register.Aisc360.At("Eq. H3-6"));

    internal static readonly Formula ColdFormedAxialAndBending = new("utilisation", "P/Pa + M/Ma; M = √(My² + Mz²)", "", Register.AisiS100.At("Eq. H1.1-1, H1.2-1"));

    internal static readonly Formula ColdFormedBendingAndShear = new("utilisation", "√((M/Ma)² + (V/Va)²)", "", Register.AisiS100.At("Eq. H2-1"));

    /// <summary>The part of the torsional strength up to which torsion is left out of the interaction: H3.2.</summary>
    internal const double SmallTorsion = 0.2;

    /// <summary>Where the two straight lines of H1.1 meet.</summary>
    private const double SmallAxial = 0.2;

    /// <inheritdoc/>
    public double Utilisation { get; private init; }

    /// <summary>Which check governs.</summary>
    internal TubeGoverning Governing { get; private init; }

    /// <summary>Axial force over its strength, tension or compression.</summary>
    internal double AxialRatio { get; private init; }

    /// <summary>Moment over its strength.</summary>
    internal double BendingRatio { get; private init; }

    /// <summary>Shear over its strength.</summary>
    internal double ShearRatio { get; private init; }

    /// <summary>Torque over its strength.</summary>
    internal double TorsionRatio { get; private init; }

    /// <summary>The strengths met.</summary>
    internal TubeStrength Strength { get; private init; }

    /// <summary>The forces met.</summary>
    internal MemberForces Forces { get; private init; }

    /// <summary>Meets strengths with forces.</summary>
    internal static TubeCheck Of(in TubeStrength strength, in MemberForces forces)
    {
        (double axial, double bending, double shear, double torsion) = strength.Limits.Ratios(forces);
        TubeGoverning main = forces.AxialN switch
        {
            < 0 => TubeGoverning.CompressionAndBending,
            > 0 => TubeGoverning.TensionAndBending,
            _ => TubeGoverning.Bending,
        };
        (double utilisation, TubeGoverning governing) = strength.Standard switch
        {
            SteelStandard.AisiS100Round => Greater((axial + bending, main), (MemberForces.Resultant(bending, shear), TubeGoverning.BendingAndShear)),
            SteelStandard.Aisc360Round or SteelStandard.Aisc360Square => torsion > SmallTorsion
                ? (axial + bending + ((shear + torsion) * (shear + torsion)), TubeGoverning.CombinedWithTorsion)
                : (Interaction(axial, bending), main),
        };
        (utilisation, governing) = Greater((utilisation, governing), (shear, TubeGoverning.Shear));
        (utilisation, governing) = Greater((utilisation, governing), (torsion, TubeGoverning.Torsion));
        return new TubeCheck
        {
            Utilisation = utilisation,
            Governing = governing,
            AxialRatio = axial,
            BendingRatio = bending,
            ShearRatio = shear,
            TorsionRatio = torsion,
            Strength = strength,
            Forces = forces,
        };
    }

    /// <summary>H1.1: axial force with bending. The two lines meet only where the sum is 1, so what passes is one region.</summary>
    internal static double Interaction(double axial, double bending) =>
        axial >= SmallAxial ? axial + (8 * bending / 9) : (axial / 2) + bending;

    /// <inheritdoc/>
    public string Governs => Governing switch
    {
        TubeGoverning.Bending => "bending",
        TubeGoverning.CompressionAndBending => "compression with bending",
        TubeGoverning.TensionAndBending => "tension with bending",
        TubeGoverning.CombinedWithTorsion => "axial force, bending, shear and torsion together",
        TubeGoverning.BendingAndShear => "bending with shear",
        TubeGoverning.Shear => "shear",
        TubeGoverning.Torsion => "torsion",
    };

    /// <inheritdoc/>
    public ImmutableArray<WorkedValue> Worked =>
    [
        new("Fe", Strength.Compression.ElasticBucklingPa, "Pa", "elastic buckling stress"),
        new(Strength.Standard == SteelStandard.AisiS100Round ? "Fn" : "Fcr", Strength.Compression.Strength.StressPa, "Pa", "stress at which the member buckles"),
        new("Ae", Strength.Compression.EffectiveAreaM2, "m²", "effective area in compression"),
        new("Pn", Strength.Compression.Strength.Nominal, "N", "nominal strength in compression"),
        new("Pc", Strength.Compression.Strength.Design, "N", "strength in compression that may be used"),
        new("Ptc", Strength.Tension.Design, "N", "strength in tension that may be used"),
        new("Mn", Strength.Bending.Nominal, "N·m", "nominal strength in bending"),
        new("Mc", Strength.Bending.Design, "N·m", "strength in bending that may be used"),
        new("Vc", Strength.Shear.Design, "N", "strength in shear that may be used"),
        new("Tc", Strength.Torsion.Design, "N·m", "strength in torsion that may be used"),
        new("Pr/Pc", AxialRatio, "", "part of the axial strength used"),
        new("Mr/Mc", BendingRatio, "", "part of the bending strength used"),
        new("Vr/Vc", ShearRatio, "", "part of the shear strength used"),
        new("Tr/Tc", TorsionRatio, "", "part of the torsional strength used"),
    ];

    /// <inheritdoc/>
    public ImmutableArray<Formula> Formulas => Strength.Standard switch
    {
        SteelStandard.Aisc360Round =>
        [
            AiscTube.ColumnStress, AiscTube.ColumnStrength, AiscTube.TensionStrength, AiscTube.BendingStrength, AiscTube.ShearStrength,
            AiscTube.TorsionStrength, AxialAndBending, WithTorsion,
        ],
        SteelStandard.Aisc360Square =>
        [
            AiscTube.ColumnStress, AiscSquareTube.ColumnStrength, AiscTube.TensionStrength, AiscSquareTube.BendingStrength,
            AiscSquareTube.ShearStrength, AiscSquareTube.TorsionStrength, AxialAndBending, WithTorsion,
        ],
        SteelStandard.AisiS100Round =>
        [
            AisiTube.ColumnStress, AisiTube.ColumnStrength, AiscTube.TensionStrength, AisiTube.BendingStrength, AisiTube.ShearStrength,
            AiscTube.TorsionStrength, ColdFormedAxialAndBending, ColdFormedBendingAndShear,
        ],
    };

    private static (double Ratio, TubeGoverning Governing) Greater(
        (double Ratio, TubeGoverning Governing) first, (double Ratio, TubeGoverning Governing) second) => second.Ratio > first.Ratio ? second : first;
}
