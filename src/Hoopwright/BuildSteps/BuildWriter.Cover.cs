using System.Collections.Immutable;
using Hoopwright.BeforeCuts;
using Hoopwright.Cover;
using Hoopwright.CoverSteps;
using Hoopwright.Days;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Takeoff;

namespace Hoopwright.BuildSteps;

/// <content>Hip boards, channel, tape, film and what comes after it.</content>
internal sealed partial class BuildWriter
{
    private const string BeforeFilmDay = "day";

    private IEnumerable<SideWall> Opening => tunnel.Sides.Where(side => side.Kind != SideKind.Fixed);

    // As the day of the roof film asks for, wind and rain; end film is smaller, and so are curtains.
    private StepWeather RoofDay => new(fastening.Day.Wind, fastening.Day.Gust, fastening.Day.Coldest, fastening.Day.Warmest, true);

    private void Sides()
    {
        ImmutableArray<MaterialLine> used = shares.Of(StepNames.HipBoards);
        if (used.IsEmpty) return;
        Length run = Length.FromMetres(Of(MemberRole.HipBoard).Sum(board => board.CutLength.Metres));
        int screws = (int)Count(used, Items.BoardToTubeScrew);
        Add(new BuildStep
        {
            Id = StepNames.HipBoards,
            Checks = [CutCheckKind.Boards],
            Stage = BuildStage.Cover,
            Title = Phrase.Of("Put up the hip boards"),
            Purpose = Phrase.Of("The roof film ends at them, and the curtains begin."),
            After = [After(StepNames.Braces), After(StepNames.Bows)],
            Tasks = Tasks(
                StepTimes.Task("A board screw through board and tube", screws, 1.1, 1.4),
                StepTimes.Boards(run, tunnel.Units)),
            LeastPeople = 2,
            BestPeople = 4,
            Tools = Tools(("cordless drill", 2), ("saw", 1), ("clamp", 4), ("string", 1), ("ladder", 2)),
            Materials = used,
            Drawings = ["left-side"],
            Parts = Says(
            [
                .. Opening.Select(side => Phrase.Of("On the {0} mark every bow with the middle of the board at {1} over the ground line, and pull a string from end to end.", Named(side), Tape(side.HipHeight))),
                Phrase.Of("Screw the boards on, {0} in all with {1} screws; joints lie {2} or more off the middle of a bow.", TapeText.OfRun(run, tunnel.Units), Text(screws), Tape(LayoutDefaults.JointClear.ValueIn(tunnel.Units))),
            ]),
            Good = [Phrase.Of("The board runs to the string within {0}: the roof film shows every dip.", Tape(near.Frame))],
            Cautions = [BuildCautions.Tools, StepCaution.Ladder],
            Overnight = Phrase.Of("May stand as it is."),
        });
    }

