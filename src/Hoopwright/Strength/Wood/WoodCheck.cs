using System.Collections.Immutable;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Wood;

/// <summary>A post, girt or header under one set of forces, by NDS-2018 allowable stress design.</summary>
internal sealed record WoodCheck : ICheck
{
    internal static readonly Formula Interaction = new("utilisation", "(fc/Fc')² + fb1/(Fb1'·(1 − fc/FcE1)) + fb2/(Fb2'·(1 − fc/FcE2 − (fb1/FbE)²))", "",
        Register.Nds2018.At("Eq. 3.9-3; and 3.9-4, fc/FcE2 + (fb1/FbE)² under 1"));

    internal static readonly Formula TensionAndBending = new("utilisation", "ft/Ft' + fb1/Fb1* + fb2/Fb2', and (fb1 − ft)/Fb1'", "", Register.Nds2018.At("Eq. 3.9-1, 3.9-2"));

    internal static readonly Formula Shear = new("fv", "3·V/(2·b·d)", "Pa", Register.Nds2018.At("Eq. 3.4-2"));

    /// <inheritdoc/>
    public required double Utilisation { get; init; }

    /// <summary>What governs.</summary>
    internal required WoodLimitState LimitState { get; init; }

    /// <summary>The design values before stability.</summary>
    internal required AdjustedWood Wood { get; init; }

    /// <summary>fc, stress in compression.</summary>
    internal required double CompressionStressPa { get; init; }

    /// <summary>ft, stress in tension.</summary>
    internal required double TensionStressPa { get; init; }

    /// <summary>fb1, stress of bending on edge.</summary>
    internal required double EdgewiseStressPa { get; init; }

    /// <summary>fb2, stress of bending flat.</summary>
    internal required double FlatwiseStressPa { get; init; }

    /// <summary>fv, stress in shear.</summary>
    internal required double ShearStressPa { get; init; }

    /// <summary>The greater of le1/d1 and le2/d2.</summary>
    internal required double ColumnSlenderness { get; init; }

    /// <summary>CP.</summary>
    internal required double ColumnFactor { get; init; }

    /// <summary>Fc', with CP.</summary>
    internal required double CompressionPa { get; init; }

    /// <summary>FcE1.</summary>
    internal required double EdgewiseElasticPa { get; init; }

    /// <summary>FcE2.</summary>
    internal required double FlatwiseElasticPa { get; init; }

    /// <summary>RB.</summary>
    internal required double BeamSlenderness { get; init; }

    /// <summary>FbE.</summary>
    internal required double BeamElasticPa { get; init; }

    /// <summary>CL.</summary>
    internal required double BeamFactor { get; init; }

    /// <summary>Fb1', with CL.</summary>
    internal required double EdgewisePa { get; init; }

    /// <summary>The interaction alone, without the other limits; infinite past buckling.</summary>
    internal required double InteractionRatio { get; init; }

