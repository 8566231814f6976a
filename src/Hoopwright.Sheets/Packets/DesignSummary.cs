using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Orders;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Tables;
using Hoopwright.Strength;

namespace Hoopwright.Sheets.Packets;

/// <summary>The whole design on one page, then what to look at again and what was assumed.</summary>
internal static class DesignSummary
{
    /// <summary>What stands where the plan gives nothing.</summary>
    private const string NotGiven = "not given in the plan";

    /// <summary>Sets the pages.</summary>
    public static void Set(PacketBook book, PlannedTunnel planned, Tunnel tunnel, OrderList orders)
    {
        ShownOn shown = new(tunnel);
        book.Chapter("Design summary", "summary").Table(new Table("summary", "In short", [new("What", 3), new("How much", 8)], [.. Rows(planned, tunnel, orders, shown).Select(row => TableRow.Of(row.What, row.Much) with { LeadsTo = row.Shown })]));
        StrengthChapter.Summarise(book, planned.Strength);
        ImmutableArray<Diagnostic> warnings = [.. planned.Diagnostics.Where(each => each.Severity == Severity.Warning)];
        if (!warnings.IsEmpty)
            book.Chapter("Look at these again").Points(warnings.Select(each => $"{each.Message} {(each.Seen is { } seen ? $"Seen: {seen}. " : "")}{(each.Accepted is { } would ? $"Would do: {would}. " : "")}({each.Path})"));
        book.Chapter("Assumptions to confirm", "assumptions").Paragraph("The plan does not say these; each was taken as it usually is. Confirm each with whoever knows, or put the right value into the plan. Common practice and values from memory are marked as such in 'Rules and values'.")
            .Table(new Table("assumptions", "What was taken", [new("☐", 0.5), new("Assumption", 6), new("Taken", 2.4), new("In the plan at", 2.6)],
                [.. planned.Assumptions.Select(each => TableRow.Of("☐", each.Message, each.Accepted ?? "", each.Path) with { LeadsTo = shown.Field(each.Path) })]));
    }

    private static IEnumerable<(string What, string Much, string? Shown)> Rows(PlannedTunnel planned, Tunnel tunnel, OrderList orders, ShownOn shown)
    {
        UnitSystem units = planned.Units;
        Site site = planned.Plan.Site;
        string Tape(Length length) => TapeText.Of(length, units);
        yield return ("Place", string.Join(", ", new[] { site.Place is { } place ? PacketWriter.OneLine(place) : NotGiven, Coordinates(site) ?? "coordinates " + NotGiven, site.FrontFaces is { } faces ? $"front end faces {faces.Text}" : "direction of the front end " + NotGiven }), "set-out");
        yield return ("Plan", $"{Tape(tunnel.Span)} wide at the ground, {Tape(tunnel.Length)} long, {TapeText.Of(Area.FromSquareMetres(tunnel.Span.Metres * tunnel.Length.Metres), units)}; diagonal of the strings {Tape(TapeText.RoundToMark(tunnel.SetOut.Diagonal, units))}", "set-out");
        yield return ("Bows", string.Create(CultureInfo.InvariantCulture, $"{tunnel.Stations.Length} {tunnel.Bow.Kind.ToString().ToLowerInvariant()} bows, {Tape(tunnel.Stations[1].Along)} apart, {tunnel.BowTube.Size}, {(tunnel.BowPieces == 1 ? "each in one piece" : $"each in {tunnel.BowPieces} pieces")}"), "bow");
        yield return ("Heights", $"peak {Tape(tunnel.Bow.PeakHeight)}{(tunnel.Bow.SideHeight.Metres > 0.05 ? $", straight sides {Tape(tunnel.Bow.SideHeight)}" : "")}; film line over a bow {Tape(tunnel.Bow.FilmLine.Length)}", "bow");
        string[] bracing =
        [
            .. Count(tunnel, "purlin", member => member.Role is MemberRole.Purlin or MemberRole.RidgePurlin, member => member.Id.TrimEnd("0123456789".ToCharArray()).TrimEnd('-')),
            .. Count(tunnel, "tie", member => member.Role == MemberRole.Tie, member => member.Id),
            .. Count(tunnel, "corner brace", member => member.Role == MemberRole.CornerBrace, member => member.Id),
        ];
        yield return ("Stiffened by", bracing.Length == 0 ? "no purlins, ties or braces" : string.Join(", ", bracing), "left-side");
        yield return ("Anchorage", Anchorage(tunnel, units), shown.Ground);
        foreach (EndWall end in tunnel.Ends) yield return ($"{(end.IsFront ? "Front" : "Back")} end", EndOf(end, tunnel, units), end.Name + "-end");
        yield return ("Sides", string.Join("; ", tunnel.Sides.Select(side => $"{side.Name} {Kind(side)}{(side.HipHeight > Length.Zero ? $", hip board at {Tape(side.HipHeight)}" : "")}")), "left-side");
        yield return ("Cover", $"{(planned.Cover!.Layers == 1 ? "one layer" : string.Create(CultureInfo.InvariantCulture, $"{planned.Cover.Layers} layers"))} of film {TapeText.OfThickness(planned.Cover.Thickness, units)}, rolls {string.Join(", ", planned.Film!.Rolls.Select(roll => $"{Tape(roll.Offer.Width)} × {Tape(roll.Offer.Length)}"))}", "film-cuts");
        yield return ("Ground snow", planned.Strength?.Loads.GroundSnow is { } snow ? TapeText.Of(snow, units) : NotGiven, "strength-loads");
        yield return ("Wind", planned.Strength?.Loads.Wind is { } wind ? $"{TapeText.Of(wind, units)}, {planned.Strength.WindNoun}" : NotGiven, "strength-loads");
        yield return ("Frost, soil", $"{(site.FrostDepth is { } frost ? "frost to " + Tape(frost.Value) : "frost depth " + NotGiven)}; soil {(site.Soil is { } soil ? PacketWriter.OneLine(soil) : site.SoilClass is { } known ? SoilOf(known) : NotGiven)}", shown.Ground);
        if (planned.Strength is { NotChecked: null } strength) yield return ("Held against", $"{strength.Loads.Standard switch { LoadStandard.Asce7Of2016 => "ASCE 7-16", LoadStandard.Asce7Of2022 => "ASCE 7-22", LoadStandard.En1991 => "EN 1991" }}: {VerdictWords.Of(strength.Verdict)}", "strength-bow");
        if (Haul.Of(planned) is { } haul) yield return ("To carry", $"about {TapeText.OfLoad(haul.All, units)}: steel tube {TapeText.OfLoad(haul.Steel, units)}, lumber about {TapeText.OfLoad(haul.Lumber, units)}, dry concrete {TapeText.OfLoad(haul.DryConcrete, units)}, film {TapeText.OfLoad(haul.Film, units)}", null);
        yield return ("Materials", $"{orders.Total} {orders.Currency}{(orders.Unpriced > 0 ? string.Create(CultureInfo.InvariantCulture, $", without {orders.Unpriced} lines that have no price") : "")}", "orders");
    }

