using Hoopwright.Geometry;
using Hoopwright.Quantities;
using Hoopwright.Strength.Steel;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Tests.Strength.Steel;

/// <summary>Tubes and units that the tests of steel share.</summary>
internal static class Tubes
{
    internal const double KipN = 1000 * PoundN;
    internal const double KipInNm = 1000 * PoundN * InchM;
    internal const double KipFtNm = 1000 * PoundN * FootM;

    internal static TubeSection Round(double outsideIn, double wallIn) => TubeSection.Of(new RoundTube(Length.FromInches(outsideIn), Length.FromInches(wallIn)));

    internal static SquareTube Square(double outsideIn, double wallIn) => new(Length.FromInches(outsideIn), Length.FromInches(wallIn));

    internal static SteelMaterial Aisc(double yieldKsi, double ultimateKsi = 65) => new(yieldKsi * KsiPa, ultimateKsi * KsiPa, SteelMaterial.AiscYoungPa);

    internal static SteelMaterial Aisi(double yieldKsi) => new(yieldKsi * KsiPa, 65 * KsiPa, SteelMaterial.AisiYoungPa);

    internal static double FePa(TubeSection tube, SteelMaterial steel, double effectiveLengthIn) =>
        Buckling.ElasticStressPa(steel.YoungPa, effectiveLengthIn * InchM, tube.GyrationM);
}
