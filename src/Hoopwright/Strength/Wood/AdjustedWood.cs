using Hoopwright.Sources;

namespace Hoopwright.Strength.Wood;

/// <summary>Design values of one piece under its conditions, all but the factors of stability.</summary>
internal sealed record AdjustedWood
{
    internal static readonly Formula Adjusted = new("F'",
        "F·CD·CM·Ct·CF·Cfu·Ci·Cr; Fc⊥' = Fc⊥·CM·Ct·Ci·Cb; E' = E·CM·Ct·Ci", "Pa", Register.Nds2018.At("table 4.3.1"));

    /// <summary>The values before adjustment.</summary>
    internal required WoodValues Reference { get; init; }

    /// <summary>The section.</summary>
    internal required WoodSection Section { get; init; }

    /// <summary>The conditions.</summary>
    internal required WoodConditions Conditions { get; init; }

    /// <summary>Fb*, on edge, before CL.</summary>
    internal required double EdgewisePa { get; init; }

    /// <summary>Fb2', flat.</summary>
    internal required double FlatwisePa { get; init; }

    /// <summary>Ft'.</summary>
    internal required double TensionPa { get; init; }

    /// <summary>Fv'.</summary>
    internal required double ShearPa { get; init; }

    /// <summary>Fc⊥', before Cb.</summary>
    internal required double BearingPa { get; init; }

    /// <summary>Fc*, before CP.</summary>
    internal required double CompressionPa { get; init; }

    /// <summary>E'.</summary>
    internal required double YoungPa { get; init; }

    /// <summary>Emin'.</summary>
    internal required double YoungMinPa { get; init; }

    /// <summary>Applies the factors to reference values.</summary>
    internal static AdjustedWood Of(WoodValues values, WoodSection section, WoodConditions conditions)
    {
        double duration = WoodFactors.Duration(conditions.Duration);
        double hot = WoodFactors.TemperatureOfStrength(conditions.Temperature, conditions.IsWet);
        double hotStiff = WoodFactors.TemperatureOfStiffness(conditions.Temperature);
        double incised = conditions.IsIncised ? WoodFactors.IncisedStrength : 1;
        double incisedYoung = conditions.IsIncised ? WoodFactors.IncisedYoung : 1;
        double repetitive = conditions.IsRepetitive && !section.IsTimber ? WoodFactors.Repetitive : 1;
        var size = WoodFactors.Size(values, section);
        WetFactors wet = conditions.IsWet ? WoodFactors.Wet(values, section, size) : WetFactors.None;
        double edgewisePa = values.BendingPa * duration * wet.Bending * hot * size.Bending * incised * repetitive;
        return new AdjustedWood
        {
            Reference = values,
            Section = section,
            Conditions = conditions,
            EdgewisePa = edgewisePa,
            FlatwisePa = edgewisePa * WoodFactors.FlatUse(section),
            TensionPa = values.TensionPa * duration * wet.Tension * hotStiff * size.Tension * incised,
            ShearPa = values.ShearPa * duration * wet.Shear * hot * incised,
            BearingPa = values.BearingPa * wet.Bearing * hot,
            CompressionPa = values.CompressionPa * duration * wet.Compression * hot * size.Compression * incised,
            YoungPa = values.YoungPa * wet.Young * hotStiff * incisedYoung,
            YoungMinPa = values.YoungMinPa * wet.Young * hotStiff * incisedYoung,
        };
    }
}
