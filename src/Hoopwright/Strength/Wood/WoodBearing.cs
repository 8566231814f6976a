using System.Collections.Immutable;
using Hoopwright.Sources;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Wood;

/// <summary>Wood pressed across its grain, such as a header on a jamb.</summary>
internal sealed record WoodBearing : ICheck
{
    internal static readonly Formula AreaFactor = new("Cb", "(lb + 0.375 in)/lb for lb under 6 in and at least 3 in from the end, else 1", "", Register.Nds2018.At("Eq. 3.10-2"));

    internal static readonly Formula Stress = new("fc⊥", "R/(b·lb)", "Pa", Register.Nds2018.At("section 3.10.2"));

    /// <inheritdoc/>
    public required double Utilisation { get; init; }

    /// <summary>fc⊥.</summary>
    internal required double StressPa { get; init; }

    /// <summary>Fc⊥', with Cb.</summary>
    internal required double AllowedPa { get; init; }

    /// <summary>Cb.</summary>
    internal required double Factor { get; init; }

    /// <summary>Meets a bearing with its force.</summary>
    /// <param name="wood">Design values of the piece pressed across its grain.</param>
    /// <param name="forceN">R; 0 or more.</param>
    /// <param name="lengthM">lb, along the grain; above 0.</param>
    /// <param name="breadthM">Across the grain; above 0.</param>
    /// <param name="fromEndM">From the end of the piece to the bearing.</param>
    internal static WoodBearing Of(AdjustedWood wood, double forceN, double lengthM, double breadthM, double fromEndM)
    {
        double factor = lengthM < 6 * InchM && fromEndM >= 3 * InchM ? (lengthM + (0.375 * InchM)) / lengthM : 1;
        double stressPa = forceN / (lengthM * breadthM), allowedPa = factor * wood.BearingPa;
        return new WoodBearing { Utilisation = stressPa / allowedPa, StressPa = stressPa, AllowedPa = allowedPa, Factor = factor };
    }

    /// <inheritdoc/>
    public string Governs => "bearing across the grain";

    /// <inheritdoc/>
    public ImmutableArray<WorkedValue> Worked =>
    [
        new("fc⊥", StressPa, "Pa", "stress under the bearing"),
        new("Cb", Factor, "", "factor of the bearing length"),
        new("Fc⊥'", AllowedPa, "Pa", "bearing value"),
    ];

    /// <inheritdoc/>
    public ImmutableArray<Formula> Formulas => [AdjustedWood.Adjusted, AreaFactor, Stress];
}
