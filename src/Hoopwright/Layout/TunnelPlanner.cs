using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Geometry;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>Lays a plan out: from what the grower wants to the exact tunnel.</summary>
public static class TunnelPlanner
{
    /// <summary>
    /// Lays the plan out. Never throws for a plan: what is wrong is among the diagnostics, all of it in one pass, and then
    /// there is no tunnel.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="answers">Collects every answer and default used.</param>
    public static LayoutOutcome LayOut(Plan plan, Answers answers) => LayOut(plan, answers, null);

    /// <summary>Lays out what stands: the plan, with what was measured in place of what was planned.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="answers">Collects every answer and default used.</param>
    /// <param name="built">What was measured; null for nothing.</param>
    public static LayoutOutcome LayOut(Plan plan, Answers answers, BuiltSizes? built)
    {
        List<Diagnostic> missing = [];
        if (plan.Frame.Span is null) missing.Add(Missing("frame.span", "The width of the tunnel is not given.", "26 ft"));
        if (plan.Frame.Length is null) missing.Add(Missing("frame.length", "The length of the tunnel is not given.", "72 ft"));
        if (plan.Frame.Bow.Shape is null) missing.Add(Missing("frame.bow.shape", "The shape of the bows is not given.", "round, gothic, peaked or offsets"));
        if (plan.Frame.Span is not { } span || plan.Frame.Length is not { } length || plan.Frame.Bow.Shape is not { } kind) return new LayoutOutcome(null, [.. missing]);
        if (span.Value <= Length.Zero || length.Value <= Length.Zero) return new LayoutOutcome(null, [Missing(span.Value <= Length.Zero ? "frame.span" : "frame.length", "The tunnel has no size.", "26 ft")]);

        (LayoutDraft? draft, ImmutableArray<Diagnostic> found) = Draft(plan, answers, span.Value, length.Value, kind, built);
        if (draft is null) return new LayoutOutcome(null, found);

        Plausible.Check(draft);
        int pieces = FramePlanner.Bows(draft);
        FramePlanner.Ties(draft);
        FramePlanner.Purlins(draft);
        FramePlanner.Braces(draft);
        AnchorKind anchor = answers.Take("ground.anchor", LayoutDefaults.Anchor, plan.Ground.Anchor);
        ImmutableArray<GroundPost> posts = anchor == AnchorKind.Posts ? GroundPlanner.Posts(draft) : [];
        GroundPlanner.Baseboards(draft);
        EndWall front = EndPlanner.End(draft, isFront: true), back = EndPlanner.End(draft, isFront: false);
        SideWall left = SidePlanner.Side(draft, left: true), right = SidePlanner.Side(draft, left: false);
        ImmutableArray<Diagnostic> diagnostics = [.. found, .. draft.Diagnostics.Distinct()];
        if (draft.HasErrors) return new LayoutOutcome(null, diagnostics);

        var tunnel = new Tunnel
        {
            Plan = plan,
            Units = answers.Units,
            Span = draft.Span,
            Length = draft.Length,
            Bow = draft.Bow,
            BowTube = draft.BowTube,
            BowPieces = pieces,
            Anchor = anchor,
            Stations = draft.Stations,
            GroundPosts = posts,
            Holes = [.. draft.Holes],
            Front = front,
            Back = back,
            Left = left,
            Right = right,
            SetOut = SetOutPlanner.SetOut(draft, front, back),
            Members = [.. draft.Members],
        };
        // Batter boards may find something too.
        return new LayoutOutcome(tunnel, [.. found, .. draft.Diagnostics.Distinct()]);
    }

    private static Diagnostic Missing(string path, string message, string accepted) =>
        new("plan.missing", Severity.Error, path, message, null, accepted);

