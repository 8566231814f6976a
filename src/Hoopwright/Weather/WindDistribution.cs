namespace Hoopwright.Weather;

/// <summary>How often the wind blows how hard: mean, spread, calms, and the curve of Weibull by two methods.</summary>
/// <param name="MeanMps">Mean of all hours, m/s.</param>
/// <param name="DeviationMps">Standard deviation, m/s.</param>
/// <param name="CalmPart">Part of the hours without wind.</param>
/// <param name="MomentShape">k from mean and deviation: k = (s/u)^-1.086, Justus and others (1978), from memory.</param>
/// <param name="MomentScaleMps">c from the mean: u/Γ(1 + 1/k).</param>
/// <param name="LikelyShape">k of the greatest likelihood, of the hours with wind.</param>
/// <param name="LikelyScaleMps">c of the greatest likelihood.</param>
internal sealed record WindDistribution(double MeanMps, double DeviationMps, double CalmPart, double MomentShape, double MomentScaleMps, double LikelyShape, double LikelyScaleMps)
{
    private const double ShapeTolerance = 1e-10;

    /// <summary>Of some winds, m/s; null when they are all alike or fewer than two.</summary>
    internal static WindDistribution? Of(IEnumerable<double> winds)
    {
        double[] known = [.. winds.Where(wind => !double.IsNaN(wind))], blowing = [.. known.Where(wind => wind > 0)];
        if (blowing.Length < 2 || blowing.Max() == blowing.Min()) return null;
        double mean = known.Average(), deviation = Math.Sqrt(known.Sum(wind => (wind - mean) * (wind - mean)) / known.Length);
        double shape = Math.Pow(deviation / mean, -1.086);
        double likely = LikelyShapeOf(blowing, shape);
        double scale = Math.Pow(blowing.Average(wind => Math.Pow(wind, likely)), 1 / likely);
        return new(mean, deviation, (known.Length - blowing.Length) / (double)known.Length, shape, mean / Gamma(1 + (1 / shape)), likely, scale);
    }

    /// <summary>Γ for arguments from 1 to 2 and around, by Lanczos' sum (g = 7, nine terms), from memory.</summary>
    internal static double Gamma(double x)
    {
        ReadOnlySpan<double> terms =
        [
            0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059, 12.507343278686905,
            -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
        ];
        double sum = terms[0], at = x - 1;
        for (int term = 1; term < terms.Length; term++) sum += terms[term] / (at + term);
        double t = at + 7.5;
        return Math.Sqrt(2 * Math.PI) * Math.Pow(t, at + 0.5) * Math.Exp(-t) * sum;
    }

    // The root of the derivative of the likelihood by k, which falls all along; halved down to it.
    private static double LikelyShapeOf(double[] winds, double near)
    {
        double meanLog = winds.Average(Math.Log), low = near / 8, high = near * 8;
        while (high - low > ShapeTolerance)
        {
            double k = (low + high) / 2, powers = 0, logs = 0;
            foreach (double wind in winds)
            {
                double power = Math.Pow(wind, k);
                (powers, logs) = (powers + power, logs + (power * Math.Log(wind)));
            }
            if ((logs / powers) - (1 / k) - meanLog < 0) low = k;
            else high = k;
        }
        return (low + high) / 2;
    }
}
