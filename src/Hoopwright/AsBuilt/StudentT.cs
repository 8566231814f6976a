namespace Hoopwright.AsBuilt;

/// <summary>Student's t distribution for whole degrees of freedom, in closed form: Abramowitz and Stegun, 26.7.3 and 26.7.4.</summary>
internal static class StudentT
{
    /// <summary>The chance that t lies within ±<paramref name="t"/>.</summary>
    /// <param name="t">0 or more.</param>
    /// <param name="degrees">Degrees of freedom; 1 or more.</param>
    public static double Within(double t, int degrees)
    {
        double theta = Math.Atan(t / Math.Sqrt(degrees)), sin = Math.Sin(theta), cos = Math.Cos(theta), term, sum;
        if (degrees % 2 == 0)
        {
            (term, sum) = (1, degrees >= 2 ? 1 : 0);
            for (int k = 2; k <= degrees - 2; k += 2) sum += term *= cos * cos * (k - 1) / k;
            return sin * sum;
        }
        if (degrees == 1) return 2 * theta / Math.PI;
        (term, sum) = (cos, cos);
        for (int k = 3; k <= degrees - 2; k += 2) sum += term *= cos * cos * (k - 1) / k;
        return 2 / Math.PI * (theta + (sin * sum));
    }

    /// <summary>The t within ± which a share of readings lies.</summary>
    /// <param name="share">Over 0 and under 1.</param>
    /// <param name="degrees">Degrees of freedom; 1 or more.</param>
    public static double Limit(double share, int degrees)
    {
        double low = 0, high = 1;
        while (Within(high, degrees) < share && high < 1e6) high *= 2;
        for (int halving = 0; halving < 100; halving++)
        {
            double middle = (low + high) / 2;
            if (Within(middle, degrees) < share) low = middle;
            else high = middle;
        }
        return (low + high) / 2;
    }
}
