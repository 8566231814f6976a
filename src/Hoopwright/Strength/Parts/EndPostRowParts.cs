using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Strength.Models;
using Hoopwright.Strength.Posts;
using Hoopwright.Strength.Soil;
using Hoopwright.Strength.Wood;

namespace Hoopwright.Strength.Parts;

/// <summary>The posts of a framed end as they stand in the row: pressed and pulled by the end bow, and bent by wind at once.</summary>
internal static class EndPostRowParts
{
    /// <summary>A line for the wood, and one for the feet where anything pulls at them.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="end">The end.</param>
    /// <param name="wood">Its wood.</param>
    /// <param name="ground">Its ground.</param>
    /// <param name="all">What the posts carry in the row.</param>
    internal static IEnumerable<PartStrength> Of(Tunnel tunnel, EndWall end, EndWood wood, SiteGround ground, ImmutableArray<RowPostForce> all)
    {
        RowPostForce[] forces = [.. all.Where(force => force.IsFront == end.IsFront)];
        if (forces.Length == 0) yield break;
        (RowPostForce Force, WoodCheck? Check)[][] kinds = [.. wood.Kinds(isTreated: true).Select(kind => forces.Select(force => (force, Check(force, kind))).ToArray())];
        // A kind of which no values are held for the size says nothing of the others.
        (RowPostForce Force, WoodCheck? Check)[][] held = kinds.Any(HasValues) ? [.. kinds.Where(HasValues)] : kinds;
        (RowPostForce worst, WoodCheck? check) = held.MaxBy(kind => Ties.Key(kind.Max(Use)))!.MaxBy(each => Ties.Key(Use(each)));
        yield return Line(end, "row", "pressed, pulled and bent in the row", worst, Use((worst, check)), held.Min(kind => kind.Max(Use)), check, check?.Governs ?? "no values are held for wood of this size");

        RowPostForce pulled = forces.MaxBy(force => Ties.Key(force.PullN))!;
        if (pulled.PullN <= 0) yield break;
        UpliftCheck weak = Uplift(tunnel, pulled, ground.Weak), strong = Uplift(tunnel, pulled, ground.Strong);
        yield return Line(end, "uplift", "pulled upwards by the end bow", pulled, weak.Utilisation, strong.UtilisationAtBest, weak.UpTo(strong), weak.Governs);
    }

    private static WoodCheck? Check(RowPostForce force, EndPostWood kind)
    {
        EndPostLine line = force.Line;
        var section = new WoodSection(line.Board.Thickness.Metres, line.Board.Depth.Metres);
        return WoodTable.Find(kind.Species, kind.Grade, section) is not { } values ? null
            : WoodCheck.Of(AdjustedWood.Of(values, section, kind.Conditions with { Duration = force.Duration }), new WoodMember(line.HeightM, line.HeightM, line.HeightM), force.Forces);
    }

    private static UpliftCheck Uplift(Tunnel tunnel, RowPostForce force, GroundAt ground) =>
        GroundPostCheck.Pulled(tunnel, force.Line.Member, force.Line.Post.Embedment, ground, force.PullN);

    private static PartStrength Line(EndWall end, string code, string words, RowPostForce force, double weakest, double strongest, ICheck? check, string governs) => new()
    {
        Kind = PartKind.EndPost,
        Code = $"end-post-{end.Name}-{code}",
        Words = $"posts of the {end.Name} end, {words}",
        Where = force.Line.Post.MemberId,
        AtWeakest = PartStrength.Shown(weakest),
        AtStrongest = PartStrength.Shown(strongest),
        Governs = governs,
        LoadCode = force.Case.Code,
        LoadWords = force.Case.Words,
        Checks = check is null ? [] : [check],
    };

    private static bool HasValues((RowPostForce Force, WoodCheck? Check)[] kind) => kind.All(each => each.Check is not null);

    private static double Use((RowPostForce Force, WoodCheck? Check) each) => each.Check?.Utilisation ?? double.PositiveInfinity;
}
