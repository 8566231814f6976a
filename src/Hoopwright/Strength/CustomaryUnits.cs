namespace Hoopwright.Strength;

/// <summary>SI values of the units in which standards print coefficients that have a unit. NIST SP 811 (2008), B.8; exact.</summary>
internal static class CustomaryUnits
{
    internal const double InchM = 0.0254;
    internal const double FootM = 0.3048;
    internal const double PoundN = 4.4482216152605;
    internal const double PsiPa = PoundN / (InchM * InchM);
    internal const double KsiPa = 1000 * PsiPa;
    internal const double PsfPa = PoundN / (FootM * FootM);

    /// <summary>Pound-force a cubic foot, in N/m³; also lb/ft² a foot of depth.</summary>
    internal const double PcfNPerM3 = PoundN / (FootM * FootM * FootM);
    internal const double PoundPerInchNPerM = PoundN / InchM;
}
