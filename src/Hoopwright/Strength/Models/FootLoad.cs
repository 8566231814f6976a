namespace Hoopwright.Strength.Models;

/// <summary>What a foot of a bow puts on its post under a combination.</summary>
/// <param name="Case">The combination.</param>
/// <param name="Bow">Number of the bow.</param>
/// <param name="Right">True for the right foot.</param>
/// <param name="PullN">Upwards on the post; negative where the bow presses down.</param>
/// <param name="AcrossN">To the right on the post.</param>
/// <param name="TurningNm">Moment on the post.</param>
/// <param name="Buckles">True when the bow buckles before it carries the loads: then there are no forces.</param>
internal sealed record FootLoad(LoadedCase Case, int Bow, bool Right, double PullN, double AcrossN, double TurningNm, bool Buckles)
{
    /// <summary>The loads of both feet of some bows under some combinations.</summary>
    /// <param name="bows">The bows.</param>
    /// <param name="cases">The combinations, nothing in them scaled.</param>
    /// <param name="level">α of the direct analysis method: the analysis runs under so many times the loads, and its forces are divided by it.</param>
    internal static IEnumerable<FootLoad> Of(IEnumerable<BowTrial> bows, IReadOnlyCollection<LoadedCase> cases, double level)
    {
        foreach (BowTrial bow in bows)
        {
            foreach (LoadedCase each in cases.DistinctBy(bow.KeyOf))
            {
                foreach (int lean in bow.LeansOf(each.At(0, new BowTerm[LoadedCase.MostTerms])).ToArray())
                {
                    foreach (FootLoad found in Of(bow, each, lean, level))
                        yield return found;
                }
            }
        }
    }

    private static FootLoad[] Of(BowTrial bow, LoadedCase each, int lean, double level)
    {
        BowTerm[] terms = [.. each.Fixed];
        if (Tried(level)) return Feet(level);
        // Past its own buckling at that level the bow may still carry the loads themselves.
        if (level > 1 && Tried(1)) return Feet(1);
        return [new FootLoad(each, bow.Place.Number, false, 0, 0, 0, true), new FootLoad(each, bow.Place.Number, true, 0, 0, 0, true)];

        bool Tried(double times) => bow.Carries([.. terms.Select(term => term with { Times = times * term.Times })], lean);
        FootLoad[] Feet(double times) => [Foot(false, times), Foot(true, times)];
        FootLoad Foot(bool right, double times)
        {
            // What the ground puts on the foot is what the foot puts on the post, turned about.
            (double acrossN, double upN, double momentNm) = bow.Bow.Reaction(right, bow.Applied);
            return new FootLoad(each, bow.Place.Number, right, -upN / times, -acrossN / times, -momentNm / times, false);
        }
    }
}
