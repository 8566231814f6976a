using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Sources;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Strength.Steel;

/// <summary>Steels that tunnel tube is made of. What a seller does not state is the first row.</summary>
internal static class SteelGrades
{
    // Expected over promised yield, Ry: 1.6 for pipe to A53, 1.4 for tube to A500.
    private static readonly Citation Expected = Register.Aisc341.At("table A3.1, Ry 1.6 for A53 pipe, 1.4 for A500 tube");

    private static readonly Citation Trade = new("High tunnel construction tips, University of Missouri Extension", "galvanized pipe of 50/55 rating, read as ksi of yield and strength", Standing.FromMemory);

    /// <summary>Nothing known of the tube: the weakest fence pipe is taken.</summary>
    internal static SteelGrade Unknown { get; } = new("unknown steel tube", 30 * KsiPa, 45 * KsiPa, 30 * KsiPa, 50 * KsiPa, Citation.FromMemory, Citation.FromMemory);

    internal static SteelGrade FencePipe { get; } = Promised("fence pipe, regular grade (ASTM F1083)", 30, 48, 30, 50, "F1083, regular grade", Citation.FromMemory);

    internal static SteelGrade StrongFencePipe { get; } = Promised("fence pipe, high strength (ASTM F1083, F1043 group IC)", 50, 55, 50, 60, "F1083 high strength, F1043 group IC", Citation.FromMemory);

    internal static SteelGrade TunnelTube { get; } = new("galvanized tunnel tube sold as 50/55", 50 * KsiPa, 55 * KsiPa, 45 * KsiPa, 60 * KsiPa, Trade, Citation.FromMemory);

    internal static SteelGrade A53 { get; } = Promised("pipe, ASTM A53 grade B", 35, 60, 35, 56, "A53 grade B", Expected);

    internal static SteelGrade A500B { get; } = Promised("round tube, ASTM A500 grade B", 42, 58, 42, 58.8, "A500 grade B, round; 46 ksi in the 2021 edition", Expected);

    internal static SteelGrade A500C { get; } = Promised("round tube, ASTM A500 grade C", 46, 62, 46, 64.4, "A500 grade C, round; 50 ksi in the 2021 edition", Expected);

    internal static SteelGrade S235 { get; } = European("tube, S235 (EN 10219)", 235e6, 360e6);

    internal static SteelGrade S275 { get; } = European("tube, S275 (EN 10219)", 275e6, 430e6);

    internal static SteelGrade S355 { get; } = European("tube, S355 (EN 10219)", 355e6, 510e6);

    internal static ImmutableArray<SteelGrade> All { get; } = [Unknown, FencePipe, StrongFencePipe, TunnelTube, A53, A500B, A500C, S235, S275, S355];

    /// <summary>The next stronger steel that round tube is commonly sold in where such units are used; null past the strongest.</summary>
    /// <param name="yield">Yield stress of the steel there is.</param>
    /// <param name="units">Which standards are usual.</param>
    internal static SteelGrade? Stronger(Pressure yield, UnitSystem units)
    {
        ImmutableArray<SteelGrade> rising = units switch { UnitSystem.UsCustomary => [A53, A500B, A500C, StrongFencePipe], UnitSystem.Metric => [S235, S275, S355] };
        // A hair more is the same steel as another seller rounds it.
        return rising.FirstOrDefault(grade => grade.YieldPa > yield.Pascals * 1.02);
    }

    private static SteelGrade Promised(string name, double yieldKsi, double ultimateKsi, double leastKsi, double mostKsi, string place, Citation span) =>
        new(name, yieldKsi * KsiPa, ultimateKsi * KsiPa, leastKsi * KsiPa, mostKsi * KsiPa, Register.TubeProductStandards.At(place), span);

    // Mills deliver a quarter above what they promise, about.
    private static SteelGrade European(string name, double yieldPa, double ultimatePa) =>
        new(name, yieldPa, ultimatePa, yieldPa, 1.25 * yieldPa, Register.En10219.At("table of mechanical properties, wall up to 16 mm; strength for walls under 3 mm"), Citation.FromMemory);
}