    private void Film(bool isNew)
    {
        if (fastening.Steps.FirstOrDefault(step => step.Id == StepNames.Channel) is { } channel && isNew)
        {
            Add(From(channel, Phrase.Of("Wire in the channel holds the film along every edge."), [After(StepNames.Braces), After(StepNames.Purlins), After(StepNames.Ridge), After(StepNames.HipBoards), After(StepNames.Bows)],
                Tasks(StepTimes.Task("A channel screw set", (int)Count(channel.Materials, Items.ChannelScrew), 0.42, 0.55)),
                2, 4, Tools(("cordless drill", 2), ("saw for tube", 1), ("file", 1), ("ladder", 2)), Phrase.Of("May stand as it is."), "left-side") with
            { Checks = [CutCheckKind.Channel] });
        }
        FasteningStep tape = fastening.Steps.Single(step => step.Id == StepNames.Tape);
        Add(From(tape, Phrase.Of("Film lasts where nothing cuts it or burns it."),
            [.. Framed.Select(end => After(StepNames.Doors(end.Name))), .. Framed.Select(end => After(StepNames.Boards(end.Name))), After(StepNames.Channel), After(StepNames.Ties), After(StepNames.Purlins), After(StepNames.Ridge), After(StepNames.Braces), After(StepNames.FrameLook), After(StepNames.Baseboards)],
            Tasks(StepTimes.Task("A bow taped and felt along", Bows, 2.1, 3), StepTimes.Task("A sharp point taped", cover.SharpPoints, 1, 1.5)),
            1, 3, Tools(("knife", 1), ("ladder", 2)), Phrase.Of("May stand as it is."), "left-side"));
        FilmCut(isNew);
        bool endsFirst = cover.Order == CoverOrder.EndsFirst;
        foreach (EndWall end in Framed)
        {
            ImmutableArray<FasteningStep> steps = [.. fastening.Steps.Where(step => step.Part == CoverPart.Ends && step.Id.StartsWith(end.Name + "-", StringComparison.Ordinal))];
            Add(Joined(StepNames.Film(end.Name), Phrase.Of("Cover the {0}", Named(end)), Phrase.Of("An end that is closed keeps wind out from under the roof film."), steps,
                [After(StepNames.FilmCut), After(StepNames.Tape), Hard(StepNames.EndConcrete(end.Name), BeforeFilm), After(StepNames.Doors(end.Name)), .. endsFirst ? (ImmutableArray<StepWait>)[] : [After(StepNames.RoofFilm)]],
                Tasks(StepTimes.Task("An end hung and smoothed", 1, 62, 80), StepTimes.Task("Ten nails, staples or screws of battens", (int)Math.Ceiling(Fastenings(steps) / 10), 4.3, 5.5)),
                RoofDay with { Coldest = null, Warmest = null }) with
            {
                InOneGo = true,
                LeastPeople = 3,
                BestPeople = 4,
                Tools = Tools(("ladder", 2), ("staple gun", 1), ("hammer", 2), ("knife", 1), ("spring clamp", 8)),
                Drawings = [end.Name + "-end-film"],
                Overnight = Phrase.Of("Fasten it all round the same day, or take it down and roll it up: no film hangs loose overnight in any wind."),
            });
        }
        Roof(endsFirst);
        foreach (SideWall side in Opening)
        {
            ImmutableArray<FasteningStep> steps = [.. fastening.Steps.Where(step => step.Part == CoverPart.Sides && step.Id.StartsWith(side.Name + "-", StringComparison.Ordinal))];
            BuildStep joined = Joined(StepNames.Side(side), Phrase.Of("Hang the curtain of the {0}", Named(side)), Phrase.Of("Sides that open are what keeps a crop from cooking."), steps, [After(StepNames.RoofFilm)],
                Tasks(StepTimes.Task("A bay of curtain hung, clipped and laced", tunnel.Bays, 4.3, 5.5)), RoofDay with { Coldest = null, Warmest = null });
            Add(joined with
            {
                Materials = isNew ? Merged([.. shares.Of(StepNames.Side(side)), .. joined.Materials]) : joined.Materials,
                LeastPeople = 2,
                BestPeople = 4,
                Tools = Tools(("cordless drill", 1), ("knife", 1), ("ladder", 1)),
                Drawings = [side.Name == "right" && tunnel.Right.HipHeight != tunnel.Left.HipHeight ? "right-side" : "left-side"],
                Overnight = Phrase.Of("Tie the roll tube down or up before you go: a loose curtain tears itself off in one night."),
            });
        }
        Finish(isNew);
    }