    /// <summary>Meets a piece with forces.</summary>
    internal static WoodCheck Of(AdjustedWood wood, WoodMember member, WoodForces forces)
    {
        WoodSection section = wood.Section;
        double fc = Math.Max(0, -forces.AxialN) / section.AreaM2, ft = Math.Max(0, forces.AxialN) / section.AreaM2;
        double fb1 = Math.Abs(forces.EdgewiseNm) / section.EdgewiseM3, fb2 = Math.Abs(forces.FlatwiseNm) / section.FlatwiseM3;
        double fv = 1.5 * double.Hypot(forces.EdgewiseShearN, forces.FlatwiseShearN) / section.AreaM2;

        double elastic1 = WoodStability.ColumnElasticPa(wood.YoungMinPa, member.EdgewiseLengthM, section.WidthM);
        double elastic2 = WoodStability.ColumnElasticPa(wood.YoungMinPa, member.FlatwiseLengthM, section.ThicknessM);
        double slenderness = Math.Max(member.EdgewiseLengthM / section.WidthM, member.FlatwiseLengthM / section.ThicknessM);
        // Plies nailed or bolted together slip at their joints when they buckle about the axis between them.
        double slip = member.FlatwiseLengthM > 0 ? member.BuiltUp : 1;
        double columnFactor = Math.Min(WoodStability.ColumnFactor(elastic1, wood.CompressionPa), slip * WoodStability.ColumnFactor(elastic2, wood.CompressionPa));
        double compressionPa = columnFactor * wood.CompressionPa;

        bool turns = section.WidthM > section.ThicknessM && member.UnbracedEdgeM > 0;
        double effectiveM = turns ? WoodStability.BeamEffectiveLengthM(member.UnbracedEdgeM, section.WidthM, member.Load) : 0;
        double beamSlenderness = WoodStability.BeamSlenderness(effectiveM, section);
        double beamElastic = WoodStability.BeamElasticPa(wood.YoungMinPa, beamSlenderness);
        double beamFactor = WoodStability.BeamFactor(beamElastic, wood.EdgewisePa);
        double edgewisePa = beamFactor * wood.EdgewisePa;

        double interaction = fc > 0
            ? Compressed(fc / compressionPa, fb1 / edgewisePa, fb2 / wood.FlatwisePa, fc / elastic1, fc / elastic2, fb1 / beamElastic)
            : Math.Max((ft / wood.TensionPa) + (fb1 / wood.EdgewisePa) + (fb2 / wood.FlatwisePa), ((fb1 - ft) / edgewisePa) + (fb2 / wood.FlatwisePa));
        WoodLimitState main = (fc, ft) switch
        {
            ( > 0, _) => WoodLimitState.CompressionAndBending,
            (_, > 0) => WoodLimitState.TensionAndBending,
            _ => WoodLimitState.Bending,
        };
        var worst = (Ratio: interaction, Limit: main);
        Consider(fc / compressionPa, WoodLimitState.Compression);
        if (fc > 0) Consider((fc / elastic2) + Math.Pow(fb1 / beamElastic, 2), WoodLimitState.SidewaysBuckling);
        Consider(fv / wood.ShearPa, WoodLimitState.Shear);
        bool tooSlender = (fc > 0 && slenderness > WoodStability.MostSlenderness) || (fb1 > 0 && beamSlenderness > WoodStability.MostSlenderness);
        if (tooSlender) worst = (double.PositiveInfinity, WoodLimitState.TooSlender);

        return new WoodCheck
        {
            Utilisation = worst.Ratio,
            LimitState = worst.Limit,
            Wood = wood,
            CompressionStressPa = fc,
            TensionStressPa = ft,
            EdgewiseStressPa = fb1,
            FlatwiseStressPa = fb2,
            ShearStressPa = fv,
            ColumnSlenderness = slenderness,
            ColumnFactor = columnFactor,
            CompressionPa = compressionPa,
            EdgewiseElasticPa = elastic1,
            FlatwiseElasticPa = elastic2,
            BeamSlenderness = beamSlenderness,
            BeamElasticPa = beamElastic,
            BeamFactor = beamFactor,
            EdgewisePa = edgewisePa,
            InteractionRatio = interaction,
        };

        void Consider(double ratio, WoodLimitState limit)
        {
            if (ratio > worst.Ratio) worst = (ratio, limit);
        }
    }

    /// <inheritdoc/>
    public string Governs => LimitState switch
    {
        WoodLimitState.Compression => "compression",
        WoodLimitState.CompressionAndBending => "compression with bending",
        WoodLimitState.SidewaysBuckling => "turning sideways under compression and bending",
        WoodLimitState.Bending => "bending",
        WoodLimitState.TensionAndBending => "tension with bending",
        WoodLimitState.Shear => "shear along the grain",
        WoodLimitState.Bearing => "bearing across the grain",
        WoodLimitState.TooSlender => "slenderer than the standard allows",
    };

    /// <inheritdoc/>
    public ImmutableArray<WorkedValue> Worked =>
    [
        new("Fc*", Wood.CompressionPa, "Pa", "compression value before buckling"),
        new("le/d", ColumnSlenderness, "", "slenderness of the column"),
        new("CP", ColumnFactor, "", "factor of column stability"),
        new("Fc'", CompressionPa, "Pa", "compression value"),
        new("RB", BeamSlenderness, "", "slenderness of the beam"),
        new("CL", BeamFactor, "", "factor of beam stability"),
        new("Fb1'", EdgewisePa, "Pa", "bending value on edge"),
        new("Fb2'", Wood.FlatwisePa, "Pa", "bending value flat"),
        new("Ft'", Wood.TensionPa, "Pa", "tension value"),
        new("Fv'", Wood.ShearPa, "Pa", "shear value"),
        new("fc", CompressionStressPa, "Pa", "stress in compression"),
        new("ft", TensionStressPa, "Pa", "stress in tension"),
        new("fb1", EdgewiseStressPa, "Pa", "stress of bending on edge"),
        new("fb2", FlatwiseStressPa, "Pa", "stress of bending flat"),
        new("fv", ShearStressPa, "Pa", "stress in shear"),
    ];

    /// <inheritdoc/>
    public ImmutableArray<Formula> Formulas =>
        [AdjustedWood.Adjusted, WoodStability.Column, WoodStability.Beam, TensionStressPa > 0 ? TensionAndBending : Interaction, Shear];

    private static double Compressed(double axial, double edgewise, double flatwise, double buckling1, double buckling2, double turning)
    {
        double left1 = 1 - buckling1, left2 = 1 - buckling2 - (turning * turning);
        return (axial * axial) + Amplified(edgewise, left1) + Amplified(flatwise, left2);
    }

    private static double Amplified(double bending, double left) => bending <= 0 ? 0 : left <= 0 ? double.PositiveInfinity : bending / left;
}
