using Hoopwright.Sources;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Soil;

/// <summary>Soil rubbing on the side of a post.</summary>
internal static class Shaft
{
    internal static readonly Formula SandFriction = new("Q", "π·D·L·γ·z·K·tan δ; z to the middle of L", "N", Register.SoilMechanics.At("shaft friction in sand"));

    internal static readonly Formula ClayAdhesion = new("Q", "π·D·L·α·su", "N", Register.SoilMechanics.At("shaft adhesion in clay"));

    internal static readonly Formula CodeFriction = new("f", "1/6 of the allowable bearing, at most 500 psf", "Pa", Register.Ibc2021.At("section 1810.3.3.1.4"));

    /// <summary>Ultimate friction in sand or gravel.</summary>
    /// <param name="diameterM">D.</param>
    /// <param name="fromM">Depth at which the counted part begins.</param>
    /// <param name="toM">Depth at which it ends; at least <paramref name="fromM"/>.</param>
    /// <param name="unitWeightNPerM3">γ.</param>
    /// <param name="friction">K tan δ.</param>
    internal static double SandN(double diameterM, double fromM, double toM, double unitWeightNPerM3, double friction) =>
        Math.PI * diameterM * (toM - fromM) * unitWeightNPerM3 * ((fromM + toM) / 2) * friction;

    /// <summary>Ultimate adhesion in clay.</summary>
    /// <param name="diameterM">D.</param>
    /// <param name="lengthM">L counted.</param>
    /// <param name="adhesionPa">α su.</param>
    internal static double ClayN(double diameterM, double lengthM, double adhesionPa) => Math.PI * diameterM * lengthM * adhesionPa;

    /// <summary>Allowable friction of a deep foundation by the building code, without a test.</summary>
    internal static double CodeFrictionPa(SoilValues soil) => Math.Min(soil.BearingPa / 6, 500 * PsfPa);
}
