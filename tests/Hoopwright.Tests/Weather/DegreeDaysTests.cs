using CsCheck;
using Hoopwright.Testing;
using Hoopwright.Weather;

namespace Hoopwright.Tests.Weather;

/// <summary>Degree days of single days, and the curve of winds.</summary>
public sealed class DegreeDaysTests
{
    private const string Lessons = "Agronomy 541 of Iowa State University and Ohio State University, growing degree days, worked examples";
    private const string Closed = "closed form, evaluated by an independent program";

    [Theory]
    [InlineData(90, 65, 25.5)]
    [InlineData(72, 46, 11)]
    [InlineData(63, 42, 6.5)]
    public void The_86_50_method_gives_the_worked_examples(double high, double low, double degreeDays) =>
        Published.Check(Lessons, $"{high}/{low} °F", degreeDays, DegreeDays.Cut(high, low, 50, 86), 1e-9, "exact");

    [Theory]
    [InlineData(90, 65, 27.5)]
    [InlineData(72, 46, 9)]
    [InlineData(63, 42, 2.5)]
    [InlineData(90, 48, 19)]
    public void The_plain_average_is_the_average(double high, double low, double degreeDays) =>
        Published.Check(Closed, $"{high}/{low} °F", degreeDays, DegreeDays.Middle(high, low, 50), 1e-9, "exact");

    [Theory]
    [InlineData(72, 46, 9.677)]
    [InlineData(63, 42, 4.687)]
    [InlineData(55, 35, 1.090)]
    [InlineData(90, 65, 27.5)]
    public void A_sine_over_the_base_gives_its_area(double high, double low, double degreeDays) =>
        Published.Check(Closed, $"{high}/{low} °F", degreeDays, DegreeDays.Sine(high, low, 50), 6e-4, "printed to 0.001");

    [Fact]
    public void The_sine_is_never_below_the_middle() =>
        Gen.Select(Gen.Double[-20, 40], Gen.Double[0, 25]).Sample((low, range) =>
            Assert.True(DegreeDays.Sine(low + range, low, 10) >= DegreeDays.Middle(low + range, low, 10) - 1e-9));

    [Fact]
    public void A_Weibull_curve_gives_back_its_own_mean_and_shape()
    {
        // Winds at even steps of chance of a curve with k 2 and c 5: their mean is 4.4311, and 18.11 % of them are at most 5 mph.
        double[] winds = [.. Enumerable.Range(0, 200_000).Select(step => 5 * Math.Pow(-Math.Log(1 - ((step + 0.5) / 200_000)), 0.5))];
        WindDistribution found = WindDistribution.Of(winds)!;
        Published.Check(Closed, "mean, m/s", 4.4311, found.MeanMps, 1e-3, "even steps instead of the curve itself");
        Published.Check(Closed, "k", 2, found.LikelyShape, 2e-3, "even steps instead of the curve itself");
        Published.Check(Closed, "c, m/s", 5, found.LikelyScaleMps, 2e-3, "even steps instead of the curve itself");
        Published.Check(Closed, "part at most 5 mph", 0.1811, winds.Count(wind => wind <= 2.2352) / 200_000.0, 1e-4, "last printed digit");
        Published.Check(Closed, "Γ(1.5)", Math.Sqrt(Math.PI) / 2, WindDistribution.Gamma(1.5), 1e-12, "exact");
    }
}
