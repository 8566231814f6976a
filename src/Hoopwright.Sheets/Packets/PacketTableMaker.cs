using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.BuildSteps;
using Hoopwright.Cover;
using Hoopwright.Cover.Pull;
using Hoopwright.CoverSteps;
using Hoopwright.Cuts;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Orders;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Pricing;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Tables;
using Hoopwright.Sheets.Words;
using Hoopwright.Sources;
using Hoopwright.Takeoff;

namespace Hoopwright.Sheets.Packets;

/// <summary>Makes each table of the packet from the results; those that a crew reads in its language.</summary>
internal sealed class PacketTableMaker(PlannedTunnel planned, Tunnel tunnel, CrewWords words)
{
    /// <summary>Item and size of a cut list as a crew says them.</summary>
    public static string NameOf(CutSheet sheet, CrewWords words) => sheet.Size.Length == 0 ? words.Say(sheet.Item) : $"{words.Say(sheet.Item)} {words.Say(sheet.Size)}";

    private readonly ShownOn shown = new(tunnel);

    private string Say(string text) => words.Say(text);

    // Titles of publications, in the order in which the rules name them.
    private readonly ImmutableArray<string> published = [.. planned.Rules.Select(rule => rule.From).Where(IsPublished).Select(source => source.Title).Distinct()];

    private string Tape(Length length) => TapeText.Of(length, planned.Units);

    private string Mark(Length length) => Tape(TapeText.RoundToMark(length, planned.Units));

    /// <summary>A box to tick, never parted from what it stands before.</summary>
    private static readonly string Box = $"☐{Sheets.Tables.Table.Joiner}";

    public Table SideMarks() => new("side-marks", Say("Marks along both side strings, from the front corner"),
        [new(Say("Bow"), 1, TextAlign.End), new(Say("Mark"), 2, TextAlign.End), new(Say("Ground over the first, left"), 2, TextAlign.End), new(Say("Ground over the first, right"), 2, TextAlign.End), new(Say("Post top"), 2, TextAlign.End), new(Say("Left post in"), 2, TextAlign.End), new(Say("Right post in"), 2, TextAlign.End), new(Say("Concrete"), 1.6)],
        [
            .. tunnel.Stations.Select(station =>
            {
                GroundPost? left = tunnel.GroundPosts.FirstOrDefault(post => post.Bow == station.Number && post.Left), right = tunnel.GroundPosts.FirstOrDefault(post => post.Bow == station.Number && !post.Left);
                return TableRow.Of(Number(station.Number), Mark(station.Along), Mark(station.GroundLeft), Mark(station.GroundRight), left is null ? "" : Mark(left.Top),
                    left is null ? "" : Mark(left.Embedment), right is null ? "" : Mark(right.Embedment), left?.InConcrete == true ? Say("yes") : "");
            }),
        ])
    { Drawing = "set-out" };

    public Table EndPosts(EndWall end) => new($"{end.Name}-end-posts", Say($"Posts of the {end.Name} end, from the left string"),
        [new(Say("Post"), 2.4), new(Say("Mark, middle of the post"), 2, TextAlign.End), new(Say("Cut length"), 2, TextAlign.End), new(Say("Top, left edge"), 2, TextAlign.End), new(Say("Top, right edge"), 2, TextAlign.End), new(Say("Bevel"), 1.4, TextAlign.End), new(Say("In ground"), 1.8, TextAlign.End)],
        [
            .. end.Posts.Select(post => TableRow.Of(post.MemberId, Mark(post.Centre), Mark(tunnel.Members.First(member => member.Id == post.MemberId).CutLength), Mark(post.TopLeft), Mark(post.TopRight), TapeText.Of(post.Tilt), Mark(post.Embedment))),
        ])
    { Drawing = $"{end.Name}-end" };

    public Table Doors() => new("doors", Say("Doors"),
        [new(Say("Door"), 2), new(Say("Kind"), 1.4), new(Say("Swings"), 1.6), new(Say("Middle"), 1.6, TextAlign.End), new(Say("Clear"), 2.6), new(Say("Rough, post to post"), 2, TextAlign.End), new(Say("Leaf"), 2.6), new(Say("Leaves"), 1.3, TextAlign.End)],
        [
            .. tunnel.Ends.SelectMany(end => end.Doors.Select(door => DoorRow(end, door))),
        ]);

