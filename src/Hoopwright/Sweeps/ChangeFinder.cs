using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Sweeps;

/// <summary>
/// The changes worth trying on a plan: each makes one thing of the frame, the ground or the ends stronger by one usual step. Whether
/// it can be built and what it gains is found by working the changed plan out.
/// </summary>
internal sealed class ChangeFinder
{
    private static readonly ImmutableArray<string> PostSizes = ["2x4", "4x4", "4x6", "6x6"];

    // A post with a tenth more wood is another size, one with less the same as another mill planes it.
    private const double MuchMore = 1.1;

    private readonly Tunnel tunnel;
    private readonly Plan plan;
    private readonly UnitSystem units;
    private readonly List<PlanChange> changes = [];

    private ChangeFinder(Tunnel tunnel) => (this.tunnel, plan, units) = (tunnel, tunnel.Plan, tunnel.Units);

    /// <summary>The changes, in the order of the plan.</summary>
    public static ImmutableArray<PlanChange> Of(Tunnel tunnel)
    {
        var finder = new ChangeFinder(tunnel);
        finder.Bows();
        finder.BowTube();
        finder.Steel();
        finder.Ties();
        finder.LengthwiseTubes();
        if (tunnel.Anchor == AnchorKind.Posts) finder.GroundPosts();
        finder.EndPosts();
        return [.. finder.changes];
    }

    // Half a foot, or 100 mm.
    private Length SpacingStep => units switch { UnitSystem.UsCustomary => Length.FromInches(6), UnitSystem.Metric => Length.FromMillimetres(100) };

    // An inch of height to a step of half a foot; a metric height goes by 50 mm.
    private Length HeightStep => units switch { UnitSystem.UsCustomary => Length.FromInches(1), UnitSystem.Metric => Length.FromMillimetres(50) };

    private Length LeastSpacing => units switch { UnitSystem.UsCustomary => Length.FromFeet(2), UnitSystem.Metric => Length.FromMillimetres(600) };

    private Length DepthStep => units switch { UnitSystem.UsCustomary => Length.FromInches(6), UnitSystem.Metric => Length.FromMillimetres(150) };

    /// <summary>The next two spacings that share the length into whole bays; where there is none, one and two bays more.</summary>
    private void Bows()
    {
        Length bay = tunnel.Stations[1].Along - tunnel.Stations[0].Along;
        List<Length> spacings = [];
        for (int steps = (int)Math.Floor(bay / SpacingStep); steps > 0 && spacings.Count < 2; steps--)
        {
            Length spacing = SpacingStep * steps;
            double bays = tunnel.Length / spacing;
            if (spacing >= LeastSpacing && spacing < bay * 0.999 && Math.Abs(bays - Math.Round(bays)) < 1e-6) spacings.Add(spacing);
        }
        for (int more = 1; more <= 2 && spacings.Count < 2; more++)
        {
            // Rounded up, so that the widest bay allowed is not a hair under the bay.
            Length spacing = TapeText.RoundUpForLimit(tunnel.Length / (tunnel.Bays + more), units);
            if (spacing >= LeastSpacing && spacing < bay && spacings.All(other => (other - spacing).Abs() > SpacingStep / 4)) spacings.Add(spacing);
        }
        foreach (Length spacing in spacings.OrderByDescending(each => each))
            Add("closer-bows", $"bows {Tape(spacing)} apart instead of {Tape(bay)}", Citation.CommonPractice, new ChangedValue("frame.bowSpacing", Written(spacing)));
    }

    private void BowTube()
    {
        TubeSection tube = tunnel.BowTube;
        if (tube.Material != TubeMaterial.GalvanizedSteel) return;
        Length? wall = UsualTubes.Thicker(tube.Wall, units);
        if (wall is { } thicker)
            Add("thicker-bow-tube", $"wall of the bows' tube {Fine(thicker)} instead of {Fine(tube.Wall)}", UsualTubes.Source(units), [new("frame.bowTube.wall", WrittenFine(thicker)), .. PostFor(tube.Outside)]);
        if (tube.Form != TubeForm.Round || UsualTubes.Wider(tube.Outside, units) is not { } wider) return;
        Add("wider-bow-tube", $"tube of the bows {Fine(wider)} wide instead of {Fine(tube.Outside)}", UsualTubes.Source(units), [new("frame.bowTube.outside", WrittenFine(wider)), .. PostFor(wider)]);
        if (wall is { } both)
            Add("heavier-bow-tube", $"tube of the bows {Fine(wider)} x {Fine(both)} instead of {Fine(tube.Outside)} x {Fine(tube.Wall)}", UsualTubes.Source(units), [new("frame.bowTube.outside", WrittenFine(wider)), new("frame.bowTube.wall", WrittenFine(both)), .. PostFor(wider)]);
    }

