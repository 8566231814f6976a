namespace Hoopwright.Strength.Wood;

/// <summary>The forces at one place of a piece of wood.</summary>
/// <param name="AxialN">Tension positive.</param>
/// <param name="EdgewiseNm">Moment about the strong axis.</param>
/// <param name="FlatwiseNm">Moment about the weak axis.</param>
/// <param name="EdgewiseShearN">Shear along the wide side.</param>
/// <param name="FlatwiseShearN">Shear along the narrow side.</param>
internal readonly record struct WoodForces(double AxialN, double EdgewiseNm = 0, double FlatwiseNm = 0, double EdgewiseShearN = 0, double FlatwiseShearN = 0);