    private TableRow DoorRow(EndWall end, DoorOpening door) => TableRow.Of(Say(door.Id), Say(door.Kind.ToString().ToLowerInvariant()), Say(Swing(door)), Mark(door.Centre), $"{Tape(door.ClearWidth)} × {Tape(door.ClearHeight)}", Tape(TapeText.RoundUpForOpening(door.RoughWidth, planned.Units)),
        door.Leaves.IsEmpty ? Say("bought whole") : $"{Mark(door.Leaves[0].Width)} × {Mark(door.Leaves[0].Height)}", Number(door.Leaves.Length)) with
    { LeadsTo = door.Leaves.IsEmpty ? end.Name + "-end" : door.Id + "-leaf" };

    private static string Swing(DoorOpening door)
    {
        string way = door.Swing switch { DoorSwing.Out => "out", DoorSwing.In => "in" };
        return door.Kind switch
        {
            DoorKind.Side => $"{way}, hinged {(door.Hinge == HingeSide.Right ? "right" : "left")}",
            DoorKind.Double => way,
            DoorKind.Sliding or DoorKind.Overhead => "",
        };
    }

    public Table Ordinates() => new("bow-heights", Say("Heights of the bow, for checking one with a tape"),
        [new(Say("From the left ground line"), 2, TextAlign.End), new(Say("Outside of the tube"), 2, TextAlign.End), new(Say("Underside"), 2, TextAlign.End)],
        [.. BowOrdinates.Of(tunnel).Select(each => TableRow.Of(Mark(each.Across), Mark(each.Film), each.Underside > Length.Zero ? Mark(each.Underside) : ""))])
    { Drawing = "bow" };

    public Table Purlins() => new("purlins", Say("Where purlins cross every bow, by a tape over its outside"),
        [new(Say("Purlin"), 3), new(Say("From the ridge"), 2, TextAlign.End), new(Say("From the ground line"), 2, TextAlign.End), new(Say("Middle, from the left ground line"), 2.4, TextAlign.End), new(Say("Middle, over the ground line"), 2.4, TextAlign.End)],
        [.. PurlinCrossing.Of(tunnel).Select(crossing => TableRow.Of(crossing.MemberId, Mark(crossing.FromRidge), Mark(crossing.FromFoot), Mark(crossing.Across), Mark(crossing.Up)))])
    { Drawing = "bow" };

    /// <summary>The words that the marks of parts are made of, which stay English so that everyone means the same part by them.</summary>
    public Table MarkWords()
    {
        string[] all = MarkWordsOf(tunnel);
        int half = (all.Length + 1) / 2;
        Column word = new(Say("In a mark"), 1.5), means = new(Say("Means"), 3);
        return new("mark-words", Say("Words in the marks of parts"), [word, means, word, means],
            [.. Enumerable.Range(0, half).Select(row => TableRow.Of(all[row], Meaning(all[row]), half + row < all.Length ? all[half + row] : "", half + row < all.Length ? Meaning(all[half + row]) : ""))]);

        string Meaning(string mark) => Say($"{mark} in a mark");
    }

    /// <summary>Each word of the marks of a tunnel's parts once, in the order of letters.</summary>
    public static string[] MarkWordsOf(Tunnel tunnel) =>
        [.. tunnel.Members.SelectMany(member => member.Id.Split('-')).Where(word => word.All(char.IsAsciiLetterLower) && word.Length > 0).Distinct().Order(StringComparer.Ordinal)];

    public Table Holes() => new("holes", Say("Concrete by hole"),
        [new(Say("Hole for"), 3), new(Say("Wide"), 1.6, TextAlign.End), new(Say("Deep"), 1.6, TextAlign.End), new(Say("Post in"), 1.6, TextAlign.End), new(Say("Collar"), 1.4, TextAlign.End), new(Say("Concrete"), 1.8, TextAlign.End)],
        [
            .. tunnel.Holes.Select(hole => TableRow.Of(hole.PostId, Tape(hole.Diameter), Mark(hole.Depth), Mark(hole.PostDepth), Tape(hole.CollarRise), TapeText.Of(hole.Volume, planned.Units))),
            TableRow.Total(Say("All holes"), "", "", "", "", TapeText.Of(Volume.FromCubicMetres(tunnel.Holes.Sum(hole => hole.Volume.CubicMetres)), planned.Units)),
        ])
    { Drawing = "set-out" };

