using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.AsBuilt;

/// <summary>
/// How surely readings of the tape are known. Where things were measured more than once, the spread of those readings tells;
/// until there are enough of them, the tape's own accuracy stands in.
/// </summary>
/// <param name="Deviation">Standard deviation of one reading.</param>
/// <param name="Degrees">Degrees of freedom it rests on; <see cref="Assumed"/> when it is the tape's.</param>
/// <param name="Repeats">How many readings were repeated ones.</param>
public sealed record MeasuringNoise(Length Deviation, int Degrees, int Repeats)
{
    /// <summary>Degrees of freedom of an assumed accuracy: as good as known.</summary>
    public const int Assumed = 1000;

    /// <summary>How surely limits are stated: nineteen times of twenty.</summary>
    public static Ratio Confidence { get; } = Ratio.FromValue(0.95);

    /// <summary>How the limit comes about.</summary>
    public static Formula Rule { get; } = new("±", "t · s, with t of Student for 0.95^(1/m) both sides, so that all m readings hold together", "m",
        new("Sidak, Rectangular confidence regions for the means of multivariate normal distributions, Journal of the American Statistical Association 62 (1967) 626", "", Standing.FromMemory));

    // Fewer repeats say too little of their own spread.
    private const int LeastDegrees = 6;

    /// <summary>True when it is the tape's accuracy, not the spread of what was measured.</summary>
    public bool IsAssumed => Degrees == Assumed;

    /// <summary>From the readings that count.</summary>
    /// <param name="measurements">What was measured.</param>
    public static MeasuringNoise Of(SiteMeasurements measurements)
    {
        ArgumentNullException.ThrowIfNull(measurements);
        double tapeM = measurements.Tolerances.Tape.Metres;
        double sumM2 = 0;
        int degrees = 0;
        foreach (Measurement each in measurements.Measured)
        {
            // What spreads by more was moved between readings.
            if (each.Counted.Length < 2 || each.Spread.Metres > 4 * tapeM) continue;
            double meanM = each.Counted.Average(reading => reading.Metres);
            sumM2 += each.Counted.Sum(reading => (reading.Metres - meanM) * (reading.Metres - meanM));
            degrees += each.Counted.Length - 1;
        }
        double assumedM = tapeM / StudentT.Limit(Confidence.Value, Assumed);
        return degrees >= LeastDegrees && sumM2 > 0
            ? new MeasuringNoise(Length.FromMetres(Math.Sqrt(sumM2 / degrees)), degrees, degrees)
            : new MeasuringNoise(Length.FromMetres(assumedM), Assumed, degrees);
    }

    /// <summary>
    /// Within what the longest of some measured lengths is known: no further off than the worst of the readings, since the longest moves by no
    /// more than the reading that moves most.
    /// </summary>
    /// <param name="readings">How many lengths; 1 or more.</param>
    public Length LimitOf(int readings)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(readings, 1);
        return Deviation * StudentT.Limit(Math.Pow(Confidence.Value, 1.0 / readings), Degrees);
    }
}
