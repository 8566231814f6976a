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
        Film(draft, tunnel, cover);
        foreach (FasteningRun run in cover.Runs)
        {
            switch (run.Kind)
            {
                case FasteningKind.Channel:
                    Channel(draft, tunnel, run, answers);
                    break;
                case FasteningKind.Batten:
                    Batten(draft, tunnel, run, answers);
                    break;
            }
        }
        ImmutableArray<string> temporary = [.. cover.Runs.Where(run => run is { Kind: FasteningKind.Channel, OnWood: false, Wires: > 1 }).Select(run => run.Id)];
        draft.Add(BuildStage.Cover, MaterialUnit.Metres, Items.SpringWire, "", (decimal)(TakeoffDefaults.TemporaryWireLength.Value * cover.TemporaryWires).Metres,
            "Short pieces hold the end film for the time being.", TakeoffDefaults.TemporaryWireLength.Source, temporary, "cover.temporaryWireSpacing");
        Pulling(draft, tunnel, cover);
    }

    private static void Film(TakeoffDraft draft, Tunnel tunnel, CoverPlan cover)
    {
        string size = FormattableString.Invariant($"{cover.Thickness.Inches * 1000:0.#} mil");
        foreach (CoverPiece piece in cover.Pieces)
        {
            draft.Add(BuildStage.Cover, MaterialUnit.SquareMetres, Items.Film, size, (decimal)((piece.AlongRoll * piece.AcrossRoll).SquareMetres * piece.Count),
                "Each piece as it is cut; the rolls it is cut from are chosen with the film cuts.", Citation.Geometry, [piece.Id], "cover.thickness");
        }
        draft.Add(BuildStage.Cover, MaterialUnit.Metres, Items.FilmTape, "", (decimal)cover.BowTape.Metres,
            "Tape over every bow and every sharp point under the roof film.", Citation.CommonPractice,
            tunnel.Members.Where(member => member.Role is MemberRole.Bow or MemberRole.RidgePurlin or MemberRole.Purlin or MemberRole.EndPost).Select(member => member.Id),
            "cover.tapePerPoint");
    }

    private static void Channel(TakeoffDraft draft, Tunnel tunnel, FasteningRun run, Answers answers)
    {
        Plans.Cover rules = tunnel.Plan.Cover;
        Length spacing = answers.Take("cover.channelScrewSpacing", CoverDefaults.ChannelScrewSpacing, rules.ChannelScrewSpacing);
        int endScrews = answers.Take("cover.channelEndScrews", CoverDefaults.ChannelEndScrews, rules.ChannelEndScrews);
        Length wirePiece = answers.Take("cover.wirePiece", CoverDefaults.WirePiece, rules.WirePiece);
        Ratio perChannel = answers.Take("cover.wirePerChannel", CoverDefaults.WirePerChannel, rules.WirePerChannel);
        Length stick = answers.Take("cover.channelStick", CoverDefaults.ChannelStick, rules.ChannelStick);

        var piece = PieceNeed.Of(run.Id, run.Length, tunnel.Units) with
        {
            Place = run.Place,
            // Sticks butt anywhere: the wire laps over the joint.
            Joining = new Joining([], TakeoffDefaults.ShortestChannel.Value, []),
        };
        draft.Cut(BuildStage.Cover, Items.LockChannel, "", null, piece, [stick], "Each run of channel, butted from sticks.", Citation.Geometry);
        string screw = run.OnWood ? FilmFasteners.ScrewInWoodSize(rules, tunnel.Units) : FilmFasteners.ScrewInTubeSize(rules, tunnel.Units);
        draft.Add(BuildStage.Cover, MaterialUnit.Each, Items.ChannelScrew, screw, ChannelFastening.Screws(run.Length, spacing, endScrews),
            "Evenly spaced, half a spacing from the ends, and some more at each end.", CoverDefaults.ChannelScrewSpacing.Source, [run.Id],
            "cover.channelScrewSpacing", "cover.channelEndScrews");
        int laps = ChannelFastening.WireLaps(run.Length, wirePiece) * run.Wires;
        const string LapRule = "A screw with a washer where one piece of wire laps the next.";
        draft.Add(BuildStage.Cover, MaterialUnit.Each, Items.ChannelScrew, screw, laps, LapRule, Citation.CommonPractice, [run.Id], "cover.wirePiece");
        draft.Add(BuildStage.Cover, MaterialUnit.Each, Items.Washer, "", laps, LapRule, Citation.CommonPractice, [run.Id], "cover.wirePiece");
        draft.Add(BuildStage.Cover, MaterialUnit.Metres, Items.SpringWire, "", (decimal)ChannelFastening.WireLength(run.Length, run.Wires, perChannel).Metres,
            CoverDefaults.WirePerChannel.Says, CoverDefaults.WirePerChannel.Source, [run.Id], "cover.wirePerChannel");
    }

    private static void Batten(TakeoffDraft draft, Tunnel tunnel, FasteningRun run, Answers answers)
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

    private static void Pulling(TakeoffDraft draft, Tunnel tunnel, CoverPlan cover)
    {
        ImmutableArray<string> roof = [.. cover.Pieces.Where(piece => piece.Role == CoverRole.Roof).Select(piece => piece.Id)];
        for (int rope = 1; rope <= cover.Ropes.Count; rope++)
        {
            string id = FormattableString.Invariant($"rope-{rope}");
            draft.Cut(BuildStage.Cover, Items.PullingRope, "", null, PieceNeed.Of(id, cover.Ropes.Length, tunnel.Units) with { Place = "pulls the roof film over" },
                [], "Each rope is one length, longer than the roof film is wide.", CoverDefaults.RopeAllowance.Source);
        }
        draft.Count(BuildStage.Cover, Items.PullingBall, "", TakeoffDefaults.BallsPerRope.Value, cover.Ropes.Count, TakeoffDefaults.BallsPerRope, roof);
    }
}