    public Table Film(CoverPlan cover) => new("film", Say("Film pieces"),
        [new(Say("Piece"), 2.6), new(Say("Along the roll"), 2, TextAlign.End), new(Say("Roll at least"), 2, TextAlign.End), new(Say("Layers"), 1, TextAlign.End), new(Say("Made of"), 5)],
        [
            .. cover.Pieces.Select(piece => TableRow.Of(Say(piece.Place), Tape(piece.AlongRoll), Tape(TapeText.RoundUpForOpening(piece.AcrossRoll, planned.Units)), Number(piece.Count),
                string.Join(" + ", piece.AlongParts.Select(part => $"{Say(part.Name)} {Mark(part.Length)}")) + UpToStep(piece))),
        ])
    { Drawing = "film-cuts" };

    private string UpToStep(CoverPiece piece)
    {
        Length exact = Length.FromMetres(piece.AlongParts.Sum(part => part.Length.Metres));
        return piece.AlongRoll - exact > Length.FromMillimetres(0.5) ? $" = {Mark(exact)}, {Say("cut at the next whole step")}" : "";
    }

    public Table FilmMarks() => new("film-marks", Say("Marks along each roll, one tape from its start"),
        [new(Say("Roll"), 3), new(Say("Cut at"), 2, TextAlign.End), new(Say("Gives"), 6)],
        [
            .. planned.Film!.Rolls.SelectMany((roll, index) => roll.Levels.Select(level => TableRow.Of(
                string.Create(CultureInfo.InvariantCulture, $"{index + 1}: {Tape(roll.Offer.Width)} × {Tape(roll.Offer.Length)}"), Tape(level.To), string.Join("; ", level.Pieces.Select(piece => Say(piece.Label)))))),
        ])
    { Drawing = "film-cuts" };

    public Table Fastening(CoverPlan cover) => new("fastening", Say("Where film is held"),
        [new(Say("Where"), 4), new(Say("By"), 1.4), new(Say("Length"), 1.6, TextAlign.End), new(Say("Wires"), 1, TextAlign.End), new(Say("On"), 1.2)],
        [.. cover.Runs.Select(run => TableRow.Of(Say(run.Place), Say(run.Kind.ToString().ToLowerInvariant()), Mark(run.Length), run.Wires == 0 ? "" : Number(run.Wires), Say(run.OnWood ? "wood" : "tube")) with { LeadsTo = shown.Part(run.Id) })]);

    public Table Pull(PullPlan pull) => new("film-pull", words.Fill("How tight to pull the roof film; best near {0}", TapeText.Of(pull.Best, planned.Units)),
        [new(Say("Film at"), 1.4, TextAlign.End), new(Say("that is air in full sun at"), 1.6, TextAlign.End), new(Say("Pull"), 3), new(Say("Over the length"), 1.8, TextAlign.End), new(Say("Over a bow"), 1.6, TextAlign.End), new(Say("Then hangs at mid-bay"), 1.6, TextAlign.End), new(words.Fill("Gives under {0}, about", TapeText.Of(pull.GaugePush, planned.Units)), 1.8, TextAlign.End), new(Say("Hangs on the hottest day"), 1.8, TextAlign.End), new(Say("Pulls on the coldest day"), 2.6, TextAlign.End)],
        [.. pull.Rows.Select(row => PullRow(row))])
    { Drawing = "film-pull" };

    private TableRow PullRow(PullRow row)
    {
        (string says, bool isPulled) = row.Advice switch
        {
            PullAdvice.TooCold => ("too cold: do not pull", false),
            PullAdvice.PastSnug => ("past snug by", true),
            PullAdvice.Snug => ("just snug", true),
            PullAdvice.Loose => ("leave longer than snug by", true),
            PullAdvice.TooHot => ("too hot: do not pull", false),
        };
        bool isMeasured = row.Advice is PullAdvice.PastSnug or PullAdvice.Loose;
        return TableRow.Of(
            TapeText.Of(row.Film, planned.Units), TapeText.Of(row.AirInSun, planned.Units), Say(says),
            isMeasured ? Mark(row.PastSnugAlong.Abs()) : "", isMeasured ? Mark(row.PastSnugOverBow.Abs()) : "",
            isPulled ? Mark(row.Sag) : "", isPulled ? Mark(row.Give) : "", isPulled ? Mark(row.HotSag) : "",
            isPulled ? words.Fill("{0} to {1}", TapeText.Of(row.ColdPullCrept, planned.Units), TapeText.Of(row.ColdPull, planned.Units)) : "");
    }

