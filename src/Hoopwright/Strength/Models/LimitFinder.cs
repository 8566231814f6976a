using System.Collections.Immutable;
using Hoopwright.Strength.Steel;

namespace Hoopwright.Strength.Models;

/// <summary>Finds by halving the least snow or wind at which any of some bows reaches its limit under any of some loads.</summary>
internal static class LimitFinder
{
    // Half a per mille of the load: far finer than any load or strength is known.
    private const double Share = 5e-4;

    /// <summary>Finds the limit.</summary>
    /// <param name="bows">The bows.</param>
    /// <param name="cases">The loads; each has something to scale.</param>
    /// <param name="mostPa">Where to stop looking.</param>
    /// <param name="method">How strengths are taken.</param>
    /// <param name="grade">Another steel than the bows' own; null for their own.</param>
    /// <param name="steel">The bows' tube.</param>
    internal static BowLimit Find(ImmutableArray<BowTrial> bows, ImmutableArray<LoadedCase> cases, double mostPa, DesignMethod method, BowSteel steel, SteelGrade? grade = null)
    {
        BowSteel used = grade is null ? steel : steel with { Grade = grade };
        BowLimit least = BowLimit.None;
        double reachPa = mostPa;
        Span<BowTerm> room = stackalloc BowTerm[LoadedCase.MostTerms];
        foreach (BowTrial bow in bows)
        {
            foreach (LoadedCase each in cases.DistinctBy(bow.KeyOf))
            {
                foreach (int lean in bow.LeansOf(each.At(reachPa, room)))
                {
                    // Loads that do not reach the limit at the least snow or wind found so far cannot lower it.
                    BowVerdict verdict = bow.Try(each.At(reachPa, room), lean, method, used);
                    if (verdict.Utilisation < 1)
                        continue;
                    double lowPa = 0, highPa = reachPa;
                    BowVerdict atHigh = verdict;
                    while (highPa - lowPa > Share * highPa && highPa > 1e-3)
                    {
                        double middlePa = Middle(lowPa, highPa, atHigh);
                        BowVerdict tried = bow.Try(each.At(middlePa, room), lean, method, used);
                        if (tried.Utilisation < 1)
                            lowPa = middlePa;
                        else
                            (highPa, atHigh) = (middlePa, tried);
                    }
                    reachPa = highPa;
                    least = new BowLimit(highPa, each, lean, bow.Place.Number, atHigh);
                }
            }
        }
        return least;
    }

    // Near to straight in the load: aim a little under where the line from nothing meets 1, and halve when it buckled.
    private static double Middle(double lowPa, double highPa, BowVerdict atHigh)
    {
        if (!double.IsFinite(atHigh.Utilisation) || atHigh.Utilisation > 20) return (lowPa + highPa) / 2;
        double aimPa = highPa / atHigh.Utilisation;
        double least = lowPa + (0.1 * (highPa - lowPa)), most = highPa - (0.1 * (highPa - lowPa));
        return Math.Clamp(aimPa, least, most);
    }
}
