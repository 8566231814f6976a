using Hoopwright.Layout;
using Hoopwright.Strength.Posts;

namespace Hoopwright.Strength.Parts;

/// <summary>The posts of a framed end under the worst wind on the wall.</summary>
internal static class EndPostParts
{
    /// <summary>Two lines, wood and foot; none for an end without posts.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="end">The end.</param>
    /// <param name="wood">Its wood.</param>
    /// <param name="ground">Its ground.</param>
    /// <param name="wind">The worst wind on it.</param>
    internal static IEnumerable<PartStrength> Of(Tunnel tunnel, EndWall end, EndWood wood, SiteGround ground, EndWind wind)
    {
        if (end.Posts.IsEmpty) yield break;
        EndPostCheck[][] inWeak = [.. wood.Kinds(isTreated: true).Select(kind => EndPostCheck.Of(tunnel, end, wind.PressurePa, kind, ground.Weak).ToArray())];
        EndPostCheck[][] inStrong = [.. wood.Kinds(isTreated: true).Select(kind => EndPostCheck.Of(tunnel, end, wind.PressurePa, kind, ground.Strong).ToArray())];
        EndPostCheck[] weakest = Held(inWeak).MaxBy(posts => posts.Max(Bending))!, strongest = Held(inStrong).MinBy(posts => posts.Max(Bending))!;
        EndPostCheck bent = weakest.MaxBy(Bending)!, pushed = weakest.MaxBy(Pushing)!;
        yield return Line(end, "wood", "bent by wind", bent, Bending(bent), strongest.Max(Bending), bent.Wood, wind, "no values are held for wood of this size");
        yield return Line(end, "foot", "feet pushed through the soil by wind", pushed, Pushing(pushed), strongest.Max(Pushing), pushed.Foot, wind, "nothing is presumed of such soil; a test on site has to say");
    }

    private static PartStrength Line(EndWall end, string code, string words, EndPostCheck post, double weakest, double strongest, ICheck? check, EndWind wind, string without) => new()
    {
        Kind = PartKind.EndPost,
        Code = $"end-post-{end.Name}-{code}",
        Words = $"posts of the {end.Name} end, {words}",
        Where = post.PostId,
        AtWeakest = PartStrength.Shown(weakest),
        AtStrongest = PartStrength.Shown(strongest),
        Governs = check?.Governs ?? without,
        LoadCode = wind.Combination.Code,
        LoadWords = wind.Combination.Words,
        Checks = check is null ? [] : [check],
    };

    // A kind of which no values are held for the size says nothing of the others.
    private static IEnumerable<EndPostCheck[]> Held(EndPostCheck[][] kinds) => kinds.Any(HasValues) ? kinds.Where(HasValues) : kinds;

    private static bool HasValues(EndPostCheck[] posts) => posts.All(post => post.Wood is not null);

    private static double Bending(EndPostCheck post) => post.Wood?.Utilisation ?? double.PositiveInfinity;

    private static double Pushing(EndPostCheck post) => post.Foot?.Utilisation ?? double.PositiveInfinity;
}
