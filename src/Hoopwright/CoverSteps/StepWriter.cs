using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cover;
using Hoopwright.Days;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.CoverSteps;

/// <summary>Writes the steps of covering in their order, with this tunnel's own numbers.</summary>
internal sealed partial class StepWriter(Tunnel tunnel, CoverPlan cover, CoverDayNeeds day, RollSide roll, int people, StepMaterials materials) : PhraseWriter(tunnel.Units)
{
    private CoverPiece Roof => cover.Pieces.First(piece => piece.Role == CoverRole.Roof);

    private IEnumerable<EndWall> Framed => tunnel.Ends.Where(end => end.Closing == EndClosing.Framed);

    internal ImmutableArray<FasteningStep> All()
    {
        IEnumerable<FasteningStep> ends = Framed.SelectMany(End);
        return
        [
            .. Before(),
            .. cover.Order switch
            {
                CoverOrder.EndsFirst => ends.Concat(OverRoof()),
                CoverOrder.RoofFirst => OverRoof().Concat(ends),
            },
            .. tunnel.Sides.Where(side => side.Kind != SideKind.Fixed).SelectMany(Side),
            .. cover.Inflation is { } pressure ? Air(pressure) : [],
            .. After(),
        ];
    }

    private IEnumerable<FasteningStep> Before()
    {
        yield return new FasteningStep
        {
            Id = "day",
            Part = CoverPart.Before,
            Title = Phrase.Of("Wait for the day"),
            Does =
            [
                Phrase.Of("Wait for wind of at most {0} and gusts of at most {1} at the bows, air between {2} and {3}, dry, and {4} hours of daylight.",
                    Text(day.Wind), Text(day.Gust), Text(day.Coldest), Text(day.Warmest), Text(day.Hours.Needed)),
                Phrase.Of("Have {0} people, and one who alone gives the word.", Text(people)),
            ],
            People = 1,
            Cautions = [StepCaution.Wind, StepCaution.Lines(tunnel.Units)],
        };
        ImmutableArray<FasteningRun> channels = [.. cover.Runs.Where(run => run.Kind == FasteningKind.Channel)];
        if (!channels.IsEmpty)
        {
            ImmutableArray<MaterialLine> used = materials.Channel(channels);
            yield return new FasteningStep
            {
                Id = "channel",
                Part = CoverPart.Before,
                Title = Phrase.Of("Screw the lock channel on"),
                Does =
                [
                    Phrase.Of("Screw {0} runs of channel, {1} in all, with {2} screws; file every cut end smooth.", Text(channels.Length), Run(channels), Text(StepMaterials.Count(used, Items.ChannelScrew))),
                ],
                Good = [Phrase.Of("No edge stands up where two pieces of channel meet.")],
                People = 2,
                Cautions = [StepCaution.Spring, StepCaution.Ladder],
                RunIds = Ids(channels),
                Materials = used,
            };
        }
        ImmutableArray<MaterialLine> tape = materials.Tape();
        yield return new FasteningStep
        {
            Id = "tape",
            Part = CoverPart.Before,
            Title = Phrase.Of("Tape what is sharp or gets hot"),
            Does = [Phrase.Of("Tape {0} sharp points and the back of every one of {1} bows: {2} of tape.", Text(cover.SharpPoints), Text(tunnel.Stations.Length), TapeText.OfRun(cover.BowTape, tunnel.Units))],
            Good = [Phrase.Of("A bare hand drawn along every tube and post top finds nothing sharp.")],
            People = 1,
            Cautions = [StepCaution.Ladder],
            Materials = tape,
        };
    }

    private IEnumerable<FasteningStep> Side(SideWall side)
    {
        CoverPiece curtain = cover.Pieces.First(piece => piece.Id == FilmPieces.CurtainId(side));
        ImmutableArray<FasteningRun> hip = [.. cover.Runs.Where(run => run.PieceIds.Contains(curtain.Id))];
        yield return new FasteningStep
        {
            Id = side.Name + "-curtain",
            Part = CoverPart.Sides,
            Title = Phrase.Of("Hang the curtain of the {0}", Named(side)),
            Does =
            [
                Phrase.Of("Hang the curtain under the roof film in the channel of the hip board, with a wire of its own, from the middle bow out."),
                Phrase.Of("Screw the wire where one piece laps the next: {0} laps.", Text(StepMaterials.Count(materials.Wire(hip), Items.Washer))),
            ],
            Good = [Phrase.Of("The curtain reaches {0} below the top of the baseboard along its whole length.", Tape(side.OverlapBelow))],
            People = 2,
            Cautions = [StepCaution.Spring],
            RunIds = Ids(hip),
            PieceIds = [curtain.Id],
            Materials = [.. materials.Film(curtain), .. materials.Wire(hip)],
        };
        if (side.Kind == SideKind.RollUp)
        {
            ImmutableArray<MaterialLine> used = materials.Roller(side);
            yield return new FasteningStep
            {
                Id = side.Name + "-roller",
                Part = CoverPart.Sides,
                Title = Phrase.Of("Roll tube and lacing of the {0}", Named(side)),
                Does =
                [
                    Phrase.Of("Wind the lower edge of the curtain once round the roll tube and clip it, {0} clips, from the middle out; put the crank on.", Text(StepMaterials.Count(used, Items.RollClip))),
                    Phrase.Of("Lace the rope in a zig-zag over the curtain through {0} eyes and tie it off.", Text(StepMaterials.Count(used, Items.RopeEye))),
                ],
                Good = [Phrase.Of("The tube rolls up level and does not wander.")],
                People = 2,
                PieceIds = [curtain.Id],
                Materials = used,
            };
        }
        else
        {
            ImmutableArray<MaterialLine> used = materials.Winch(side);
            yield return new FasteningStep
            {
                Id = side.Name + "-winch",
                Part = CoverPart.Sides,
                Title = Phrase.Of("Cords and winch of the {0}", Named(side)),
                Does = [Phrase.Of("Hang {0} pulleys under the hip board, lead the cords down at the bows and together to the winch, all equally long.", Text(StepMaterials.Count(used, Items.Pulley)))],
                Good = [Phrase.Of("The edge comes down level.")],
                People = 2,
                PieceIds = [curtain.Id],
                Materials = used,
            };
        }
    }

