using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Sources;
using Hoopwright.Strength.Posts;
using Hoopwright.Strength.Wood;

namespace Hoopwright.Strength.Parts;

/// <summary>The wood of an end: of the species that the plan gives, or of any whose values are held.</summary>
/// <param name="Species">What it may be.</param>
/// <param name="Grade">Its grade.</param>
internal sealed record EndWood(ImmutableArray<WoodSpecies> Species, WoodGrade Grade)
{
    /// <summary>Design values are those of the tables, from memory.</summary>
    private static readonly Citation Tables = Register.NdsSupplement.At("tables 4A, 4B, 4D");

    private static readonly Usual<WoodGrade> UsualGrade = new(
        WoodGrade.No2, "Grade of the wood of the end's posts, girts and headers; the stamp on it says which.", Tables, Matters: true);

    private static readonly Usual<string> AnySpecies = new(
        "Southern Pine, Douglas Fir-Larch, Hem-Fir or Spruce-Pine-Fir",
        "The wood of the end may be any of these; the weakest and the strongest of them are the ends of the range.", Tables, Matters: true);

    /// <summary>The wood of an end.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="end">The end.</param>
    /// <param name="answers">Collects what was taken.</param>
    internal static EndWood Of(Tunnel tunnel, EndWall end, Answers answers)
    {
        // A back that is like the front is asked of as the front.
        (End asked, string path) = end.IsFront || tunnel.Plan.Ends.Back is not { } back ? (tunnel.Plan.Ends.Front, "ends.front") : (back, "ends.back");
        WoodGrade grade = answers.Take(path + ".woodGrade", UsualGrade, asked.WoodGrade);
        if (asked.WoodSpecies is not { } species)
        {
            answers.Take(path + ".woodSpecies", AnySpecies, null);
            return new EndWood([.. Enum.GetValues<WoodSpecies>()], grade);
        }
        answers.Take(path + ".woodSpecies", new Usual<WoodSpecies>(species, "The species of the end's wood.", Tables), species);
        return new EndWood([species], grade);
    }

    /// <summary>Every wood that it may be, in wind and wet in use.</summary>
    /// <param name="isTreated">True for treated wood, which of all species but Southern Pine is incised to take the treatment.</param>
    internal ImmutableArray<EndPostWood> Kinds(bool isTreated) =>
    [
        .. Species.Select(species => new EndPostWood(
            species, Grade, new WoodConditions(LoadDuration.TenMinutes, IsWet: true, IsIncised: isTreated && species != WoodSpecies.SouthernPine))),
    ];
}