    /// <summary>Steel that yields later, for the bows and for the ground posts. What it costs the price book does not say: the tube is the same.</summary>
    private void Steel()
    {
        if (tunnel.BowTube.Material == TubeMaterial.GalvanizedSteel) Stronger("stronger-bow-steel", "bows", "frame.bowTube.yield", plan.Frame.BowTube.Yield);
        if (tunnel.Anchor == AnchorKind.Posts && PostTube is { Material: TubeMaterial.GalvanizedSteel }) Stronger("stronger-post-steel", "ground posts", "ground.postTube.yield", plan.Ground.PostTube.Yield);
    }

    private void Stronger(string code, string words, string path, Written<Pressure>? given)
    {
        Pressure has = given?.Value ?? Pressure.FromPascals(Strength.Steel.SteelGrades.Unknown.YieldPa);
        if (Strength.Steel.SteelGrades.Stronger(has, units) is not { } next) return;
        string yields = TapeText.OfStress(Pressure.FromPascals(next.YieldPa), units);
        Add(code, $"{words} of steel that yields at {yields} instead of {TapeText.OfStress(has, units)}{(given is null ? ", as taken" : "")}; ask what it costs", next.Source, new ChangedValue(path, yields));
    }

    /// <summary>A post that the leg still slides into; nothing where it does, or where the plan leaves the post to the program.</summary>
    private IEnumerable<ChangedValue> PostFor(Length leg)
    {
        if (tunnel.Anchor != AnchorKind.Posts || plan.Ground.PostTube.Outside is null || PostTube is not { } post || post.Outside - (post.Wall * 2) >= leg) yield break;
        for (Length? outside = UsualTubes.Wider(post.Outside, units); outside is { } wider; outside = UsualTubes.Wider(wider, units))
        {
            if (wider - (post.Wall * 2) < leg) continue;
            yield return new ChangedValue("ground.postTube.outside", WrittenFine(wider));
            yield break;
        }
    }

    private TubeSection? PostTube => tunnel.GroundPosts is [var first, ..] ? tunnel.Members.First(member => member.Id == first.MemberId).Section.Match<TubeSection?>(tube => tube, _ => null) : null;

    /// <summary>A tie on every bow: where there are none, at two thirds and at half of the rise of the roof, if one can walk under it.</summary>
    private void Ties()
    {
        if (plan.Frame.Tie is { } tie)
        {
            if (tie.Every is > 1) Add("tie-on-every-bow", "a tie on every bow", Citation.CommonPractice, new ChangedValue("frame.tie.every", "1", IsCount: true));
            return;
        }
        Length usual = LayoutDefaults.TieHeight(tunnel.Bow.SideHeight, tunnel.Bow.PeakHeight).ValueIn(units), lower = tunnel.Bow.SideHeight + ((tunnel.Bow.PeakHeight - tunnel.Bow.SideHeight) / 2);
        foreach (Length height in (Length[])[usual, lower])
        {
            Length shown = Down(height, HeightStep);
            if (shown >= LayoutDefaults.HeadRoom.ValueIn(units)) Add("tie", $"a tie on every bow, {Tape(shown)} up", Citation.FromMemory, new ChangedValue("frame.tie.height", Written(shown)));
        }
    }

    private void LengthwiseTubes()
    {
        int purlins = tunnel.Members.Count(member => member.Role is MemberRole.Purlin or MemberRole.RidgePurlin);
        int more = purlins == 0 ? 1 : purlins + 2;
        if (more <= 21) Add("more-purlins", string.Create(CultureInfo.InvariantCulture, $"{more} purlins instead of {purlins}"), Citation.CommonPractice, new ChangedValue("frame.purlins.count", Number(more), IsCount: true));
        if (tunnel.Members.FirstOrDefault(member => member.Role is MemberRole.Purlin or MemberRole.RidgePurlin) is { } purlin) Wider("heavier-purlins", "purlins", "frame.purlins.tube.outside", purlin);
        int braces = tunnel.Members.Count(member => member.Role == MemberRole.CornerBrace);
        if (braces < 4) Add("braces", string.Create(CultureInfo.InvariantCulture, $"braces in 4 corners instead of {braces}"), Citation.CommonPractice, new ChangedValue("frame.braces.corners", "4", IsCount: true));
        if (tunnel.Members.FirstOrDefault(member => member.Role == MemberRole.CornerBrace) is { } brace) Wider("heavier-braces", "corner braces", "frame.braces.tube.outside", brace);
    }

    private void Wider(string code, string words, string path, Member member)
    {
        if (member.Section.Match<TubeSection?>(tube => tube, _ => null) is { Form: TubeForm.Round } tube && UsualTubes.Wider(tube.Outside, units) is { } wider)
            Add(code, $"{words} {Fine(wider)} wide instead of {Fine(tube.Outside)}", UsualTubes.Source(units), new ChangedValue(path, WrittenFine(wider)));
    }

