using CsCheck;
using Hoopwright.AsBuilt;
using Hoopwright.Cover;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Testing;
using static Hoopwright.Tests.AsBuilt.SiteBookSamples;

namespace Hoopwright.Tests.AsBuilt;

public sealed class MeasuringNoiseTests
{
    private const string TableOfT = "table of Student's t, any handbook of statistics, from memory";

    [Theory]
    [InlineData(0.95, 1, 12.706)]
    [InlineData(0.95, 2, 4.303)]
    [InlineData(0.99, 5, 4.032)]
    [InlineData(0.95, 10, 2.228)]
    [InlineData(0.95, 30, 2.042)]
    [InlineData(0.95, 1000, 1.962)]
    public void Limits_of_t_are_the_printed_ones(double share, int degrees, double printed) =>
        Published.Check(TableOfT, $"t for {share} both sides, {degrees} degrees of freedom", printed, StudentT.Limit(share, degrees), 0.0006, "printed to three decimals");

    /// <summary>
    /// Synthetic tunnels: bows that came longer or shorter, sides that are off, and readings with noise, rounded to sixteenths as a tape is read.
    /// Film must come within 1/4 in of what truly stands, and within the stated limit as often as is stated.
    /// </summary>
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void Film_comes_within_a_quarter_inch_of_what_truly_stands_and_within_the_stated_limit_as_often_as_stated(int readings)
    {
        const int Tunnels = 200;
        const double NoiseIn = 1.0 / 16, QuarterIn = 0.25;
        Plan plan = SamplePlans.Example("round-14ft");
        Tunnel planned = SamplePlans.LayOut(plan);
        int bows = planned.Stations.Length;
        double overIn = planned.Bow.FilmLine.Length.Inches, alongIn = planned.Length.Inches;
        int tried = 0, within = 0;
        double squares = 0;
        Gen.Select(Gen.Double[-6, 6], Normal.Array[bows], Normal.Array[2], Normal.Array[(bows + 2) * readings]).Sample((kit, each, sides, noise) =>
        {
            double[] trueOver = [.. each.Select(off => overIn + kit + (off * 0.4))];
            double[] trueSides = [.. sides.Select(off => alongIn + (off * 0.75))];
            int next = 0;
            var book = new List<(string Of, string Value)>();
            for (int reading = 0; reading < readings; reading++)
            {
                for (int bow = 0; bow < bows; bow++) book.Add((MeasureNames.BowLength(bow + 1), Read(trueOver[bow])));
                book.Add((MeasureNames.Square("left"), Read(trueSides[0])));
                book.Add((MeasureNames.Square("right"), Read(trueSides[1])));
            }
            AsBuiltOutcome outcome = AsBuiltPlanner.LayOut(With(plan, [.. book]), new Answers(UnitSystem.UsCustomary));
            Tunnel standing = outcome.Tunnel!;
            AsBuiltTunnel built = outcome.AsBuilt!;
            CoverPiece roof = CoverPlanner.Plan(standing, new Answers(UnitSystem.UsCustomary)).Plan.Pieces[0];
            double along = roof.AlongParts[0].Length.Inches - trueSides.Max();
            // What the film lies on over the bow: the bow's own length, whatever the tails.
            double over = standing.Bow.FilmLine.Length.Inches - trueOver.Max();
            Assert.InRange(along, -QuarterIn, QuarterIn);
            Assert.InRange(over, -QuarterIn, QuarterIn);
            Assert.Equal(readings == 1, built.Noise.IsAssumed);
            squares += noise.Average(off => off * off) / Tunnels;
            tried += 2;
            if (Math.Abs(along) <= built.AlongWithin!.Value.Inches) within++;
            if (Math.Abs(over) <= built.OverBowWithin!.Value.Inches) within++;
            return true;

            string Read(double trueIn) => (Math.Round((trueIn + (noise[next++] * NoiseIn)) * 16) / 16).ToString("0.####", System.Globalization.CultureInfo.InvariantCulture) + " in";
        }, iter: Tunnels, threads: 1);
        Assert.InRange(squares, 0.9, 1.1);
        Assert.True(within >= MeasuringNoise.Confidence.Value * tried, $"{within} of {tried} lay within the stated limit.");
    }

    /// <summary>Evenly spread over nought to one: doubles drawn as such favour the ends.</summary>
    private static Gen<double> Even { get; } = Gen.Int[0, 999_999].Select(part => (part + 0.5) / 1_000_000);

    /// <summary>Standard normal values by Box and Muller, kept within three and a half so that the quarter inch cannot fail by ill luck alone.</summary>
    private static Gen<double> Normal { get; } = Gen.Select(Even, Even, (one, two) => Math.Clamp(Math.Sqrt(-2 * Math.Log(one)) * Math.Cos(2 * Math.PI * two), -3.5, 3.5));
}