    private void FilmCut(bool isNew)
    {
        CoverPiece roof = cover.Pieces.First(piece => piece.Role == CoverRole.Roof);
        Add(new BuildStep
        {
            Id = StepNames.FilmCut,
            Checks = [CutCheckKind.Film],
            Stage = BuildStage.Cover,
            Title = Phrase.Of("Measure the tunnel and cut the film"),
            Purpose = Phrase.Of("Film cut short is lost."),
            After = isNew ? [After(StepNames.Bows), After(StepNames.Braces), After(StepNames.HipBoards), .. Framed.Select(end => After(StepNames.Doors(end.Name)))] : [After(StepNames.OldFilm)],
            Tasks = Tasks(StepTimes.Task("Measure the tunnel", 1, 20, 35), StepTimes.Task("A piece unrolled, marked, cut and folded", cover.Pieces.Sum(piece => piece.Count), 6, 9)),
            LeastPeople = 2,
            BestPeople = 4,
            Tools = Tools(("long tape", 1), ("knife", 2), ("marker", 1), ("clean ground sheet", 1)),
            Drawings = ["film-cuts"],
            Parts = Says(
            [
                Phrase.Of("Measure over the outside of the first, the middle and the last bow, along both sides, and each end, on what stands."),
                Phrase.Of("Lay each roll out on clean ground and mark all its cuts from one end before the first; the roof piece is {0} along the roll and {1} across.", Tape(roof.AlongRoll), Tape(roof.AcrossRoll)),
                Phrase.Of("Write its name and its inside face on every piece, fold it to its middle and roll it up."),
            ]),
            Good = [Phrase.Of("Every piece is as long as the cut plan says or longer, and bears its name.")],
            Hold = Phrase.Of("Measures of what stands written beside those of the cut plan, and none is longer than planned; else plan anew before anything is cut."),
            Cautions = [StepCaution.Knife, StepCaution.Lift, StepCaution.Wind],
            Weather = RoofDay with { Coldest = null, Warmest = null },
            Overnight = Phrase.Of("Cut film lies rolled up in the shade under something heavy; sun through folded film burns it."),
        });
    }

    private void Roof(bool endsFirst)
    {
        ImmutableArray<FasteningStep> steps = [.. fastening.Steps.Where(step => step.Part == CoverPart.Roof)];
        FasteningStep day = fastening.Steps.Single(step => step.Id == BeforeFilmDay);
        TimeSpan work = fastening.Day.Hours.Work * fastening.Day.Hours.People;
        int carry = fastening.CrewRules.Single(rule => rule.Id == "carry").People;
        Add(Joined(StepNames.RoofFilm, Phrase.Of("Cover the roof"), Phrase.Of("One sheet, pulled once, by all hands, on one calm morning."), [day, .. steps],
            [
                After(StepNames.FilmCut), After(StepNames.Tape), After(StepNames.Channel), After(StepNames.Baseboards), After(StepNames.Purlins), After(StepNames.Ties), After(StepNames.Braces), Hard(StepNames.PostConcrete, BeforeFilm),
                .. tunnel.Ends.Select(end => After(StepNames.Boards(end.Name))),
                .. endsFirst ? Framed.Select(end => After(StepNames.Film(end.Name))) : Framed.Select(end => Hard(StepNames.EndConcrete(end.Name), BeforeFilm)),
            ],
            [new StepTask(Phrase.Of("The roof film laid out, pulled over and fastened"), 1, work, work * 1.25, CoverHours.Rule.Source)], RoofDay) with
        {
            Work = new(work * 0.8, work, work * 1.25),
            InOneGo = true,
            LeastPeople = Math.Max(DayDefaults.FewestPeople, carry),
            BestPeople = Math.Max(fastening.People, carry),
            Tools = Tools(("ladder", 4), ("cordless drill", 2), ("staple gun", 1), ("hammer", 3), ("knife", 1), ("spring clamp", 12)),
            Drawings = ["roof-pull", "film-pull"],
            Hold = Phrase.Of("One person has looked at the forecast and at the trees, and gives the word; ladders stand, ropes lie, everyone knows their place."),
            Overnight = Phrase.Of("The sheet is fastened all round the same day; if wind comes first, let it down and roll it up."),
        });
    }

