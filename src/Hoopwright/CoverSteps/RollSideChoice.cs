using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Sources;

namespace Hoopwright.CoverSteps;

/// <summary>Chooses the side on which the roof film is rolled out: to windward, so that the wind helps it over; else uphill, so that it is pulled down.</summary>
internal static class RollSideChoice
{
    // Wind nearer to the length than this helps neither side; a slope under this is none to a crew. Common practice, no source.
    private const double AlongDeg = 15, LeastFall = 0.02;

    internal static RollSide Of(Tunnel tunnel)
    {
        Plan plan = tunnel.Plan;
        if (plan is { CoverDay.WindFrom: { } wind, Site.FrontFaces: { } faces })
        {
            // Entering by the front one looks the other way, and left is a quarter turn back from that.
            double off = Math.IEEERemainder(wind.Value.Degrees - (faces.Value.Degrees + 90), 360);
            if (Math.Abs(Math.Abs(off) - 90) > AlongDeg)
                return new(Math.Abs(off) < 90, Phrase.Of("the wind comes from there, and helps the film over"), Citation.CommonPractice);
        }
        double fall = plan.Site.FallAcross?.Value.Value ?? 0;
        return Math.Abs(fall) >= LeastFall
            ? new(fall > 0, Phrase.Of("it is uphill, so that the film is pulled downhill"), Citation.CommonPractice)
            : new(true, Phrase.Of("either side will do: take the one that the wind comes from on the day"), Citation.CommonPractice);
    }
}
