using Hoopwright.Strength.Models;

namespace Hoopwright.Tests.Strength.Models;

public sealed class TiesTests
{
    [Theory]
    [InlineData(1.0000001, 1, false)]
    [InlineData(1.00001, 1, true)]
    [InlineData(0, -1, true)]
    [InlineData(double.PositiveInfinity, 3, true)]
    [InlineData(double.PositiveInfinity, double.PositiveInfinity, false)]
    public void One_use_exceeds_another_by_more_than_last_digits(double use, double other, bool exceeds) => Assert.Equal(exceeds, Ties.Exceeds(use, other));

    [Theory]
    [InlineData(1.23456789, 1.23457)]
    [InlineData(-12345678.9, -12345700)]
    [InlineData(0.000123456789, 0.000123457)]
    [InlineData(0, 0)]
    [InlineData(double.PositiveInfinity, double.PositiveInfinity)]
    public void A_key_keeps_six_digits(double value, double key) => Assert.Equal(key, Ties.Key(value), 12);
}
