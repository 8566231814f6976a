using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Sources;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Posts;
using Hoopwright.Strength.Wood;

namespace Hoopwright.Strength.Parts;

/// <summary>The posts of framed ends under the worst wind on the wall.</summary>
internal static class EndPostParts
{
    /// <summary>What is taken of the wood, of which the plan says nothing but the size.</summary>
    internal static readonly Usual<string> Wood = new(
        "No. 2 of Southern Pine, Douglas Fir-Larch, Hem-Fir or Spruce-Pine-Fir",
        "Posts of the ends are treated wood of this grade and any of these kinds, wet in use; the weakest and the strongest of them are the ends of the range.",
        Register.NdsSupplement.At("tables 4A, 4B, 4D"), Matters: true);

    /// <summary>Two lines, wood and foot, for each framed end.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="ground">Its ground.</param>
    /// <param name="loads">Its loads.</param>
    /// <param name="combinations">Combinations whose every load the plan gives.</param>
    /// <param name="answers">Collects what was taken.</param>
    internal static ImmutableArray<PartStrength> Of(Tunnel tunnel, SiteGround ground, TunnelLoads loads, ImmutableArray<LoadCombination> combinations, Answers answers)
    {
        var parts = ImmutableArray.CreateBuilder<PartStrength>();
        foreach (EndWall end in tunnel.Ends.Where(end => !end.Posts.IsEmpty))
        {
            answers.Take("strength.endPostWood", Wood, null);
            (LoadCombination? combination, double pressurePa) = Worst(end, loads, combinations);
            if (combination is null) continue;
            EndPostCheck[][] bySpecies = [.. Enum.GetValues<WoodSpecies>().Select(species => EndPostCheck.Of(tunnel, end, pressurePa, WoodOf(species), ground.Weak).ToArray())];
            // A kind of which no values are held for the size says nothing of the others.
            if (bySpecies.Any(HasValues)) bySpecies = [.. bySpecies.Where(HasValues)];
            EndPostCheck[] weakest = bySpecies.MaxBy(posts => posts.Max(Bending))!;
            double strongest = bySpecies.Min(posts => posts.Max(Bending));
            EndPostCheck bent = weakest.MaxBy(Bending)!;
            parts.Add(Line(end, "wood", "bent by wind", bent, Bending(bent), strongest, bent.Wood, combination, "no values are held for wood of this size"));
            EndPostCheck pushed = weakest.MaxBy(Pushing)!;
            double doubled = EndPostCheck.Of(tunnel, end, pressurePa, WoodOf(WoodSpecies.SouthernPine), ground.Strong).Max(Pushing);
            parts.Add(Line(end, "foot", "feet pushed through the soil by wind", pushed, Pushing(pushed), doubled, pushed.Foot, combination, "nothing is presumed of such soil; a test on site has to say"));
        }
        return parts.ToImmutable();
    }

    /// <summary>The combination that presses or sucks hardest at an end, and its pressure inwards; null where none does.</summary>
    internal static (LoadCombination? Combination, double PressurePa) Worst(EndWall end, TunnelLoads loads, ImmutableArray<LoadCombination> combinations)
    {
        (LoadCombination? Combination, double PressurePa) worst = (null, 0);
        foreach (LoadCombination each in combinations)
        {
            double pressurePa = each.Terms.Sum(term => term.Factor.Value * (loads.Case(term.CaseCode).AtSite()?.Ends.Where(load => load.IsFront == end.IsFront).Sum(load => load.Inwards.Pascals) ?? 0));
            if (Math.Abs(pressurePa) > Math.Abs(worst.PressurePa))
                worst = (each, pressurePa);
        }
        return worst;
    }

    private static PartStrength Line(EndWall end, string code, string words, EndPostCheck post, double weakest, double strongest, ICheck? check, LoadCombination combination, string without) => new()
    {
        Kind = PartKind.EndPost,
        Code = $"end-post-{end.Name}-{code}",
        Words = $"posts of the {end.Name} end, {words}",
        Where = post.PostId,
        AtWeakest = PartStrength.Shown(weakest),
        AtStrongest = PartStrength.Shown(strongest),
        Governs = check?.Governs ?? without,
        LoadCode = combination.Code,
        LoadWords = combination.Words,
        Checks = check is null ? [] : [check],
    };

    // Treated wood of all kinds but Southern Pine is incised to take the treatment.
    private static EndPostWood WoodOf(WoodSpecies species) =>
        new(species, WoodGrade.No2, new WoodConditions(LoadDuration.TenMinutes, IsWet: true, IsIncised: species != WoodSpecies.SouthernPine));

    private static bool HasValues(EndPostCheck[] posts) => posts.All(post => post.Wood is not null);

    private static double Bending(EndPostCheck post) => post.Wood?.Utilisation ?? double.PositiveInfinity;

    private static double Pushing(EndPostCheck post) => post.Foot?.Utilisation ?? double.PositiveInfinity;
}
