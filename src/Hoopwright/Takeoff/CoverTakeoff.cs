using System.Collections.Immutable;
using Hoopwright.Cover;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>Film and what holds it.</summary>
internal static class CoverTakeoff
{
    public static void Add(TakeoffDraft draft, Tunnel tunnel, CoverPlan cover, Answers answers)
    {
        foreach (CoverPiece piece in cover.Pieces) Film(draft, tunnel, cover, piece);
        Tape(draft, tunnel, cover);
        foreach (FasteningRun run in cover.Runs)
        {
            switch (run.Kind)
            {
                case FasteningKind.Channel:
                    Channel(draft, tunnel, run, answers);
                    Wire(draft, tunnel, run, run.Wires, answers);
                    break;
                case FasteningKind.Batten:
                    Batten(draft, tunnel, run, answers);
                    break;
            }
        }
        foreach (FasteningRun run in cover.Runs) Temporary(draft, tunnel, cover, run);
        Pulling(draft, tunnel, cover);
        if (cover.Inflation is not null) Air(draft, tunnel, cover);
    }

    /// <summary>Short pieces of wire that hold end film for the time being in a run.</summary>
    public static void Temporary(TakeoffDraft draft, Tunnel tunnel, CoverPlan cover, FasteningRun run) =>
        draft.Add(BuildStage.Cover, MaterialUnit.Metres, Items.SpringWire, "", (decimal)(TakeoffDefaults.TemporaryWireLength.ValueIn(tunnel.Units) * cover.TemporaryWiresIn(run)).Metres,
            "Short pieces hold the end film for the time being.", TakeoffDefaults.TemporaryWireLength.Source, [run.Id], "cover.temporaryWireSpacing");

    /// <summary>What holds the two layers apart.</summary>
    public static void Air(TakeoffDraft draft, Tunnel tunnel, CoverPlan cover)
    {
        ImmutableArray<string> roof = RoofOf(cover);
        draft.Count(BuildStage.Cover, Items.InflationBlower, "", TakeoffDefaults.Blowers.Value, 1, TakeoffDefaults.Blowers, roof, "cover.inflated");
        draft.Add(BuildStage.Cover, MaterialUnit.Metres, Items.InflationDuct, "", (decimal)TakeoffDefaults.DuctLength.ValueIn(tunnel.Units).Metres, TakeoffDefaults.DuctLength.Says, TakeoffDefaults.DuctLength.Source, roof, "cover.inflated");
        draft.Count(BuildStage.Cover, Items.FilmCollar, "", TakeoffDefaults.FilmCollars.Value, 1, TakeoffDefaults.FilmCollars, roof, "cover.inflated");
    }

    /// <summary>A piece of film as it is cut.</summary>
    public static void Film(TakeoffDraft draft, Tunnel tunnel, CoverPlan cover, CoverPiece piece) =>
        draft.Add(BuildStage.Cover, MaterialUnit.SquareMetres, Items.Film, FilmSize(cover.Thickness, tunnel.Units), (decimal)((piece.AlongRoll * piece.AcrossRoll).SquareMetres * piece.Count),
            "Each piece as it is cut; the rolls it is cut from are chosen with the film cuts.", Citation.Geometry, [piece.Id], "cover.thickness");

    /// <summary>Tape under the roof film.</summary>
    public static void Tape(TakeoffDraft draft, Tunnel tunnel, CoverPlan cover) =>
        draft.Add(BuildStage.Cover, MaterialUnit.Metres, Items.FilmTape, "", (decimal)cover.BowTape.Metres,
            "Tape over every bow and every sharp point under the roof film.", Citation.CommonPractice,
            tunnel.Members.Where(member => member.Role is MemberRole.Bow or MemberRole.RidgePurlin or MemberRole.Purlin or MemberRole.EndPost).Select(member => member.Id),
            "cover.tapePerPoint");

    /// <summary>A run of channel with its screws.</summary>
    public static void Channel(TakeoffDraft draft, Tunnel tunnel, FasteningRun run, Answers answers)
    {
        Plans.Cover rules = tunnel.Plan.Cover;
        Length spacing = answers.Take("cover.channelScrewSpacing", CoverDefaults.ChannelScrewSpacing, rules.ChannelScrewSpacing);
        int endScrews = answers.Take("cover.channelEndScrews", CoverDefaults.ChannelEndScrews, rules.ChannelEndScrews);
        Length stick = answers.Take("cover.channelStick", CoverDefaults.ChannelStick(tunnel.Units), rules.ChannelStick);

        var piece = PieceNeed.Of(run.Id, run.Length, tunnel.Units) with
        {
            Place = run.Place,
            // Sticks butt anywhere: the wire laps over the joint.
            Joining = new Joining([], TakeoffDefaults.ShortestChannel.ValueIn(tunnel.Units), []),
        };
        draft.Cut(BuildStage.Cover, Items.LockChannel, "", null, piece, [stick], "Each run of channel, butted from sticks.", Citation.Geometry);
        draft.Add(BuildStage.Cover, MaterialUnit.Each, Items.ChannelScrew, ScrewSize(tunnel, run), ChannelFastening.Screws(run.Length, spacing, endScrews),
            "Evenly spaced, half a spacing from the ends, and some more at each end.", CoverDefaults.ChannelScrewSpacing.Source, [run.Id],
            "cover.channelScrewSpacing", "cover.channelEndScrews");
    }