    private void Finish(bool isNew)
    {
        ImmutableArray<StepWait> film = [After(StepNames.RoofFilm), .. Framed.Select(end => After(StepNames.Film(end.Name)))];
        if (fastening.Steps.FirstOrDefault(step => step.Id == StepNames.Blower) is { } air)
        {
            Add(From(air, Phrase.Of("Air between the layers keeps them from flapping."), film, Tasks(StepTimes.Task("A blower mounted, connected and set", 1, 80, 130)), 1, 2, Tools(("cordless drill", 1), ("water gauge", 1), ("ladder", 1)),
                Phrase.Of("Runs day and night from now on; without power the layers flap."), "roof-pull"));
        }
        if (fastening.Steps.FirstOrDefault(step => step.Id == "doors") is { } doors)
        {
            Add(From(doors, Phrase.Of("The doors open, and the end stays tight round them."), [.. film, .. Framed.Select(end => After(StepNames.Doors(end.Name)))],
                Tasks(StepTimes.Task("An opening cut free", Framed.Sum(end => end.Doors.Length), 6, 10), StepTimes.Task("A leaf covered", Framed.Sum(end => end.Doors.Sum(door => door.Leaves.Length)), 17, 24)),
                1, 2, Tools(("knife", 1), ("staple gun", 1), ("hammer", 1)), Phrase.Of("Shut and latch every door before you go."), Framed.First().Name + "-end") with
            { Id = StepNames.DoorsFree });
        }
        FasteningStep trim = fastening.Steps.Single(step => step.Id == StepNames.Trim);
        ImmutableArray<StepWait> sides = [.. Opening.Select(side => After(StepNames.Side(side)))];
        Add(From(trim, Phrase.Of("Loose film flaps, and what flaps tears."), [.. film, .. sides], Tasks(StepTimes.Task("A side or an end trimmed", 4, 14, 22)), 1, 2, Tools(("knife", 1), ("ladder", 1)), Phrase.Of("May stand as it is."), "roof-pull"));
        Add(new BuildStep
        {
            Id = StepNames.LastLook,
            Stage = BuildStage.Cover,
            Title = Phrase.Of("The last look"),
            Purpose = Phrase.Of("What is loose today is gone in the first storm."),
            After = [.. film, .. sides, After(StepNames.Blower), After(StepNames.DoorsFree), After(StepNames.Trim)],
            Tasks = Tasks(StepTimes.Task("A bow with its joints and fastenings looked at", Bows, 2.5, 4)),
            LeastPeople = 1,
            BestPeople = 2,
            Tools = Tools(("ladder", 1), ("wrench or driver", 1), ("film repair tape", 1)),
            Drawings = ["set-out", "left-side"],
            Parts = Says(
            [
                Phrase.Of("Walk once round outside and once inside; feel every clamp, screw, sleeve and run of wire, {0} bows in all.", Text(Bows)),
                Phrase.Of("Patch every nick in the film at once; a nick runs."),
                .. Opening.Select(side => Phrase.Of("Roll or let down the curtain of the {0} once, all the way.", Named(side))),
                Phrase.Of("Open and shut every door and vent; see that each latches."),
                Phrase.Of("Gather offcuts, screws and strings: they end in tyres and animals."),
                Phrase.Of("Look along the film again after the first warm day and after the first wind, and pull again what hangs."),
            ]),
            Good = [Phrase.Of("Nothing moves that should not, nothing sticks that should move.")],
            Hold = Phrase.Of("Signed by whoever answers for the tunnel; date of the cover written into the plan."),
            Cautions = [StepCaution.Ladder],
            Overnight = Phrase.Of("Shut every door, vent and side before wind."),
        });
    }

