using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Strength;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Upkeep;

/// <summary>Makes the storm card of a tunnel.</summary>
internal static class StormCardMaker
{
    private static readonly Citation Collapse = new("Prevent Greenhouse Collapse, University of Vermont Extension", "clear both sides alike, then along the sides; last resort, cut the film", Standing.Published);
    private static readonly Citation Early = new("North Carolina State Extension, figure 17b", "collapses came within hours of the first snow", Standing.Published);
    private static readonly Citation Props = new("High Tunnels, University of Vermont Center for Sustainable Agriculture (2007)", "props of 2×4 under the ridge with a foot of 8 by 8 in", Standing.Published);
    private static readonly Citation Hurricane = new("Preparing Your Greenhouse for a Hurricane, University of Connecticut Extension (2015)", "close, tighten, put loose things away", Standing.Published);
    private static readonly Citation FilmOff = new("common practice, no source", "film off one or two days before, as a seller's sheet has it", Standing.CommonPractice);

    // Without film the frame must stand clearly more for taking it off to be worth the danger.
    private const double ClearlyMore = 1.15;

    // Beyond any storm on land but a tornado: what is told of bare bows stops here.
    private static readonly Speed MostTold = Speed.FromMilesPerHour(150);

    /// <summary>The card.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="strength">What it stands; with storm limits.</param>
    /// <param name="answers">Collects every answer and default used.</param>
    internal static StormCard Of(Tunnel tunnel, StrengthReport strength, Answers answers)
    {
        UpkeepRules rules = tunnel.Plan.Upkeep;
        StormLimits limits = strength.Storm!;
        Ratio clearAt = answers.Take("upkeep.clearAt", UpkeepDefaults.ClearAt, rules.ClearAt);
        SnowWay[] snow = [.. limits.Bows.Where(limit => limit.RoofSnow is not null).Select(limit => Snow(limit, strength))];
        SnowWay? least = snow.MinBy(each => each.Roof);
        // Bows that are checked and reach no limit in reach stand more than is told.
        Speed bare = Gust(limits.Of(StormState.BareFrame)) is { } most && most < MostTold ? most : MostTold;
        return new StormCard
        {
            Limits = limits,
            RoofSnow = least?.Roof,
            RoofSnowLies = least?.Lies,
            Fall = snow.Length == 0 ? null : snow.Min(each => each.Fall),
            ClearAt = clearAt,
            Snow = least is { } roof ? [.. SnowKind.All.Select(kind => new SnowClearing(kind, kind.DepthOf(roof.Roof * clearAt.Value), kind.DepthOf(roof.Roof)))] : [],
            Gusts = Gusts(answers, rules, strength, bare),
            BareGust = Gust(limits.Of(StormState.Shut)) is { } covered && bare > covered * ClearlyMore ? bare : null,
            Weaker = [.. limits.Parts.Where(part => part.State == StormState.Shut && limits.Of(StormState.Shut)?.Wind is { } wind && (!part.IsKnown || part.LeastWind < wind.Least)).Select(part => InGusts(part, strength))],
            Order = Order(tunnel, snow),
            Cautions = StormCautions.All,
        };

        Speed? Gust(StormLimit? limit) => limit?.Wind is { } wind ? InGusts(wind.Least, strength) : null;
    }

    /// <summary>A wind of the standard as a gust at 10 m in open country: of EN 1991, whose wind is a mean of ten minutes, the peak that it goes with.</summary>
    internal static Speed InGusts(Speed wind, StrengthReport strength) => strength.Loads.Standard switch
    {
        LoadStandard.Asce7Of2016 or LoadStandard.Asce7Of2022 => wind,
        LoadStandard.En1991 => wind * Math.Sqrt(EnWind.Ce(TerrainCategory.II, 10)),
    };

    private static StormPart InGusts(StormPart part, StrengthReport strength) => part with
    {
        LeastWind = part.LeastWind is { } least ? InGusts(least, strength) : null,
        MostWind = part.MostWind is { } most ? InGusts(most, strength) : null,
    };

    private sealed record SnowWay(StormState Lies, Pressure Roof, Pressure Ground, Pressure Fall);

    // Deepest on the roof, and what may fall on level ground. Snow that fell evenly lies on the roof as on the ground at first; the standard's reduction is for a winter's wind.
    private static SnowWay Snow(StormLimit limit, StrengthReport strength)
    {
        double times = 1;
        if (strength is { Row.SnowBucklingFactor: { } factor, Loads.GroundSnow: { } entered } && limit.GroundSnow!.Least > entered * factor.Value)
            times = entered * factor.Value / limit.GroundSnow.Least;
        Pressure roof = limit.RoofSnow!.Least * times, ground = limit.GroundSnow!.Least * times;
        return new(limit.State, roof, ground, limit.State == StormState.SnowEven ? roof : ground);
    }