    public Table CrewRules(FasteningPlan plan) => new("covering-people", Say("Why so many people"),
        [new(Say("Reason"), 8), new(Say("People"), 1, TextAlign.End)],
        [.. plan.CrewRules.Select(rule => TableRow.Of(Phrased(rule.Says), Number(rule.People)))])
    { Drawing = "roof-pull" };

    public Table InWind(FasteningPlan plan) => new("covering-in-wind", Say("How many people in which wind, at the bows"),
        [new(Say("Wind or gust"), 2, TextAlign.End), new(Say("Pulls at the sheet"), 2, TextAlign.End), new(Say("People"), 3)],
        [
            .. plan.InWind.Select(each => TableRow.Of(TapeText.Of(each.Wind, planned.Units), TapeText.Of(each.Pull, planned.Units),
                each.IsFit ? Number(each.People) : words.Fill("do not pull: it would take {0}", Number(each.People)))),
        ])
    { Drawing = "roof-pull" };

    /// <summary>The steps on one sheet, as for a file; the pages have them one by one.</summary>
    public Table Steps(FasteningPlan plan) => new("covering-steps", Say("Step by step"),
        [new(Say("No."), 0.7, TextAlign.End), new(Say("Step"), 2.4), new(Say("What to do"), 6), new(Say("People"), 0.9, TextAlign.End), new(Say("Uses"), 3.2), new(Say("Good when"), 2.6), new(Say("Mind"), 1.6)],
        [
            .. plan.Steps.Select((step, index) => TableRow.Of(Number(index + 1), Phrased(step.Title), string.Join(' ', step.Does.Select(Phrased)), Number(step.People), Uses(step.Materials),
                string.Join(' ', step.Good.Select(Phrased)), string.Join(", ", step.Cautions.Select(caution => Say(caution.Id))))),
        ]);

    /// <summary>What a step uses up, item by item.</summary>
    public string Uses(IEnumerable<MaterialLine> lines) => string.Join("; ", lines.Select(line => $"{(line.Unit == MaterialUnit.CutLengths ? Pieces(line) : MaterialText.Load(line, planned.Units))} {Say(line.Item)}{(line.Size.Length > 0 ? " " + Say(line.Size) : "")}"));

    /// <summary>How many pieces are taken from the pile: of a run that is joined, each that it is cut into.</summary>
    private string Pieces(MaterialLine line)
    {
        HashSet<string> wanted = [.. line.Pieces.Select(piece => piece.MemberId)];
        int cut = planned.Cuts?.Of(line.Item, line.Size) is not { } sheet ? 0
            : sheet.Bars.SelectMany(bar => bar.Pieces).Where(piece => wanted.Contains(piece.MemberId)).DistinctBy(piece => (piece.MemberId, piece.Part)).Count();
        decimal count = Math.Max(cut, line.Quantity);
        return count == 1 ? Say("one piece") : words.Fill("{0} pieces", MaterialText.Count(count));
    }

    /// <summary>A sentence in the language of the sheets; names in it too.</summary>
    public string Phrased(Phrase phrase) => words.Say(phrase);

    /// <summary>The steps of a job on one sheet, as for a file.</summary>
    public Table BuildSteps(BuildPlan plan, string name) => new(name, Say("All steps"),
        [new(Say("No."), 0.7, TextAlign.End), new(Say("Step"), 3), new(Say("After"), 4), new(Say("Work for one person"), 1.8), new(Say("People"), 1), new(Say("Weather"), 2.4), new(Say("Signed, day"), 2)],
        [
            .. plan.Steps.Select((step, index) => TableRow.Of(Number(index + 1), Phrased(step.Title), string.Join("; ", step.After.Select(wait => WaitOf(plan, wait))),
                words.Fill("{0}, {1} to {2}", StepCards.Hours(step.Work.Likely), StepCards.Hours(step.Work.Least), StepCards.Hours(step.Work.Most)), PeopleOf(step),
                string.Join(", ", StepCards.Weather(step.Weather, planned.Units).Select(Phrased)), step.Hold is null ? "" : "☐") with
            { LeadsTo = step.Drawings.FirstOrDefault() }),
        ]);