    private IEnumerable<FasteningStep> Air(Pressure pressure)
    {
        yield return new FasteningStep
        {
            Id = "blower",
            Part = CoverPart.Air,
            Title = Phrase.Of("Blow the layers apart"),
            Does =
            [
                Phrase.Of("Screw the blower inside on an end wall where its duct draws air from outside, and clamp the other end of the duct into the inner layer with the collar."),
                Phrase.Of("Open its intake until a water gauge shows {0} ({1} of water) between the layers; a little more in a storm.", TapeText.Of(pressure, tunnel.Units), Water(pressure)),
            ],
            Good = [Phrase.Of("Both layers stand smooth and apart along the whole ridge.")],
            People = 1,
            Cautions = [StepCaution.Current, StepCaution.Ladder],
            Materials = materials.Air(),
        };
    }

    private IEnumerable<FasteningStep> After()
    {
        ImmutableArray<FasteningRun> leaves = [.. cover.Runs.Where(run => cover.Pieces.Any(piece => piece.Role == CoverRole.DoorLeaf && run.PieceIds.Contains(piece.Id)))];
        ImmutableArray<CoverPiece> pieces = [.. cover.Pieces.Where(piece => piece.Role == CoverRole.DoorLeaf)];
        int doors = Framed.Sum(end => end.Doors.Length);
        if (doors > 0)
        {
            yield return new FasteningStep
            {
                Id = "doors",
                Part = CoverPart.After,
                Title = Phrase.Of("Cut the doors free"),
                Does =
                [
                    Phrase.Of("Cut the end film out of {0} openings along the inner edge of their battens, last of all.", Text(doors)),
                    .. pieces.IsEmpty ? (ImmutableArray<Phrase>)[] : [Phrase.Of("Wrap {0} leaves with their film and nail it under battens on their inner face.", Text(pieces.Length))],
                ],
                People = 1,
                Cautions = [StepCaution.Knife],
                RunIds = Ids(leaves),
                PieceIds = [.. pieces.Select(piece => piece.Id)],
                Materials = [.. materials.Film(pieces), .. materials.Battens(leaves)],
            };
        }
        yield return new FasteningStep
        {
            Id = "trim",
            Part = CoverPart.After,
            Title = Phrase.Of("Trim"),
            Does =
            [
                .. tunnel.Ends.Any(end => end.Closing != EndClosing.RoofSheet) ? (ImmutableArray<Phrase>)[Phrase.Of("Trim the roof film {0} past the end channels.", Tape(cover.RoofEndTrim))] : [],
                .. Framed.Any() ? (ImmutableArray<Phrase>)[Phrase.Of("Trim the end film {0} above the bows; keep what hangs below the baseboards and bury or board it.", Tape(cover.EndAbove))] : [],
                Phrase.Of("Leave the tails of the roof film long for a week: it settles in the first warm days, and is pulled again."),
            ],
            People = 1,
            Cautions = [StepCaution.Knife, StepCaution.Ladder],
        };
    }

    // A step about one piece of film.
    private static FasteningStep Of(
        string id, CoverPart part, Phrase title, ImmutableArray<Phrase> does, ImmutableArray<Phrase> good, int people, ImmutableArray<StepCaution> cautions, CoverPiece film, ImmutableArray<FasteningRun> runs,
        ImmutableArray<MaterialLine> used) => new()
        {
            Id = id,
            Part = part,
            Title = title,
            Does = does,
            Good = good,
            People = people,
            Cautions = cautions,
            RunIds = Ids(runs),
            PieceIds = [film.Id],
            Materials = used,
        };

    private static ImmutableArray<string> Ids(IEnumerable<FasteningRun> runs) => [.. runs.Select(run => run.Id)];

    private string Run(IEnumerable<FasteningRun> runs) => TapeText.OfRun(Length.FromMetres(runs.Sum(run => run.Length.Metres)), tunnel.Units);

    // Water at 4 °C: 249.089 Pa to an inch (NIST SP 811 (2008), B.8, from memory).
    private string Water(Pressure pressure) => tunnel.Units switch
    {
        UnitSystem.UsCustomary => (pressure.Pascals / 249.089).ToString("0.##", CultureInfo.InvariantCulture) + " in",
        UnitSystem.Metric => (pressure.Pascals / 9.80665).ToString("0.#", CultureInfo.InvariantCulture) + " mm",
    };
}
