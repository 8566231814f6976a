using System.Collections.Immutable;
using Hoopwright.Sources;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Soil;

/// <summary>A screw anchor judged by the torque at which it went in. A field pull test takes its place.</summary>
internal sealed record ScrewAnchor : ICheck
{
    internal static readonly Formula ByTorque = new("Q", "Kt·T; Kt 10/ft to 1.75 in of shaft, 9/ft to 2.875 in, 7/ft to 3.5 in", "N",
        Register.HelicalPiles.At("torque correlation; safety factor 2.0 with pull tests, 3.0 without, common practice"));

    /// <inheritdoc/>
    public required double Utilisation { get; init; }

    /// <summary>Kt, per metre.</summary>
    internal required double TorqueFactorPerM { get; init; }

    /// <summary>Q at which it gives way.</summary>
    internal required double UltimateN { get; init; }

    /// <summary>What may be put on it.</summary>
    internal required double AllowedN { get; init; }

    /// <summary>Kt by the shaft; null for shafts thicker than the rule covers.</summary>
    internal static double? TorqueFactorOf(double shaftM) => shaftM switch
    {
        <= 1.75 * InchM => 10 / FootM,
        <= 2.875 * InchM => 9 / FootM,
        <= 3.5 * InchM => 7 / FootM,
        _ => null,
    };

    /// <summary>Meets an anchor with the pull on it.</summary>
    /// <param name="torqueFactorPerM">Kt, of the maker or by <see cref="TorqueFactorOf"/>.</param>
    /// <param name="torqueNm">T at the end of screwing in, measured; above 0.</param>
    /// <param name="isTested">True where anchors were pulled on site.</param>
    /// <param name="pullN">0 or more.</param>
    internal static ScrewAnchor Of(double torqueFactorPerM, double torqueNm, bool isTested, double pullN)
    {
        double ultimateN = torqueFactorPerM * torqueNm, allowedN = ultimateN / (isTested ? 2.0 : 3.0);
        return new ScrewAnchor { Utilisation = pullN <= 0 ? 0 : pullN / allowedN, TorqueFactorPerM = torqueFactorPerM, UltimateN = ultimateN, AllowedN = allowedN };
    }

    /// <inheritdoc/>
    public string Governs => "pulling out of the ground";

    /// <inheritdoc/>
    public ImmutableArray<WorkedValue> Worked =>
    [
        new("Kt", TorqueFactorPerM, "1/m", "pull for each torque"),
        new("Q", UltimateN, "N", "pull at which it gives way"),
        new("R", AllowedN, "N", "pull that may be put on it"),
    ];

    /// <inheritdoc/>
    public ImmutableArray<Formula> Formulas => [ByTorque];
}