    private static ImmutableArray<StormGust> Gusts(Answers answers, UpkeepRules rules, StrengthReport strength, Speed bare)
    {
        Speed closing = answers.Take("upkeep.closeWind", UpkeepDefaults.CloseWind, rules.CloseWind), tightening = answers.Take("upkeep.tightenWind", UpkeepDefaults.TightenWind, rules.TightenWind);
        double share = answers.Take("upkeep.windShare", UpkeepDefaults.WindShare, rules.WindShare).Value;
        (Speed Gust, string Words)? shut = Limit(StormState.Shut), open = Limit(StormState.Open);
        if (shut is not { } limit) return [];
        Speed stayOut = limit.Gust * share, tighten = Least(tightening, stayOut), close = Least(Least(closing, tighten), (open?.Gust ?? limit.Gust) * share);
        Citation practice = Citation.CommonPractice;
        Phrase part = Phrase.Of("{0} % of the gust at the limit", Whole(share * 100));
        return
        [
            new(StormAction.Close, close, Phrase.Of("Shut and latch every door, side and vent; put away what is loose."), close < closing && close < tighten ? Phrase.Of("{0} % of the gust at the limit with doors or sides open", Whole(share * 100)) : Phrase.Of("what flaps tears; open, it stands less"), Hurricane),
            new(StormAction.Tighten, tighten, Phrase.Of("The day before: wire and ropes tight, battens and latches fast, limbs off, power off; more air between two layers of film."), tighten < tightening ? part : Phrase.Of("twigs break off trees"), Hurricane),
            new(StormAction.StayOut, stayOut, Phrase.Of("Nobody in it or near it until the wind has dropped."), part, practice),
            new(StormAction.WindLimit, limit.Gust, bare > limit.Gust * ClearlyMore
                ? Phrase.Of("Last resort, one or two calm days before and never in wind: take the film off. The bare bows stand gusts of {0} across, or more.", StormWords.Gust(bare, answers.Units))
                : Phrase.Of("Past what is known to hold. Without film the bows stand no more: leave it, and stay away."), Phrase.Of("at its limit: {0}", limit.Words), FilmOff),
        ];

        // The bows at the weaker end of what is known; of other parts, which soil and wood make uncertain, the upper end: past it they do not hold whatever the soil.
        (Speed Gust, string Words)? Limit(StormState state)
        {
            if (strength.Storm!.Of(state)?.Wind is not { } wind) return null;
            (Speed Gust, string Words) least = (InGusts(wind.Least, strength), "bows");
            foreach (StormPart each in strength.Storm.Parts.Where(each => each.State == state))
            {
                if (each.MostWind is { } most && InGusts(most, strength) < least.Gust) least = (InGusts(most, strength), each.Words);
            }
            return least;
        }
    }

    private static ImmutableArray<StormRule> Order(Tunnel tunnel, SnowWay[] snow)
    {
        List<StormRule> rules =
        [
            new("early", Phrase.Of("Begin at the depth to clear at, by night too: roofs have come down within hours of the first snow."), Early),
            new("together", Phrase.Of("Two people, one on each side, go along together from one end to the other, so that both sides are always alike."), Collapse),
        ];
        Pressure? even = Of(StormState.SnowEven), oneSide = Of(StormState.SnowOneSide), between = Of(StormState.SnowBetween);
        if (even is { } alike && oneSide is { } deeper)
        {
            rules.Add(deeper < alike
                ? new("lop-sided", Phrase.Of("On one side snow is worse here: blown over, {0} of the snowfall that lies evenly is enough. Take a drift down to the other side first, and never clear one side bare.", Percent(deeper / alike)), Citation.Geometry)
                : new("lop-sided", Phrase.Of("On these bows even snow is the worse, but snow on one side turns the posts: clear both sides together all the same."), Citation.Geometry));
        }
        string sides = string.Join(", ", new[] { (tunnel.Plan.Site.NeighbourLeft, tunnel.Left.Name), (tunnel.Plan.Site.NeighbourRight, tunnel.Right.Name) }.Where(side => side.Item1 is not null).Select(side => side.Name + " side"));
        if (sides.Length > 0)
            rules.Add(new("neighbour", between is { } gap && gap < (even ?? gap) * 0.95
                ? Phrase.Of("First open the gap to the next tunnel: {0}. Full, it leaves the roof {1} of the snowfall that it could take.", sides, Percent(gap / even!.Value))
                : Phrase.Of("First open the gap to the next tunnel, so that snow has where to go: {0}.", sides), Citation.CommonPractice));
        rules.Add(new("from-outside", Phrase.Of("From outside, from the ground, downwards: a long soft broom, or a rope drawn over the film by both. No metal edge, nobody on the roof."), Citation.CommonPractice));
        rules.Add(new("sides", Phrase.Of("Then clear the strip along both sides, or the next snow stays on the roof and the heap presses on the sides."), Collapse));
        rules.Add(new("props", Phrase.Of(tunnel.Units switch
        {
            UnitSystem.UsCustomary => "Props of 2×4 under the ridge, on feet of 8 by 8 in, go in before the snow and not under it.",
            UnitSystem.Metric => "Props of 45×95 mm under the ridge, on feet of 200 by 200 mm, go in before the snow and not under it.",
        }), Props));
        rules.Add(new("last-resort", Phrase.Of("Last resort, in calm air and with nobody inside: slit the film between the bows from outside and let the snow fall in. Film costs less than bows."), Collapse));
        return [.. rules];

        Pressure? Of(StormState lies) => Array.Find(snow, each => each.Lies == lies)?.Ground;
    }

    private static Speed Least(Speed one, Speed other) => one < other ? one : other;

    private static string Percent(double part) => Whole(part * 100) + " %";

    private static string Whole(double value) => Math.Round(value).ToString("0", System.Globalization.CultureInfo.InvariantCulture);
}