    /// <summary>The most of each tool that a step takes, and for which steps.</summary>
    public Table Tools(BuildPlan plan) => new("tools", Say("Tools for the whole job"),
        [new(Say("Tool"), 3), new(Say("At once"), 1, TextAlign.End), new(Say("For steps"), 6)],
        [
            .. plan.Steps.SelectMany((step, index) => step.Tools.Select(tool => (tool, index))).GroupBy(each => each.tool.Name).Select(group => (Name: Say(group.Key), Most: group.Max(each => each.tool.Count), Steps: group.Select(each => Number(each.index + 1))))
                .OrderBy(each => each.Name, StringComparer.Ordinal).Select(each => TableRow.Of(each.Name, Number(each.Most), string.Join(", ", each.Steps))),
        ]);

    /// <summary>How many people a step takes: at least and at best.</summary>
    public static string PeopleOf(BuildStep step) => step.LeastPeople == step.BestPeople ? Number(step.BestPeople) : $"{Number(step.LeastPeople)}–{Number(step.BestPeople)}";

    /// <summary>What a step waits for, by its number, and how long.</summary>
    public string WaitOf(BuildPlan plan, StepWait wait)
    {
        int number = plan.Steps.Select((step, index) => (step.Id, index)).First(each => each.Id == wait.StepId).index;
        string named = $"{Number(number + 1)} {Phrased(plan.Steps[number].Title)}";
        return wait.Wait > TimeSpan.Zero ? words.Fill("{0} and {1} h more", named, Number((int)wait.Wait.TotalHours)) : named;
    }

    /// <summary>A tool, and how many where it is more than one.</summary>
    public string ToolOf(Tool tool) => tool.Count == 1 ? Say(tool.Name) : $"{Number(tool.Count)} × {Say(tool.Name)}";

    public Table Takeoff(TakeoffList takeoff) => new("takeoff", "Takeoff: what is needed and why",
        [new("Stage", 1.2), new("Item", 2.6), new("Size", 2.6), new("Needed", 1.6, TextAlign.End), new("Unit", 1.2), new("Rule", 5)],
        [
            .. takeoff.Lines.Select(line => TableRow.Of(line.Stage.ToString().ToLowerInvariant(), line.Item, line.Size, Amount(line.Quantity, line.Unit), line.Unit == MaterialUnit.CutLengths ? "pieces" : line.Unit == MaterialUnit.Each ? "each" : "", line.Rule) with
            { LeadsTo = shown.Parts(line.TraceIds, line.Stage) }),
        ]);

    public Table Orders(OrderList orders, Supplier supplier) => new("order-" + FileNames.Of(supplier.ToString()), $"Order: {NameOf(supplier)}",
        [new("Item", 2.6), new("Size", 2.8), new("Package", 2), new("Needed", 1.5, TextAlign.End), new("Waste, spare", 1.4, TextAlign.End), new("On hand", 1, TextAlign.End), new("Buy", 0.9, TextAlign.End), new("Price", 1.3, TextAlign.End), new("Cost", 1.4, TextAlign.End)],
        [
            .. orders.Lines.Where(line => line.Supplier == supplier).Select(line => TableRow.Of(line.Item, line.Size, Package(line), OrderAmount.Needed(line, planned.Units), line.Waste + line.Spare == 0 ? "" : OrderAmount.Of(line, line.Waste + line.Spare, planned.Units),
                line.FromStock == 0 ? "" : OrderAmount.Of(line, line.FromStock, planned.Units), Number(line.Packages), line.Price is { } price ? price.ToString() : "no price", line.Extension is { } cost ? cost.ToString() : "") with
            { LeadsTo = OfOrder(line) }),
            TableRow.Total("Sum", "", "", "", "", "", "", "", orders.TotalFor(supplier).ToString()),
        ]);

    /// <summary>What shows the first thing that an order line is for; for joints of long runs the cut lists, by which they fall; null for a line added by hand.</summary>
    private string? OfOrder(OrderLine line) => planned.Takeoff!.Lines.FirstOrDefault(each => line.TakeoffIds.Contains(each.Id)) is { } counted ? shown.Parts(counted.TraceIds, counted.Stage) : line.IsExtra ? null : "cut-lists";

    public static Table Stages(OrderList orders) => new("cost-by-stage", $"Cost by stage, {orders.Currency}",
        [new("Stage", 3), new("Cost", 2, TextAlign.End)],
        [.. orders.Stages.Select(stage => TableRow.Of(stage.Stage?.ToString() ?? "None given", stage.Cost.ToString())), TableRow.Total("All", orders.Total.ToString())]);