    /// <summary>Layers of wire in a run of channel, with the screws and washers where pieces lap.</summary>
    public static void Wire(TakeoffDraft draft, Tunnel tunnel, FasteningRun run, int wires, Answers answers)
    {
        Plans.Cover rules = tunnel.Plan.Cover;
        Length wirePiece = answers.Take("cover.wirePiece", CoverDefaults.WirePiece, rules.WirePiece);
        Ratio perChannel = answers.Take("cover.wirePerChannel", CoverDefaults.WirePerChannel, rules.WirePerChannel);
        string screw = ScrewSize(tunnel, run);
        int laps = ChannelFastening.WireLaps(run.Length, wirePiece) * wires;
        const string LapRule = "A screw with a washer where one piece of wire laps the next.";
        draft.Add(BuildStage.Cover, MaterialUnit.Each, Items.ChannelScrew, screw, laps, LapRule, Citation.CommonPractice, [run.Id], "cover.wirePiece");
        draft.Add(BuildStage.Cover, MaterialUnit.Each, Items.Washer, "", laps, LapRule, Citation.CommonPractice, [run.Id], "cover.wirePiece");
        draft.Add(BuildStage.Cover, MaterialUnit.Metres, Items.SpringWire, "", (decimal)ChannelFastening.WireLength(run.Length, wires, perChannel).Metres,
            CoverDefaults.WirePerChannel.Says, CoverDefaults.WirePerChannel.Source, [run.Id], "cover.wirePerChannel");
    }

    /// <summary>A run of batten with its nails and staples, or its screws in tube.</summary>
    public static void Batten(TakeoffDraft draft, Tunnel tunnel, FasteningRun run, Answers answers)
    {
        Plans.Cover rules = tunnel.Plan.Cover;
        Length first = answers.Take("cover.battenFirst", CoverDefaults.BattenFirst, rules.BattenFirst);
        Length spacing = answers.Take("cover.battenSpacing", CoverDefaults.BattenSpacing, rules.BattenSpacing);
        draft.Add(BuildStage.Cover, MaterialUnit.Metres, Items.Batten, "", (decimal)run.Length.Metres,
            "Each run of batten.", Citation.Geometry, [run.Id]);
        int fastenings = BattenFastening.Marks(run.Length, first, spacing).Length;
        const string Rule = "The first two close together, then evenly, the last near the end.";
        if (run.OnWood)
        {
            draft.Add(BuildStage.Cover, MaterialUnit.Each, Items.Nail, FilmFasteners.NailSize(rules, tunnel.Units), fastenings, Rule,
                CoverDefaults.BattenSpacing.Source, [run.Id], "cover.battenFirst", "cover.battenSpacing", "cover.battenNailDiameter", "cover.battenNailLength");
            answers.Take("cover.stapleLength", FilmFasteners.StapleLength, rules.StapleLength);
            draft.Add(BuildStage.Cover, MaterialUnit.Each, Items.Staple, FilmFasteners.StapleSize(rules, tunnel.Units), BattenFastening.Staples(fastenings),
                "A staple between each pair of nails.", Citation.CommonPractice, [run.Id], "cover.battenFirst", "cover.battenSpacing", "cover.stapleLength");
        }
        else
        {
            draft.Add(BuildStage.Cover, MaterialUnit.Each, Items.SelfDrillingScrew, FilmFasteners.ScrewInTubeSize(rules, tunnel.Units), fastenings, Rule,
                CoverDefaults.BattenSpacing.Source, [run.Id], "cover.battenFirst", "cover.battenSpacing");
        }
    }

    /// <summary>Ropes and what is knotted into the edge of the film.</summary>
    public static void Pulling(TakeoffDraft draft, Tunnel tunnel, CoverPlan cover)
    {
        ImmutableArray<string> roof = RoofOf(cover);
        for (int rope = 1; rope <= cover.Ropes.Count; rope++)
        {
            string id = FormattableString.Invariant($"rope-{rope}");
            draft.Cut(BuildStage.Cover, Items.PullingRope, "", null, PieceNeed.Of(id, cover.Ropes.Length, tunnel.Units) with { Place = "pulls the roof film over" },
                [], "Each rope is one length, longer than the roof film is wide.", CoverDefaults.RopeAllowance.Source);
        }
        draft.Count(BuildStage.Cover, Items.PullingBall, "", TakeoffDefaults.BallsPerRope.Value, cover.Ropes.Count, TakeoffDefaults.BallsPerRope, roof);
    }

    private static ImmutableArray<string> RoofOf(CoverPlan cover) => [.. cover.Pieces.Where(piece => piece.Role == CoverRole.Roof).Select(piece => piece.Id)];

    private static string FilmSize(Length thickness, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => FormattableString.Invariant($"{thickness.Inches * 1000:0.#} mil"),
        UnitSystem.Metric => FormattableString.Invariant($"{thickness.Millimetres:0.##} mm"),
    };

    private static string ScrewSize(Tunnel tunnel, FasteningRun run) =>
        run.OnWood ? FilmFasteners.ScrewInWoodSize(tunnel.Plan.Cover, tunnel.Units) : FilmFasteners.ScrewInTubeSize(tunnel.Plan.Cover, tunnel.Units);
}
