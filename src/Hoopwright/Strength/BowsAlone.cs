using Hoopwright.Strength.Models;

namespace Hoopwright.Strength;

/// <summary>
/// The bows of a tunnel by themselves, ready to be put through every combination of the site at second order: a first answer that takes
/// a hundredth of the whole. It knows nothing of the row in space, of posts, film and ends, nor of the weakest steel and feet.
/// </summary>
public sealed class BowsAlone
{
    private readonly BowStudy _study;

    internal BowsAlone(BowStudy study) => _study = study;

    /// <summary>How many bows are looked at: those that can be the worst.</summary>
    public int Bows => _study.Bows;

    /// <summary>How many different combinations each of them is put through.</summary>
    public int Combinations => _study.AtSite.Length;

    /// <summary>The combination under which a bow uses most of its strength, each solved at second order in its plane with all checks.</summary>
    public CombinationStrength Worst() => _study.Worst();
}
