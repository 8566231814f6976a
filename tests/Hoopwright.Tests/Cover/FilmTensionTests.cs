using CsCheck;
using Hoopwright.Cover.Pull;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Cover;

public sealed class FilmTensionTests
{
    private const string Membrane = "membrane and cable formulas, evaluated by an independent program";

    [Theory]
    [InlineData(500, 3.048, 150e-6, 1524.0, 10.16e6)]
    [InlineData(1000, 3.048, 150e-6, 3048, 20.32e6)]
    [InlineData(600, 4.572, 200e-6, 2743.2, 13.716e6)]
    public void Film_bent_over_an_arch(double pressurePa, double radiusM, double thicknessM, double pullNPerM, double stressPa)
    {
        Published.Check(Membrane, "T, N/m", pullNPerM, FilmTension.HoopNPerM(pressurePa, radiusM), 0.05, "last printed digit");
        Published.Check(Membrane, "σ, Pa", stressPa, FilmTension.HoopNPerM(pressurePa, radiusM) / thicknessM, 600, "last printed digit");
    }

    [Theory]
    [InlineData(0.03, 3100.8, 0.00161)]
    [InlineData(0.05, 1860.5, 0.00448)]
    [InlineData(0.10, 930.2, 0.01792)]
    public void Film_bulging_between_two_bows(double sagM, double pullNPerM, double strain)
    {
        Published.Check(Membrane, "T, N/m", pullNPerM, FilmTension.SaggingNPerM(500, 1.22, sagM), 0.06, "last printed digit");
        Published.Check(Membrane, "strain", strain, FilmTension.SaggingStrain(1.22, sagM), 0.000006, "last printed digit");
    }

    [Theory]
    [InlineData(500, 774.8, 0.1201, 0.0258)]
    [InlineData(1000, 1229.9, 0.1513, 0.0410)]
    public void Film_that_stretches_between_two_bows(double pressurePa, double pullNPerM, double sagM, double strain)
    {
        double pull = FilmTension.ElasticNPerM(30_000, pressurePa, 1.22);
        Published.Check(Membrane, "T, N/m", pullNPerM, pull, 0.06, "last printed digit");
        double sag = pressurePa * 1.22 * 1.22 / (8 * pull);
        Published.Check(Membrane, "sag, m", sagM, sag, 0.00006, "last printed digit");
        Published.Check(Membrane, "strain", strain, FilmTension.SaggingStrain(1.22, sag), 0.00006, "last printed digit");
        Assert.Equal(pull, FilmTension.ElasticNPerM(30_000, pressurePa, 1.22, 0), 1e-9 * pull);
    }

    [Fact]
    public void Pull_in_the_film_beforehand_solves_its_cubic_and_adds_less_than_itself() =>
        Gen.Select(Gen.Double[5_000, 100_000], Gen.Double[1, 3000], Gen.Double[0.5, 3], Gen.Double[0, 2000]).Sample((stiffness, pressure, span, before) =>
        {
            double t = FilmTension.ElasticNPerM(stiffness, pressure, span, before);
            double right = stiffness * pressure * pressure * span * span / 24;
            Assert.Equal(1, ((t * t * t) - (before * t * t)) / right, 1e-6);
            Assert.InRange(t, before, before + FilmTension.ElasticNPerM(stiffness, pressure, span) + 1e-9);
        });

    [Fact]
    public void Film_that_cools()
    {
        double pullNPerM = FilmSheet.PullNPerM(2e-4 * 30, FilmSheet.MeasuredAtK, 150e-6);
        Published.Check(Membrane, "both ways, MPa", 2.182, pullNPerM / 150e-6 / 1e6, 0.0006, "last printed digit; E 200 MPa, ν 0.45");
        Published.Check(Membrane, "one way, kN/m", 0.18, pullNPerM * (1 - 0.45) / 1000, 0.0006, "last printed digit");
    }
}