    private static (LayoutDraft? Draft, ImmutableArray<Diagnostic> Found) Draft(Plan plan, Answers answers, Length span, Length length, BowKind kind, BuiltSizes? built)
    {
        var scratch = new List<Diagnostic>();
        Frame frame = plan.Frame;
        Length outside = answers.Take("frame.bowTube.outside", LayoutDefaults.BowTube(span, answers.Units), frame.BowTube.Outside);
        BowRequest request = BowRequestOf(plan, answers, span, kind, outside);
        BowOutcome bow = BowShape.Of(request, answers.Units);
        scratch.AddRange(bow.Diagnostics.Select(diagnostic => diagnostic with { Path = BowPath(diagnostic.Path) }));

        Length spacing = answers.Take("frame.bowSpacing", LayoutDefaults.BowSpacing, frame.BowSpacing);
        if (spacing <= Length.Zero || spacing > length)
        {
            scratch.Add(new Diagnostic("frame.bays.do-not-fit", Severity.Error, "frame.bowSpacing", "Not one bay of this width fits the length.",
                frame.BowSpacing?.Text ?? TapeText.Of(spacing, answers.Units), $"over 0 and up to {TapeText.Of(length, answers.Units)}"));
            return (null, [.. scratch]);
        }
        if (length / spacing > 2000)
        {
            scratch.Add(new Diagnostic("frame.bays.too-many", Severity.Error, "frame.bowSpacing", "That is more than two thousand bows.",
                frame.BowSpacing?.Text, $"at least {TapeText.Of(TapeText.RoundUpForLimit(length / 2000, answers.Units), answers.Units)}"));
            return (null, [.. scratch]);
        }
        BayRule rule = answers.Take("frame.bays", LayoutDefaults.Bays, frame.Bays);
        PostTopLine tops = answers.Take("site.postTops", LayoutDefaults.PostTops, plan.Site.PostTops);
        CheckSlope(plan, scratch);
        ImmutableArray<Length> marks = StationPlanner.Marks(length, spacing, rule);
        if (rule == BayRule.LastShort && marks[^1] - marks[^2] < Length.FromFeet(1))
        {
            scratch.Add(new Diagnostic("frame.bays.last-too-short", Severity.Warning, "frame.bays", "The last bay is so short that its two bows nearly touch.",
                TapeText.Of(marks[^1] - marks[^2], answers.Units), "bays: equal, or another length"));
        }
        if (bow.Shape is not { } shape) return (null, [.. scratch]);
        BuiltBows bows = built is null ? new BuiltBows { Working = shape, Front = shape, Back = shape } : BuiltBows.Of(request, shape, built, answers.Units, scratch);
        if (built is not null)
        {
            marks = StationPlanner.Measured(marks, built);
            (span, length) = (bows.Working.Span, marks[^1]);
            for (int next = 1; next < marks.Length; next++)
            {
                if (marks[next] - marks[next - 1] > outside) continue;
                scratch.Add(new Diagnostic("site-book.marks-do-not-rise", Severity.Error, "siteBook", "By what was measured two bows stand in one place, or in the wrong order.",
                    FormattableString.Invariant($"bow {next} at {TapeText.Of(marks[next - 1], answers.Units)}, bow {next + 1} at {TapeText.Of(marks[next], answers.Units)}"), "marks that rise from bow to bow"));
                return (null, [.. scratch]);
            }
        }
        var ground = new GroundSurface(plan.Site.FallAcross?.Value ?? Ratio.Zero, plan.Site.FallAlong?.Value ?? Ratio.Zero, tops, span, length);

        var draft = new LayoutDraft(plan, answers)
        {
            Span = span,
            Length = length,
            Bow = bows.Working,
            FrontBow = bows.Front,
            BackBow = bows.Back,
            Built = built,
            BowTube = new TubeSection(outside, outside, TubeForm.Round, TubeMaterial.GalvanizedSteel),
            Ground = ground,
            Stations = [.. marks.Select((mark, index) => new BowStation(index + 1, mark, ground.BaseAt(mark), ground.At(Length.Zero, mark), ground.At(span, mark)))],
        };
        draft.Diagnostics.AddRange(scratch);
        draft.BowTube = draft.Tube("frame.bowTube", frame.BowTube, LayoutDefaults.BowTube(span, answers.Units), LayoutDefaults.BowWall(answers.Units));
        return (draft, []);
    }

    private static string BowPath(string relative) => relative switch
    {
        "span" => "frame.span",
        "tubeOutside" => "frame.bowTube.outside",
        _ => "frame.bow." + relative,
    };

    private static BowRequest BowRequestOf(Plan plan, Answers answers, Length span, BowKind kind, Length tubeOutside)
    {
        Bow bow = plan.Frame.Bow;
        return new BowRequest
        {
            Kind = kind,
            Span = span,
            SideHeight = kind == BowKind.Offsets ? Length.Zero : answers.Take("frame.bow.sideHeight", LayoutDefaults.SideHeight, bow.SideHeight),
            PeakHeight = bow.PeakHeight?.Value,
            ShoulderRadius = bow.ShoulderRadius?.Value,
            ArchRadius = bow.ArchRadius?.Value,
            Offsets = [.. bow.Offsets.Select(offset => new PlanePoint(offset.Across?.Value ?? Length.Zero, offset.Height?.Value ?? Length.Zero))],
            TubeOutside = tubeOutside,
        };
    }

    private static void CheckSlope(Plan plan, List<Diagnostic> found)
    {
        Check("site.fallAlong", plan.Site.FallAlong);
        Check("site.fallAcross", plan.Site.FallAcross);

        void Check(string path, Written<Ratio>? fall)
        {
            if (fall is { } given && Math.Abs(given.Value.Value) > 0.05)
            {
                found.Add(new Diagnostic("site.too-steep", Severity.Warning, path,
                    "The ground is steeper than 5 %, the most that the conservation practice for high tunnels takes within the footprint; level it or turn the tunnel.", given.Text, "5 % at most"));
            }
        }
    }
}