    public Table Cuts(CutSheet sheet) => new("cuts-" + FileNames.Of(sheet.Name), $"{Say("Cut list")}: {NameOf(sheet, words)}, {Say(sheet.Proof)}",
        [new(Say("Bar"), 0.8, TextAlign.End), new(Say("From"), 1.8), new(Say("Pieces in cutting order, a box to tick for each cut: number, length, for"), 8), new(Say("Left"), 1.6, TextAlign.End)],
        [
            .. sheet.Bars.Select(bar => TableRow.Of(Number(bar.Number), Tape(bar.Stock) + (bar.IsRest ? " " + Say("rest") : bar.OnHand ? " " + Say("on hand") : ""),
                StateOf(bar) + string.Join(";  ", bar.Pieces.Select(piece => $"{(bar.State == CutBarState.ToCut ? Box : "")}{piece.Number}: {Tape(piece.Length)} {LabelOf(piece)}")), bar.Leftover.Metres < 0.001 ? "" : $"{Mark(bar.Leftover)}{(bar.LeftoverUseful ? ", " + Say("keep") : "")}")),
        ])
    { Drawing = sheet.IsSawn ? "cut-lists" : "roof-pull" };

    private string StateOf(CutBar bar) => bar.State switch
    {
        CutBarState.ToCut => "",
        CutBarState.Cut => Say("Cut already:") + " ",
        CutBarState.Bad => Say("Bad, not used."),
        CutBarState.Spare => Say("Not needed any more."),
    };

    // The English sheets carry the name of the member; a crew that reads another language is told where the piece goes.
    private string LabelOf(CutBarPiece piece) => words.Language == "en" || piece.Place.Length == 0 ? Say(piece.Label) : $"{Say(piece.Label)} ({Say(piece.Place)})";

    /// <summary>Equal lengths together, so that the stop is set once for each.</summary>
    public Table Stops(CutSheet sheet) => new("stops-" + FileNames.Of(sheet.Name), $"{Say("Saw stop")}: {NameOf(sheet, words)}",
        [new(Say("Blade to stop"), 2, TextAlign.End), new(Say("Pieces"), 1, TextAlign.End), new(Say("Numbers"), 8)],
        [.. sheet.Stops.Select(stop => TableRow.Of(Tape(stop.Length), Number(stop.Pieces.Length), stop.Numbers))])
    { Drawing = "cut-lists" };

    public Table Rules() => new("rules", "Every rule that was used, and every value that has a usual one",
        [new("In the plan at", 3.2), new("Value", 1.6), new("What it means", 4.6), new("From", 3.6)],
        [.. planned.Rules.Select(rule => TableRow.Of(rule.Path, rule.Text, rule.Says, From(rule.From)) with { LeadsTo = shown.Field(rule.Path) })]);

    public Table Sources() => new("sources", "Published sources of these rules and values",
        [new("No.", 1), new("Source", 12)],
        [.. published.Select((title, index) => TableRow.Of(SourceNumber(index), title))]);

    private string From(Citation source)
    {
        if (!IsPublished(source)) return source.ToString();
        string number = SourceNumber(published.IndexOf(source.Title)), mark = source.Standing == Standing.FromMemory && !source.Place.EndsWith("from memory", StringComparison.Ordinal) ? "from memory" : "";
        return string.Join(", ", new[] { $"{number} {source.Place}".TrimEnd(), mark }.Where(part => part.Length > 0));
    }

    private static bool IsPublished(Citation source) =>
        source != Citation.ThePlan && source.Title != Citation.CommonPractice.Title && source.Title != Citation.FromMemory.Title && source.Title != Citation.Geometry.Title;

    private static string SourceNumber(int index) => string.Create(CultureInfo.InvariantCulture, $"[{index + 1}]");

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);

    private string Amount(decimal value, MaterialUnit unit) => MaterialText.Amount(value, unit, planned.Units);

    /// <summary>A package as a counter hand would say it: "board, 12' 0&quot;", "roll, 36' 0&quot; × 110' 0&quot;", "box of 100".</summary>
    private string Package(OrderLine line) => (line.Width, line.Length) switch
    {
        ({ } width, { } length) => $"{line.Package}, {Tape(width)} × {Tape(length)}",
        (null, { } length) => $"{line.Package}, {Tape(length)}",
        _ => line.Package,
    };

    internal static string NameOf(Supplier supplier) => supplier switch
    {
        Supplier.LumberYard => "lumber yard",
        Supplier.SteelMerchant => "steel merchant",
        Supplier.FilmSupplier => "film supplier",
        Supplier.HardwareShop => "hardware shop",
        Supplier.AddedByHand => "lines added by hand",
    };
}