    private static string? Coordinates(Site site) => site is { Latitude: { } latitude, Longitude: { } longitude } ? $"latitude {latitude.Text}, longitude {longitude.Text}" : null;

    private static IEnumerable<string> Count(Tunnel tunnel, string name, Func<Member, bool> isOne, Func<Member, string> line)
    {
        Member[] all = [.. tunnel.Members.Where(isOne)];
        if (all.Length == 0) yield break;
        int lines = all.Select(line).Distinct(StringComparer.Ordinal).Count();
        yield return string.Create(CultureInfo.InvariantCulture, $"{lines} {name}{(lines == 1 ? "" : "s")} {all[0].Section.Size}");
    }

    private static string Anchorage(Tunnel tunnel, UnitSystem units)
    {
        string holes = tunnel.Holes.IsEmpty ? "no concrete" : string.Create(CultureInfo.InvariantCulture, $"{tunnel.Holes.Length} holes with {TapeText.Of(Volume.FromCubicMetres(tunnel.Holes.Sum(hole => hole.Volume.CubicMetres)), units)} of concrete");
        switch (tunnel.Anchor)
        {
            case AnchorKind.Posts when !tunnel.GroundPosts.IsEmpty:
                Length least = tunnel.GroundPosts.Min(post => post.Embedment), most = tunnel.GroundPosts.Max(post => post.Embedment);
                string deep = most - least < Length.FromMillimetres(1) ? TapeText.Of(most, units) : $"{TapeText.Of(TapeText.RoundToMark(least, units), units)} to {TapeText.Of(TapeText.RoundToMark(most, units), units)}";
                return string.Create(CultureInfo.InvariantCulture, $"{tunnel.GroundPosts.Length} ground posts {tunnel.Members.First(member => member.Role == MemberRole.GroundPost).Section.Size}, {deep} in the ground; {holes}");
            default: return $"boards on the ground; {holes}";
        }
    }

    private static string EndOf(EndWall end, Tunnel tunnel, UnitSystem units)
    {
        string doors = end.Doors.IsEmpty ? "no door" : string.Join(", ", end.Doors.Select(door => $"{door.Kind.ToString().ToLowerInvariant()} door {TapeText.Of(door.ClearWidth, units)} × {TapeText.Of(door.ClearHeight, units)}"));
        return end.Closing switch
        {
            EndClosing.Framed => string.Create(CultureInfo.InvariantCulture, $"{end.Posts.Length} posts{(end.Posts.IsEmpty ? "" : " " + tunnel.Members.First(member => member.Id == end.Posts[0].MemberId).Section.Size)}, film; {doors}"),
            EndClosing.RoofSheet => "the roof sheet gathered over the end",
            EndClosing.Open => "open",
        };
    }

    private static string Kind(SideWall side) => side.Kind switch { SideKind.RollUp => "rolls up", SideKind.Drop => "drops", SideKind.Fixed => "fixed" };

    private static string SoilOf(SoilClass soil) => soil switch
    {
        SoilClass.Bedrock => "of the class bedrock",
        SoilClass.SedimentaryRock => "of the class sedimentary rock",
        SoilClass.Gravel => "of the class gravel",
        SoilClass.Sand => "of the class sand",
        SoilClass.Clay => "of the class clay",
        SoilClass.Soft => "of the class soft ground",
    };
}
