using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Packets;

/// <summary>
/// What a reviewer of a conservation programme or of a building office asks for, and where it stands or what is missing. What is asked is
/// common practice, no source: each office has a list of its own.
/// </summary>
internal static class ReviewChapter
{
    // Room to write in.
    private static readonly string Room = new(Table.Joiner, 60);

    /// <summary>Sets the page.</summary>
    /// <param name="book">The packet.</param>
    /// <param name="planned">A plan worked out to its end.</param>
    /// <param name="tunnel">Its tunnel.</param>
    public static void Set(PacketBook book, PlannedTunnel planned, Tunnel tunnel)
    {
        book.Chapter("For reviewers", "review").Paragraph("What a conservation programme or a building office commonly asks for, and where it stands in this packet. Each office has its own list, which goes before this one. This packet is not sealed by an engineer.");
        book.Table(new Table("review", "Where it stands", [new("Asked for", 2), new("Where it stands, or what is missing", 6), new("Page", 0.9, TextAlign.End)], [.. Rows(planned, tunnel, book.Drawings)]));
        book.Table(new Table("permits", "To ask the building office and the programme, and to write down", [new("Question", 6), new("Answer, from whom, day", 3.4)], [.. Questions(tunnel).Select(question => TableRow.Of(question, Room))]));
    }

    /// <summary>The rows that lead to a place of the packet, with the number of the sheet where it is a drawing, or say what is missing.</summary>
    internal static ImmutableArray<TableRow> Rows(PlannedTunnel planned, Tunnel tunnel, ImmutableDictionary<string, string> sheets)
    {
        Site site = planned.Plan.Site;
        bool hasLoads = planned.Strength is { Loads: { GroundSnow: not null, Wind: not null } };
        return
        [
            At("Location", "Design summary: place and direction", "summary"),
            .. Missing(site.Place is null, "the place in words: site.place"),
            .. Missing(site.Latitude is null || site.Longitude is null, "coordinates: site.latitude, site.longitude"),
            Lacks("a map of the parcel with property lines, wells, wetlands and other buildings: the packet draws the tunnel alone"),
            At("Layout", "Strings, corners, bows, fall of the ground", "set-out"),
            .. Missing(site.FrontFaces is null, "north: site.frontFaces"),
            At("", "Bow, heights and bends", "bow"),
            .. tunnel.Ends.Where(end => end.Closing != EndClosing.Open).Select(end => At("", $"{(end.IsFront ? "Front" : "Back")} end and its doors", end.Name + "-end")),
            .. hasLoads ? (ImmutableArray<TableRow>)[] : [Lacks("ground snow and wind from the building office: site.groundSnow, site.wind")],
            .. planned.Strength is null ? (ImmutableArray<TableRow>)[] : [At("Loads", "Snow and wind as entered, each value with its source", "strength-coefficients"), At("", "What the frame stands, combination by combination", "strength")],
            At("Anchorage", tunnel.Holes.IsEmpty ? "Posts and their depth in the ground" : "Concrete by hole, depth of posts", tunnel.Holes.IsEmpty ? "side-marks" : "holes"),
            .. planned.Strength is { FootLoads.IsEmpty: false } ? (ImmutableArray<TableRow>)[At("", "What the foot of a bow puts on its post", "strength-posts")] : [],
            .. Missing(site.FrostDepth is null, "frost depth: site.frostDepth"),
            .. Missing(site.SoilClass is null, "class of the soil: site.soilClass"),
            Lacks("Drainage", "where water off the roof goes: nothing here plans swales, gutters or outlets. Show them on the map, with the fall of the ground from the set-out drawing"),
            At("Materials", "What is ordered, with sizes", "orders"),
            At("", "What each item is needed for", "takeoff"),
            At("", "Film, its pieces and how it is held", "cover"),
            At("Operation and upkeep", "How the film is put on; rounds and the storm card are in upkeep.pdf", "covering"),
            At("Safety", "Steps with cautions, where each danger is met; each step's card is in cards.pdf", "steps"),
            At("", "Digging, overhead lines: before anything is dug or driven", "set-out-chapter"),
            Lacks("Utilities check", "number and day of the one-call ticket; private lines marked by: ____________________"),
            At("What it rests on", "Assumptions to confirm, one by one", "assumptions"),
            At("", "Published sources, by number", "sources"),
        ];

        TableRow At(string asked, string where, string name) => TableRow.Of(asked, sheets.TryGetValue(name, out string? number) ? $"{where}: sheet {number}" : where, PacketBook.PageCell) with { LeadsTo = name };
    }

    private static IEnumerable<string> Questions(Tunnel tunnel)
    {
        yield return "Does a film-covered growing tunnel of this size need a permit here, or is it exempt as an agricultural structure? For how long may it stand?";
        yield return "Which edition of which code and standard holds, with which ground snow, wind, exposure, frost depth and risk category?";
        yield return "Setbacks from property lines, roads, wells and overhead lines; flood plain, wetland, easements?";
        yield return "Must drawings or anchorage be sealed by a licensed engineer?";
        yield return "Does the film need a fire rating; may people other than workers go in; which ways out are asked for?";
        if (tunnel.Ends.Any(end => !end.Doors.IsEmpty)) yield return "Do the doors serve as ways out: least clear width, which way they swing?";
        yield return "Water, electricity, heat: which permits of their own?";
        yield return "For a programme: which practice standard, what must be inspected before cover and before payment, how long must it be kept up?";
    }

    private static TableRow Lacks(string what) => Lacks("", what);

    private static TableRow Lacks(string asked, string what) => TableRow.Of(asked, "☐ missing: " + what, "");

    private static ImmutableArray<TableRow> Missing(bool isMissing, string what) => isMissing ? [Lacks(what)] : [];
}
