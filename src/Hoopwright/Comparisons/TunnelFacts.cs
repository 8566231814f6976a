using System.Collections.Immutable;
using Hoopwright.Cuts.Film;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Strength;

namespace Hoopwright.Comparisons;

/// <summary>What people compare of a tunnel besides its plan: counts, measures, limits and cost.</summary>
public sealed record TunnelFacts
{
    /// <summary>How many bows.</summary>
    public required int Bows { get; init; }

    /// <summary>The first bay, middle of bow to middle of bow.</summary>
    public required Length Bay { get; init; }

    /// <summary>The tube of the bows.</summary>
    public required string BowTube { get; init; }

    /// <summary>Tube of one bow, along its middle.</summary>
    public required Length BowTubeLength { get; init; }

    /// <summary>Height of the bow.</summary>
    public required Length Peak { get; init; }

    /// <summary>How many ties.</summary>
    public required int Ties { get; init; }

    /// <summary>How many lengthwise tubes, the ridge's with them.</summary>
    public required int Purlins { get; init; }

    /// <summary>How many corner braces.</summary>
    public required int Braces { get; init; }

    /// <summary>How many ground posts.</summary>
    public required int GroundPosts { get; init; }

    /// <summary>How many holes with concrete.</summary>
    public required int Holes { get; init; }

    /// <summary>Concrete of all holes.</summary>
    public required Volume Concrete { get; init; }

    /// <summary>How many pieces of film.</summary>
    public required int FilmPieces { get; init; }

    /// <summary>The rolls of film, bought or on hand.</summary>
    public required ImmutableArray<RollOffer> FilmRolls { get; init; }

    /// <summary>Film bought.</summary>
    public required Area FilmBought { get; init; }

    /// <summary>How many boards, tubes and sticks of channel are cut.</summary>
    public required int CutBars { get; init; }

    /// <summary>How many pieces they are cut into.</summary>
    public required int CutPieces { get; init; }

    /// <summary>What the order comes to.</summary>
    public required Money Total { get; init; }

    /// <summary>How many lines of the order have no price, so that the total leaves them out.</summary>
    public required int Unpriced { get; init; }

    /// <summary>The currency of the total.</summary>
    public required string Currency { get; init; }

    /// <summary>What it stands; null when that was not asked.</summary>
    public required StrengthReport? Strength { get; init; }

    /// <summary>The facts of a plan that was worked out; null when it has errors.</summary>
    /// <param name="planned">The plan, worked out.</param>
    public static TunnelFacts? Of(PlannedTunnel planned)
    {
        if (planned is not { Tunnel: { } tunnel, Cover: { } cover, Film: { } film, Cuts: { } cuts, Orders: { } orders }) return null;
        int Count(params ReadOnlySpan<MemberRole> roles)
        {
            int count = 0;
            foreach (Member member in tunnel.Members) count += roles.Contains(member.Role) ? 1 : 0;
            return count;
        }
        return new TunnelFacts
        {
            Bows = tunnel.Stations.Length,
            Bay = tunnel.Stations[1].Along - tunnel.Stations[0].Along,
            BowTube = tunnel.BowTube.Size,
            BowTubeLength = tunnel.Bow.CentreLine.Length,
            Peak = tunnel.Bow.PeakHeight,
            Ties = Count(MemberRole.Tie),
            Purlins = Count(MemberRole.Purlin, MemberRole.RidgePurlin),
            Braces = Count(MemberRole.CornerBrace),
            GroundPosts = tunnel.GroundPosts.Length,
            Holes = tunnel.Holes.Length,
            Concrete = Volume.FromCubicMetres(tunnel.Holes.Sum(hole => hole.Volume.CubicMetres)),
            FilmPieces = cover.Pieces.Sum(piece => piece.Count),
            FilmRolls = [.. film.Rolls.Select(roll => roll.Offer)],
            FilmBought = film.BoughtArea,
            CutBars = cuts.Sheets.Sum(sheet => sheet.Bars.Length),
            CutPieces = cuts.Sheets.Sum(sheet => sheet.Bars.Sum(bar => bar.Pieces.Length)),
            Total = orders.Total,
            Unpriced = orders.Unpriced,
            Currency = orders.Currency,
            Strength = planned.Strength,
        };
    }
}
