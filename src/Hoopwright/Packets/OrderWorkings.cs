using System.Collections.Immutable;
using Hoopwright.Cover.Pull;
using Hoopwright.Sources;

namespace Hoopwright.Packets;

/// <summary>Workings of cover, takeoff, orders and cuts.</summary>
internal static class OrderWorkings
{
    private static readonly Citation Geometry = Citation.Geometry;
    private static readonly Citation Practice = Citation.CommonPractice;

    public static ImmutableArray<Working> All { get; } =
    [
        // Cover.
        Workings.Of("cover.thickness", "as planned", Practice, [], ["cover.thickness"]),
        Workings.Of("cover.temporaryWires", "length of the end bows ÷ spacing, and one more", Practice, [], ["cover.temporaryWireSpacing"]),
        Workings.Of("cover.bowTape", "roof arc of every bow, and some over each sharp point: end-wall posts and ends of lengthwise tubes", Practice, [], ["cover.tapePerPoint"]),
        Workings.Of("cover.ropes.count", "roof film ÷ the most they may stand apart, whole steps, and one more; two at least", Practice, [], ["cover.ropeSpacing"]),
        Workings.Of("cover.ropes.length", "width of the roof film, and some to hold", Practice, [], ["cover.ropeAllowance"]),
        Workings.Of("cover.ropes.marks[*].mark", "equal steps along the edge of the roof film", Practice, [], []),
        Workings.Of("cover.pieces[*].alongRoll", "the parts added up, to the next whole cutting step", Practice, [], ["cover.cutStep", "cover.roofEndAllowance", "cover.endBelow", "cover.endAbove", "cover.endWorking", "cover.curtainEndAllowance", "cover.leafWrap"]),
        Workings.Of("cover.pieces[*].acrossRoll", "the parts added up", Practice, [], ["cover.roofSideAllowance", "cover.endSide", "cover.curtainAllowance", "cover.leafWrap"]),
        Workings.Of("cover.pieces[*].alongParts[*].length", "what the part is called says it", Practice, [], []),
        Workings.Of("cover.pieces[*].acrossParts[*].length", "what the part is called says it", Practice, [], []),
        Workings.Of("cover.pieces[*].finishedArea", "area of the finished outline, from lines and arcs", Geometry, [], []),
        Workings.Of("cover.pieces[*].count", "layers of film", Practice, [], ["cover.layers"]),
        Workings.Of("cover.runs[*].length", "length of the line along which the film is held, from the layout", Geometry, [], []),
        Workings.Of("cover.runs[*].wires", "a wire for each sheet of film that is held there", Practice, [], []),
        Workings.Of("cover.film.rolls[*].width", "a roll that can be had", Practice, [], ["cover.rolls"]),
        Workings.Of("cover.film.rolls[*].length", "a roll that can be had", Practice, [], ["cover.rolls"]),
        Workings.Of("cover.film.rolls[*].remainder", "roll less the last mark", Geometry, [], []),
        Workings.Of("cover.film.rolls[*].levels[*].from", "the mark before", Geometry, [], []),
        Workings.Of("cover.film.rolls[*].levels[*].to", "the mark before and the longest piece, from exact lengths", Geometry, [], ["cover.cutStep"]),
        Workings.Of("cover.film.rolls[*].levels[*].pieces[*].copy", "layer", Practice, [], []),
        Workings.Of("cover.film.rolls[*].levels[*].pieces[*].offset", "pieces side by side across the roll", Geometry, [], []),
        Workings.Of("cover.film.rolls[*].levels[*].pieces[*].across", "width to cut", Geometry, [], []),
        Workings.Of("cover.film.rolls[*].levels[*].pieces[*].along", "length to cut", Geometry, [], []),
        Workings.Of("cover.film.boughtArea", "width × length of the rolls that are bought", Geometry, [], []),
        Workings.Of("cover.film.cost", "price of the rolls that are bought", Geometry, [], ["cover.rolls"]),
        Workings.Of("cover.film.lowerBound", "what no choice of rolls can beat, from the search over all of them", Geometry, [], ["cover.slitFilm", "cover.turnFilm"]),

        // Takeoff.
        Workings.Of("takeoff[*].quantity", "sum of the parts below, each by its own rule", Practice, [], []),
        Workings.Of("takeoff[*].parts[*].quantity", "counted by the rule beside it", Practice, [], []),
        Workings.Of("takeoff[*].pieces[*].length", "length of the member, rounded for the tape", Geometry, [], []),

        // Orders.
        Workings.Of("orders.total", "sum of the lines that have a price", Geometry, [], ["prices.items"]),
        Workings.Of("orders.unpriced", "lines to buy that have no price", Geometry, [], ["prices.items"]),
        Workings.Of("orders.stages[*].cost", "each line shared out by what each stage needs of it", Geometry, [], []),
        Workings.Of("orders.haul.steel", "tube as bought × area of its section × 7850 kg/m³", Register.Mechanics.At("weight of steel", Standing.Derived), ["orders.lines[*].packages"], []),
        Workings.Of("orders.haul.lumber", "boards and posts as bought × dressed size × 600 kg/m³, about", Citation.FromMemory, ["orders.lines[*].packages"], []),
        Workings.Of("orders.haul.dryConcrete", "bags as bought × what a bag weighs", Geometry, ["orders.lines[*].packages"], ["ground.bagMass"]),
        Workings.Of("orders.haul.film", FormattableString.Invariant($"film as bought × thickness × {FilmMaterial.KgM3} kg/m³"), FilmMaterial.Density.Source, ["cover.film.boughtArea"], ["cover.thickness"]),
        Workings.Of("orders.haul.all", "all of it", Geometry, ["orders.haul.steel", "orders.haul.lumber", "orders.haul.dryConcrete", "orders.haul.film"], []),
        Workings.Of("orders.lines[*].needed", "from the takeoff and the cut sheets", Geometry, [], []),
        Workings.Of("orders.lines[*].width", "unfolded width of the roll that the film cuts chose", Practice, [], ["cover.rolls"]),
        Workings.Of("orders.lines[*].length", "length in which it is sold, as the cut lists chose it", Practice, [], ["prices.items"]),
        Workings.Of("orders.lines[*].waste", "needed × concrete bought beyond the computed volume", Practice, ["orders.lines[*].needed"], ["orders.concreteWaste"]),
        Workings.Of("orders.lines[*].spare", "needed × fasteners bought beyond the count, up to a whole one", Practice, ["orders.lines[*].needed"], ["orders.fastenerSpare"]),
        Workings.Of("orders.lines[*].over", "packages × what a package holds, less what is to be bought", Geometry, ["orders.lines[*].packages", "orders.lines[*].perPackage"], []),
        Workings.Of("orders.lines[*].perPackage", "what one package holds, by the price book or as usually sold", Practice, [], ["prices.items", "ground.bagMass"]),
        Workings.Of("orders.lines[*].fromStock", "what is on hand is used first", Practice, [], []),
        Workings.Of("orders.lines[*].packages", "(needed + waste + spare − on hand) ÷ what a package holds, up to a whole number", Geometry, ["orders.lines[*].needed", "orders.lines[*].waste", "orders.lines[*].spare", "orders.lines[*].perPackage", "orders.lines[*].fromStock"], []),
        Workings.Of("orders.lines[*].price", "price book", Practice, [], ["prices.items"]),
        Workings.Of("orders.lines[*].extension", "packages × price, to the cent", Geometry, ["orders.lines[*].packages", "orders.lines[*].price"], []),

        // Cuts.
        Workings.Of("cuts[*].kerf", "as planned", Practice, [], ["cuts.kerf"]),
        Workings.Of("cuts[*].trim", "as planned", Practice, [], ["cuts.endTrim"]),
        Workings.Of("cuts[*].cost", "least cost of the bars over all ways of cutting them, by column generation with a bound in whole numbers", Geometry, [], ["prices.items", "cuts.kerf"]),
        Workings.Of("cuts[*].gapPercent", "(cost − bound) ÷ bound", Geometry, [], []),
        Workings.Of("cuts[*].joinsCompared", "ways of joining long runs that were compared; those whose lower bound is over the best need not be cut", Geometry, [], []),
        Workings.Of("cuts[*].joints[*].at", "distance of the joint from the start of the run; moved back to clear the bows", Practice, [], []),
        Workings.Of("cuts[*].bars[*].number", "cutting order", Practice, [], []),
        Workings.Of("cuts[*].bars[*].stock", "length of the bar as sold or on hand", Practice, [], []),
        .. from count in (string[])["cut", "bad", "kept", "changed"]
           select Workings.Of("cuts[*].progress." + count, "stock pieces that the site book says are cut or bad, and those still to be cut as planned and otherwise", Geometry, [], ["siteBook"]),
        Workings.Of("cuts[*].progress.further[*].length", "least further cost for what is left, with as many stock pieces as can be cut as they were planned", Geometry, [], ["siteBook", "prices.items"]),
        Workings.Of("cuts[*].stops[*].length", "pieces of one length, cut against one stop", Geometry, [], []),
        Workings.Of("cuts[*].madeToLength[*].length", "length of a member that is longer than any stock", Geometry, [], []),
        Workings.Of("cuts[*].bars[*].pieces[*].from", "trim, and the pieces and saw cuts before it", Geometry, [], ["cuts.kerf", "cuts.endTrim"]),
        Workings.Of("cuts[*].bars[*].pieces[*].part", "pieces of a run counted from its start", Geometry, [], []),
        Workings.Of("cuts[*].bars[*].pieces[*].parts", "pieces that the run is joined from", Geometry, [], []),
        Workings.Of("cuts[*].bars[*].pieces[*].length", "length of the member or of a part of a run, rounded for the tape", Geometry, [], []),
        Workings.Of("cuts[*].bars[*].leftover", "bar less trim, pieces and saw cuts", Geometry, ["cuts[*].bars[*].stock"], []),
        Workings.Of("cuts[*].bars[*].kerfLost", "a saw cut a piece, but for a last one that ends with the bar", Geometry, [], ["cuts.kerf"]),
    ];
}
