namespace Hoopwright.Quantities;

/// <summary>
/// The Birmingham wire gauge as tube makers use it for walls. Not a sheet gauge: 14 gauge tube is 0.083 in, but 14 gauge
/// plain sheet is 0.0747 in and galvanised sheet 0.0785 in. Figures from memory of Machinery's Handbook, wire gauge tables.
/// </summary>
public static class TubeGauge
{
    /// <summary>The table's name, with its standing.</summary>
    public const string TableName = "Birmingham tube gauge (BWG), Machinery's Handbook, from memory";

    /// <summary>The lowest number, with the thickest wall.</summary>
    public const int Thickest = 10;

    /// <summary>The highest number, with the thinnest wall.</summary>
    public const int Thinnest = 20;

    // Inches, for gauges 10 to 20.
    private static readonly double[] WallsIn = [0.134, 0.120, 0.109, 0.095, 0.083, 0.072, 0.065, 0.058, 0.049, 0.042, 0.035];

    /// <summary>The wall for a gauge number; null outside 10 to 20.</summary>
    public static TubeWall? Find(int gauge) => gauge is >= Thickest and <= Thinnest
        ? new TubeWall(Length.FromInches(WallsIn[gauge - Thickest]), gauge)
        : null;
}