    private void OldFilm()
    {
        CoverPiece roof = cover.Pieces.First(piece => piece.Role == CoverRole.Roof);
        Add(new BuildStep
        {
            Id = StepNames.OldFilm,
            Stage = BuildStage.Cover,
            Title = Phrase.Of("Take the old film off"),
            Purpose = Phrase.Of("Whole film can be used again for ends, doors and patches."),
            After = [],
            Tasks = Tasks(StepTimes.Task("A bay freed of wire and battens", tunnel.Bays, 7, 11), StepTimes.Task("The old sheet let down and rolled up", 1, 90, 150)),
            LeastPeople = 3,
            BestPeople = 6,
            Tools = Tools(("ladder", 2), ("flat bar", 2), ("knife", 2), ("locking pliers", 2), ("bucket", 2)),
            Drawings = ["roof-pull"],
            Parts = Says(
                Phrase.Of("Take wire out of the channel and coil it; wire that is straight and not rusty goes back in."),
                Phrase.Of("Free the ends over the bows first, then the sheltered side, then the windward side, with hands on the sheet all the time."),
                Phrase.Of("Slide the sheet down on one side, {0} of it, and roll it up; cut it on the bows only if it will not be used again.", TapeText.OfRun(roof.AlongRoll, tunnel.Units))),
            Good = [Phrase.Of("No old nail, staple or scrap of tape is left to cut the new film.")],
            Cautions = [StepCaution.Wind, StepCaution.Ladder, StepCaution.Spring, StepCaution.Knife],
            Weather = RoofDay with { Coldest = null, Warmest = null },
            InOneGo = true,
            Overnight = Phrase.Of("A sheet that is half free is not left overnight in any wind: take it off or fasten it again."),
        });
        Add(new BuildStep
        {
            Id = StepNames.FrameLook,
            Stage = BuildStage.Frame,
            Title = Phrase.Of("Look the bare frame over"),
            Purpose = Phrase.Of("Once in some years every joint can be reached."),
            After = [After(StepNames.OldFilm)],
            Tasks = Tasks(StepTimes.Task("A bow with its joints looked at and tightened", Bows, 3.5, 6, JointsLook)),
            LeastPeople = 1,
            BestPeople = 2,
            Tools = Tools(("ladder", 2), ("wrench or driver", 2), ("spirit level", 1), ("file", 1)),
            Drawings = ["bow", "left-side"],
            Parts = Says(
                Phrase.Of("Tighten every clamp, screw and bolt; put a bigger screw where one turns."),
                Phrase.Of("Look for bent bows, rust at the ground, rot in baseboards and in the feet of posts; poke them with a knife."),
                Phrase.Of("Smooth channel and tube that has worn sharp, and paint bare steel.")),
            Good = [Phrase.Of("End bows are plumb within {0}; where one leans, brace it before it is covered.", Tape(near.Frame))],
            Hold = Phrase.Of("Whoever looked signs that the frame may be covered again, or that it may not."),
            Cautions = [StepCaution.Ladder],
            Overnight = Phrase.Of("The bare frame may stand as it is."),
            Source = JointsLook,
        });
    }

    private static readonly Citation JointsLook = new("Preparing Your Greenhouses for a Hurricane, University of Massachusetts Extension", "every joint at each film change, about 2 h", Standing.Published);

    private static decimal Fastenings(IEnumerable<FasteningStep> steps) =>
        steps.Sum(step => step.Materials.Where(line => line.Item is Items.Nail or Items.Staple or Items.SelfDrillingScrew or Items.ChannelScrew).Sum(line => line.Quantity));

    private static BuildStep From(
        FasteningStep step, Phrase purpose, ImmutableArray<StepWait> after, ImmutableArray<StepTask> tasks, int least, int best, ImmutableArray<Tool> tools, Phrase overnight, string drawing) => new()
        {
            Id = step.Id,
            Stage = BuildStage.Cover,
            Title = step.Title,
            Purpose = purpose,
            After = after,
            Tasks = tasks,
            LeastPeople = least,
            BestPeople = best,
            Tools = tools,
            Materials = step.Materials,
            Drawings = [drawing],
            Parts = [new(null, step.Does)],
            Good = step.Good,
            Cautions = step.Cautions,
            Overnight = overnight,
            Source = step.Source,
        };

    // Several steps of covering that one crew does in one go.
    private static BuildStep Joined(string id, Phrase title, Phrase purpose, ImmutableArray<FasteningStep> steps, ImmutableArray<StepWait> after, ImmutableArray<StepTask> tasks, StepWeather weather) => new()
    {
        Id = id,
        Stage = BuildStage.Cover,
        Title = title,
        Purpose = purpose,
        After = after,
        Tasks = tasks,
        LeastPeople = steps.Max(step => step.People),
        BestPeople = steps.Max(step => step.People),
        Tools = [],
        Materials = Merged(steps.SelectMany(step => step.Materials)),
        Parts = [.. steps.Select(step => new StepPart(step.Title, step.Does))],
        Good = [.. steps.SelectMany(step => step.Good)],
        Cautions = [.. steps.SelectMany(step => step.Cautions).Distinct()],
        Weather = weather,
        Overnight = Phrase.Of("May stand as it is."),
    };

    private static ImmutableArray<MaterialLine> Merged(IEnumerable<MaterialLine> lines) =>
    [
        .. lines.GroupBy(line => line.Id).Select(group => group.First() with
        {
            Quantity = group.Sum(line => line.Quantity),
            Parts = [.. group.SelectMany(line => line.Parts)],
            Pieces = [.. group.SelectMany(line => line.Pieces)],
            TraceIds = [.. group.SelectMany(line => line.TraceIds).Distinct()],
        }),
    ];
}
