using Hoopwright.Quantities;

namespace Hoopwright.Tests.Quantities;

/// <summary>Factors: NIST SP 811 (2008), appendix B.8, by exact definition of inch, pound and standard gravity.</summary>
public sealed class OtherUnitsTests
{
    [Theory]
    [InlineData("26 ft", "7.9248 m")]
    [InlineData("5' 6-1/2\"", "1.6891 m")]
    [InlineData("1/8 in", "3.2 mm")]
    [InlineData("1.9 in", "48.3 mm")]
    [InlineData("304.8 mm", "1' 0\"")]
    [InlineData("9 m", "29.5276 ft")]
    [InlineData("30 psf", "1.4364 kPa")]
    [InlineData("1.5 kPa", "31.33 psf")]
    [InlineData("50 ksi", "344.7 MPa")]
    [InlineData("235 MPa", "34.08 ksi")]
    [InlineData("105 mph", "46.94 m/s")]
    [InlineData("25 m/s", "55.9 mph")]
    [InlineData("60 °F", "15.6 °C")]
    [InlineData("-5 °C", "23 °F")]
    [InlineData("15 lb/ft", "218.9 N/m")]
    [InlineData("450 N", "101.2 lb")]
    [InlineData("80 lb", "36.29 kg")]
    public void A_quantity_is_written_in_the_other_system(string text, string other) => Assert.Equal(other, OtherUnits.Of(text));

    [Theory]
    [InlineData("")]
    [InlineData("26")]
    [InlineData("loam")]
    [InlineData("14 ga")]
    public void What_has_no_unit_of_either_system_stays(string text) => Assert.Null(OtherUnits.Of(text));
}
