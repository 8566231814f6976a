using System.Collections.Immutable;
using Hoopwright.BuildSteps;
using Hoopwright.Cover;
using Hoopwright.CoverSteps;
using Hoopwright.Cuts;
using Hoopwright.Layout;
using Hoopwright.Orders;
using Hoopwright.Packets;
using Hoopwright.Sheets.Tables;
using Hoopwright.Sheets.Words;
using Hoopwright.Takeoff;

namespace Hoopwright.Sheets.Packets;

/// <summary>The tables of a packet. Each is made once, and goes on paper and into a CSV file.</summary>
internal sealed class PacketTables
{
    /// <summary>Makes them all.</summary>
    /// <param name="planned">A plan worked out to its end.</param>
    /// <param name="tunnel">Its tunnel.</param>
    /// <param name="words">The language of the tables that a crew reads; English when null.</param>
    public PacketTables(PlannedTunnel planned, Tunnel tunnel, CrewWords? words = null)
    {
        (CoverPlan cover, TakeoffList takeoff, OrderList orders, CutSheets cuts) = planned is { Cover: { } covered, Takeoff: { } counted, Orders: { } ordered, Cuts: { } cut }
            ? (covered, counted, ordered, cut)
            : throw new ArgumentException("The plan was not worked out to its end.", nameof(planned));
        var make = new PacketTableMaker(planned, tunnel, words ?? CrewWords.English);
        SideMarks = make.SideMarks();
        Ordinates = make.Ordinates();
        Purlins = make.Purlins();
        MarkWords = make.MarkWords();
        EndPosts = [.. tunnel.Ends.Where(end => !end.Posts.IsEmpty).Select(make.EndPosts)];
        Doors = make.Doors();
        Holes = make.Holes();
        Film = make.Film(cover);
        FilmMarks = make.FilmMarks();
        Fastening = make.Fastening(cover);
        Pull = make.Pull(cover.Pull);
        (FasteningPlan fastening, BuildPlan build, BuildPlan recover) = planned is { Fastening: { } fastened, Steps: { } built, RecoverSteps: { } recovered }
            ? (fastened, built, recovered)
            : throw new ArgumentException("The plan was not worked out to its end.", nameof(planned));
        Covering = [make.CrewRules(fastening), make.InWind(fastening)];
        Steps = make.Steps(fastening);
        (BuildSteps, RecoverSteps, Tools) = (make.BuildSteps(build, "steps"), make.BuildSteps(recover, "recover-steps"), make.Tools(build));
        Takeoff = make.Takeoff(takeoff);
        Orders = [.. orders.Lines.Select(line => line.Supplier).Distinct().Order().Select(supplier => make.Orders(orders, supplier))];
        Stages = PacketTableMaker.Stages(orders);
        Cuts = [.. cuts.Sheets.SelectMany(sheet => sheet.IsSawn ? (Table[])[make.Cuts(sheet), make.Stops(sheet)] : [make.Cuts(sheet)])];
        (Rules, Sources) = (make.Rules(), make.Sources());
        SiteBook = new SiteBookTables(planned);
        Strength = planned.Strength is { } strength ? new StrengthTables(strength, planned.Units, new ShownOn(tunnel)) : null;
    }

    /// <summary>Checks before each cut, and what was measured.</summary>
    public SiteBookTables SiteBook { get; }

    /// <summary>Marks along both side strings.</summary>
    public Table SideMarks { get; }

    /// <summary>Heights of the bow.</summary>
    public Table Ordinates { get; }

    /// <summary>Where purlins cross the bows.</summary>
    public Table Purlins { get; }

    /// <summary>The words that the marks of parts are made of, for those who read another language.</summary>
    public Table MarkWords { get; }

    /// <summary>Posts of each end that has some.</summary>
    public ImmutableArray<Table> EndPosts { get; }

    /// <summary>Doors of both ends.</summary>
    public Table Doors { get; }

    /// <summary>Concrete by hole.</summary>
    public Table Holes { get; }

    /// <summary>Film pieces.</summary>
    public Table Film { get; }

    /// <summary>Marks along each roll.</summary>
    public Table FilmMarks { get; }

    /// <summary>Where film is held.</summary>
    public Table Fastening { get; }

    /// <summary>How tight film is pulled.</summary>
    public Table Pull { get; }

    /// <summary>People for the roof film, and why.</summary>
    public ImmutableArray<Table> Covering { get; }

    /// <summary>How the film is put on.</summary>
    public Table Steps { get; }

    /// <summary>The whole build as steps.</summary>
    public Table BuildSteps { get; }

    /// <summary>New film on a tunnel that stands, as steps.</summary>
    public Table RecoverSteps { get; }

    /// <summary>Tools for the whole build.</summary>
    public Table Tools { get; }

    /// <summary>What is needed and why.</summary>
    public Table Takeoff { get; }

    /// <summary>One order for each supplier.</summary>
    public ImmutableArray<Table> Orders { get; }

    /// <summary>Cost by stage.</summary>
    public Table Stages { get; }

    /// <summary>For each item and size its cut list, then the settings of the saw stop where it is sawn.</summary>
    public ImmutableArray<Table> Cuts { get; }

    /// <summary>Every rule and value used.</summary>
    public Table Rules { get; }

    /// <summary>Publications that the rules name by number.</summary>
    public Table Sources { get; }

    /// <summary>What the tunnel stands; null when it was not worked out.</summary>
    public StrengthTables? Strength { get; }

    /// <summary>Every table, for files.</summary>
    public ImmutableArray<Table> All =>
        [BuildSteps, RecoverSteps, Tools, SideMarks, Ordinates, Purlins, .. EndPosts, Doors, Holes, Film, FilmMarks, Fastening, Pull, .. Covering, Steps, Takeoff, .. Orders, Stages, .. Cuts, .. StrengthChapter.TablesOf(Strength), .. SiteBook.All, Rules, Sources];
}
