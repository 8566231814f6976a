using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Layout;

/// <summary>Slips of the pen that could be built are told, and usual values are not.</summary>
public sealed class PlausibleTests
{
    [Theory]
    [InlineData("frame.span.unusual", "20 m", "48 ft", "", "")]
    [InlineData("frame.length.unusual", "20 ft", "48 in", "", "")]
    [InlineData("frame.bow-tube.thick", "20 ft", "48 ft", "\"bowTube\": { \"outside\": \"1.9 in\", \"wall\": \"0.3 in\" }", "")]
    [InlineData("site.wind.unusual", "20 ft", "48 ft", "", "\"site\": { \"wind\": \"105 m/s\" }")]
    [InlineData("site.wind.unusual", "20 ft", "48 ft", "", "\"site\": { \"wind\": \"50 m/s\" }, \"loads\": { \"standard\": \"en1991\" }")]
    [InlineData("site.ground-snow.unusual", "20 ft", "48 ft", "", "\"site\": { \"groundSnow\": \"300 psf\" }")]
    [InlineData("", "20 ft", "48 ft", "\"bowTube\": { \"outside\": \"1.9 in\", \"wall\": \"0.083 in\" }", "\"site\": { \"wind\": \"105 mph\", \"groundSnow\": \"50 psf\" }")]
    [InlineData("", "20 ft", "48 ft", "", "\"site\": { \"wind\": \"24 m/s\" }, \"loads\": { \"standard\": \"en1991\" }")]
    public void A_slip_is_told(string code, string span, string length, string frame, string rest)
    {
        string bow = span == "20 m" ? "\"shape\": \"round\", \"sideHeight\": \"2 m\", \"peakHeight\": \"9 m\"" : "\"shape\": \"round\", \"sideHeight\": \"4 ft\", \"peakHeight\": \"11 ft\"";
        Plan plan = SamplePlans.Simple(span, length, bow, frame, rest);
        string[] told = [.. TunnelPlanner.LayOut(plan, new Answers(UnitSystem.UsCustomary)).Diagnostics.Select(found => found.Code).Where(found => found.EndsWith(".unusual", StringComparison.Ordinal) || found.EndsWith(".thick", StringComparison.Ordinal))];
        Assert.Equal(code.Length == 0 ? [] : [code], told);
    }
}
