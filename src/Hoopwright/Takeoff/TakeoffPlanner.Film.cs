using Hoopwright.Cover;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

public static partial class TakeoffPlanner
{
    private static void Film(TakeoffBuilder builder, Tunnel tunnel, CoverPlan cover, Answers answers)
    {
        Plans.Cover asked = tunnel.Plan.Cover;
        Length screwSpacing = answers.Take("cover.channelScrewSpacing", CoverDefaults.ChannelScrewSpacing, asked.ChannelScrewSpacing);
        Ratio perChannel = answers.Take("cover.wirePerChannel", CoverDefaults.WirePerChannel, asked.WirePerChannel);
        Length wirePiece = answers.Take("cover.wirePiece", CoverDefaults.WirePiece, asked.WirePiece);
        Length first = answers.Take("cover.battenFirst", CoverDefaults.BattenFirst, asked.BattenFirst);
        Length spacing = answers.Take("cover.battenSpacing", CoverDefaults.BattenSpacing, asked.BattenSpacing);
        foreach (FasteningRun run in cover.Runs)
        {
            switch (run.Kind)
            {
                case FasteningKind.Channel:
                    Channel(builder, tunnel, run, screwSpacing, perChannel, wirePiece, answers);
                    break;
                case FasteningKind.Batten:
                    int nails = BattenFastening.Marks(run.Length, first, spacing).Length;
                    builder.Add(BuildStage.Cover, Items.Batten, "", MaterialUnit.Metres, (decimal)run.Length.Metres, "along the run", Citation.Geometry, [run.Id]);
                    string nail = run.OnWood ? Items.Nail : Items.SelfDrillingScrew;
                    builder.Add(BuildStage.Cover, nail, run.OnWood ? "for battens" : "", MaterialUnit.Each, nails, "the first two at 4 in, then every 6 in, or as the plan says", Citation.CommonPractice, [run.Id], "cover.battenFirst", "cover.battenSpacing");
                    if (run.OnWood) builder.Add(BuildStage.Cover, Items.Staple, "", MaterialUnit.Each, BattenFastening.Staples(nails), "one between each pair of nails", Citation.CommonPractice, [run.Id]);
                    break;
            }
        }
        if (cover.TemporaryWires > 0)
        {
            builder.Add(BuildStage.Cover, Items.SpringWire, "", MaterialUnit.Metres, cover.TemporaryWires * (decimal)Length.FromFeet(1).Metres, "1 ft pieces that hold the end film for the time being", Citation.CommonPractice,
                cover.Runs.Where(run => run.Kind == FasteningKind.Channel && !run.OnWood).Select(run => run.Id), "cover.temporaryWireSpacing");
        }
        builder.Add(BuildStage.Cover, Items.FilmTape, "", MaterialUnit.Metres, (decimal)cover.BowTape.Metres, "over the bows and sharp points, so that nothing hot or sharp touches the film", Citation.CommonPractice,
            tunnel.Members.Where(member => member.Role == MemberRole.Bow).Select(member => member.Id));
        string[] roof = [.. cover.Pieces.Where(piece => piece.Role == CoverRole.Roof).Select(piece => piece.Id)];
        builder.Add(BuildStage.Cover, Items.PullingRope, "", MaterialUnit.Metres, cover.Ropes.Count * (decimal)cover.Ropes.Length.Metres, "each 10 ft longer than the roof film is wide", Citation.CommonPractice, roof);
        builder.Add(BuildStage.Cover, Items.PullingBall, "", MaterialUnit.Each, cover.Ropes.Count, "one a rope, knotted into the edge of the film", Citation.CommonPractice, roof);
        builder.Add(BuildStage.Cover, Items.Stake, "", MaterialUnit.Each, 4, "one a corner of the roof film, to hold it while it is fastened", Citation.CommonPractice, roof);
    }

    private static void Channel(TakeoffBuilder builder, Tunnel tunnel, FasteningRun run, Length screwSpacing, Ratio perChannel, Length wirePiece, Answers answers)
    {
        answers.Take("cover.channelStick", CoverDefaults.ChannelStick, tunnel.Plan.Cover.ChannelStick);
        builder.Cut(BuildStage.Cover, Items.LockChannel, "", new PieceNeed(run.Id, run.Id, TapeText.RoundForMember(run.Length, tunnel.Units))
        {
            Place = run.Place,
            Joining = new Joining([], Length.FromFeet(1), []),
        }, "along the run, sticks end to end", Citation.Geometry, null, tunnel.Plan.Cover.ChannelStick is { } stick ? [stick.Value] : [CoverDefaults.ChannelStick.Value], "cover.channelStick");
        builder.Add(BuildStage.Cover, Items.ChannelScrew, run.OnWood ? "into wood" : "into tube", MaterialUnit.Each, ChannelFastening.Screws(run.Length, screwSpacing), "evenly spaced, half a spacing from the ends", Citation.CommonPractice, [run.Id], "cover.channelScrewSpacing");
        builder.Add(BuildStage.Cover, Items.SpringWire, "", MaterialUnit.Metres, (decimal)ChannelFastening.WireLength(run.Length, run.Wires, perChannel).Metres, "run, times wires, times wire for a length of channel", Citation.CommonPractice, [run.Id], "cover.wirePerChannel");
        int laps = ChannelFastening.WireLaps(run.Length, wirePiece) * run.Wires;
        builder.Add(BuildStage.Cover, Items.ChannelScrew, "with washer", MaterialUnit.Each, laps, "one where spring wire doubles", Citation.CommonPractice, [run.Id], "cover.wirePiece");
        builder.Add(BuildStage.Cover, Items.Washer, "", MaterialUnit.Each, laps, "one where spring wire doubles", Citation.CommonPractice, [run.Id]);
    }
}