    private void GroundPosts()
    {
        Length embedment = plan.Ground.PostEmbedment?.Value ?? LayoutDefaults.PostEmbedment.ValueIn(units);
        foreach (int steps in (int[])[1, 2])
        {
            Length more = DepthStep * steps, deeper = embedment + more;
            List<ChangedValue> values = [new("ground.postEmbedment", Written(deeper))];
            if (plan.Ground.PostLength is { } whole) values.Add(new("ground.postLength", Written(whole.Value + more)));
            if (plan.Ground.HoleDepth is { } hole) values.Add(new("ground.holeDepth", Written(Length.Max(hole.Value, deeper))));
            Add("deeper-posts", $"ground posts {Tape(deeper)} deep instead of {Tape(embedment)}", Citation.CommonPractice, [.. values]);
        }
        if (tunnel.GroundPosts.Any(post => !post.InConcrete)) Add("posts-in-concrete", "every ground post in concrete", Citation.CommonPractice, new ChangedValue("ground.postConcrete", "all"));
        if (tunnel.GroundPosts.All(post => post.InConcrete) && tunnel.Holes.FirstOrDefault(hole => hole.PostId == tunnel.GroundPosts[0].MemberId) is { } narrow)
        {
            Length wider = narrow.Diameter + (SpacingStep * (2.0 / 3));
            Length shown = TapeText.RoundUpForHole(wider, units);
            Add("wider-holes", $"holes of the ground posts {Tape(shown)} wide instead of {Tape(narrow.Diameter)}", Citation.CommonPractice, new ChangedValue("ground.holeDiameter", Written(shown)));
        }
    }

    /// <summary>Posts of the framed ends: deeper, of the next size, and closer; both ends alike in one change.</summary>
    private void EndPosts()
    {
        List<(string Path, End End)> framed = [];
        if (tunnel.Front.Closing == EndClosing.Framed) framed.Add(("ends.front", plan.Ends.Front));
        if (tunnel.Back.Closing == EndClosing.Framed && plan.Ends.Back is { } back) framed.Add(("ends.back", back));
        if (framed.Count == 0) return;
        Add("deeper-end-posts", $"posts of the ends {Tape(DepthStep)} deeper", Citation.CommonPractice, [.. framed.SelectMany(each => Deeper(each.Path, each.End))]);
        ImmutableArray<ChangedValue> heavier = [.. framed.SelectMany(each => NextSize(each.End.PostSize ?? LayoutDefaults.EndPost.LumberIn(units).Value) is { } next ? (ImmutableArray<ChangedValue>)[new(each.Path + ".postSize", next)] : [])];
        if (!heavier.IsEmpty) Add("heavier-end-posts", $"posts of the ends {string.Join(" and ", heavier.Select(value => value.Text).Distinct())}", Citation.CommonPractice, heavier);
        ImmutableArray<ChangedValue> closer =
        [
            .. framed.Select(each => (each.Path, Spacing: (each.End.PostSpacing?.Value ?? LayoutDefaults.EndPostSpacing.ValueIn(units)) - (SpacingStep * 2)))
                .Where(each => each.Spacing >= LeastSpacing).Select(each => new ChangedValue(each.Path + ".postSpacing", Written(each.Spacing))),
        ];
        if (!closer.IsEmpty) Add("closer-end-posts", $"posts of the ends at most {string.Join(" and ", closer.Select(value => value.Text).Distinct())} apart", Citation.CommonPractice, closer);
    }

    private IEnumerable<ChangedValue> Deeper(string path, End end)
    {
        Length deeper = (end.Embedment?.Value ?? LayoutDefaults.EndEmbedment.ValueIn(units)) + DepthStep;
        yield return new ChangedValue(path + ".embedment", Written(deeper));
        if (end.HoleDepth is { } hole) yield return new ChangedValue(path + ".holeDepth", Written(Length.Max(hole.Value, deeper)));
    }

    /// <summary>The next of the usual sizes of posts; nothing for one of none of these. One in millimetres goes on in millimetres.</summary>
    private static string? NextSize(string size)
    {
        int at = PostSizes.IndexOf(size);
        if (at >= 0) return at + 1 < PostSizes.Length ? PostSizes[at + 1] : null;
        if (LumberSizes.Find(size) is not { IsNominal: false } has) return null;
        return PostSizes.Select(nominal => LumberSizes.Find(LumberSizes.MetricFor(nominal))!)
            .FirstOrDefault(next => next.Thickness >= has.Thickness && next.Width >= has.Width && (next.Thickness * next.Width) / (has.Thickness * has.Width) > MuchMore)?.Name;
    }

    private void Add(string code, string words, Citation source, params ImmutableArray<ChangedValue> values) => changes.Add(new PlanChange(code, words, values, source));

    private static Length Down(Length length, Length step) => step * Math.Floor((length / step) + 1e-9);

    private string Tape(Length length) => TapeText.Of(length, units);

    private string Fine(Length length) => TapeText.OfThickness(length, units);

    private string Written(Length length) => TapeText.Of(length, units);

    private string WrittenFine(Length length) => units switch
    {
        UnitSystem.UsCustomary => length.Inches.ToString("0.###", CultureInfo.InvariantCulture) + " in",
        UnitSystem.Metric => length.Millimetres.ToString("0.#", CultureInfo.InvariantCulture) + " mm",
    };

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
