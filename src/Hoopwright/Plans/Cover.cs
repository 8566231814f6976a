using System.Collections.Immutable;
using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>Film and how it is held. Every allowance is a rule that may be changed.</summary>
public sealed record Cover : PlanSection
{
    /// <summary>Layers of film on the roof: 1 or 2.</summary>
    [Description("Layers of film on the roof: 1 or 2.")]
    public int? Layers { get; init; }

    /// <summary>True when two layers of the roof are held apart by a blower; false when both lie together.</summary>
    [Description("True when two layers of the roof are held apart by a blower; false when both lie together.")]
    public bool? Inflated { get; init; }

    /// <summary>Pressure that the blower keeps between two layers: a quarter inch of water is 62 Pa.</summary>
    [Description("Pressure that the blower keeps between two layers: a quarter inch of water is 62 Pa.")]
    public Written<Pressure>? InflationPressure { get; init; }

    /// <summary>How thick the film is.</summary>
    [Description("How thick the film is.")]
    public Written<Length>? Thickness { get; init; }

    /// <summary>Whether the ends or the roof are covered first.</summary>
    [Description("Whether the ends or the roof are covered first.")]
    public CoverOrder? Order { get; init; }

    /// <summary>Rolls of film that can be bought.</summary>
    [Description("Rolls of film that can be bought.")]
    public ImmutableArray<FilmRoll> Rolls { get; init; } = [];

    /// <summary>Roof film cut past the end bow at each end, to pull by; trimmed after.</summary>
    [Description("Roof film cut past the end bow at each end, to pull by; trimmed after.")]
    public Written<Length>? RoofEndAllowance { get; init; }

    /// <summary>Roof film left past the end channel after trimming.</summary>
    [Description("Roof film left past the end channel after trimming.")]
    public Written<Length>? RoofEndTrim { get; init; }

    /// <summary>Roof film past the hip board, or past the ground line of a fixed side, each side.</summary>
    [Description("Roof film past the hip board, or past the ground line of a fixed side, each side.")]
    public Written<Length>? RoofSideAllowance { get; init; }

    /// <summary>End film left below the baseboard.</summary>
    [Description("End film left below the baseboard.")]
    public Written<Length>? EndBelow { get; init; }

    /// <summary>End film left above the bow when trimmed.</summary>
    [Description("End film left above the bow when trimmed.")]
    public Written<Length>? EndAbove { get; init; }

    /// <summary>End film cut besides what is left, to pull by.</summary>
    [Description("End film cut besides what is left, to pull by.")]
    public Written<Length>? EndWorking { get; init; }

    /// <summary>End film cut past the bow at each side, to pull by.</summary>
    [Description("End film cut past the bow at each side, to pull by.")]
    public Written<Length>? EndSide { get; init; }

    /// <summary>Film is cut at the next whole one of these.</summary>
    [Description("Film is cut at the next whole one of these.")]
    public Written<Length>? CutStep { get; init; }

    /// <summary>Spacing of the first two fastenings of a batten.</summary>
    [Description("Spacing of the first two fastenings of a batten.")]
    public Written<Length>? BattenFirst { get; init; }

    /// <summary>Spacing of the other fastenings of a batten.</summary>
    [Description("Spacing of the other fastenings of a batten.")]
    public Written<Length>? BattenSpacing { get; init; }

    /// <summary>Spacing of screws in the lock channel.</summary>
    [Description("Spacing of screws in the lock channel.")]
    public Written<Length>? ChannelScrewSpacing { get; init; }

    /// <summary>Diameter of the nails of a batten.</summary>
    [Description("Diameter of the nails of a batten.")]
    public Written<Length>? BattenNailDiameter { get; init; }

    /// <summary>Length of the nails of a batten.</summary>
    [Description("Length of the nails of a batten.")]
    public Written<Length>? BattenNailLength { get; init; }

    /// <summary>Length of the legs of the staples between the nails of a batten.</summary>
    [Description("Length of the legs of the staples between the nails of a batten.")]
    public Written<Length>? StapleLength { get; init; }

    /// <summary>Diameter of the lock channel's screws in wood: 0.164 in is #8, 0.190 in is #10.</summary>
    [Description("Diameter of the lock channel's screws in wood: 0.164 in is #8, 0.190 in is #10.")]
    public Written<Length>? ChannelScrewDiameter { get; init; }

    /// <summary>Length of the lock channel's screws in wood.</summary>
    [Description("Length of the lock channel's screws in wood.")]
    public Written<Length>? ChannelScrewLength { get; init; }

    /// <summary>Diameter of the self-drilling screws that hold the film on tube: 0.216 in is #12, 0.250 in is #14.</summary>
    [Description("Diameter of the self-drilling screws that hold the film on tube: 0.216 in is #12, 0.250 in is #14.")]
    public Written<Length>? TubeScrewDiameter { get; init; }

    /// <summary>Length of spring wire bought for a length of channel: 1 is just the run.</summary>
    [Description("Length of spring wire bought for a length of channel: 1 is just the run.")]
    public Written<Ratio>? WirePerChannel { get; init; }

    /// <summary>Length of a stick of lock channel.</summary>
    [Description("Length of a stick of lock channel.")]
    public Written<Length>? ChannelStick { get; init; }

    /// <summary>Length of a piece of spring wire as sold.</summary>
    [Description("Length of a piece of spring wire as sold.")]
    public Written<Length>? WirePiece { get; init; }

    /// <summary>Spacing of the 1 ft pieces of spring wire that hold the end film for the time being.</summary>
    [Description("Spacing of the 1 ft pieces of spring wire that hold the end film for the time being.")]
    public Written<Length>? TemporaryWireSpacing { get; init; }

    /// <summary>True when lock channel holds the film on the end bows; false for battens only.</summary>
    [Description("True when lock channel holds the film on the end bows; false for battens only.")]
    public bool? EndsOnBow { get; init; }

    /// <summary>Curtain film cut past each end of the tunnel.</summary>
    [Description("Curtain film cut past each end of the tunnel.")]
    public Written<Length>? CurtainEndAllowance { get; init; }

    /// <summary>Curtain film cut wider than it hangs, for the hem, the roll and the channel.</summary>
    [Description("Curtain film cut wider than it hangs, for the hem, the roll and the channel.")]
    public Written<Length>? CurtainAllowance { get; init; }

    /// <summary>Film wrapped around each edge of a door leaf.</summary>
    [Description("Film wrapped around each edge of a door leaf.")]
    public Written<Length>? LeafWrap { get; init; }

    /// <summary>Extra screws at each end of a run of lock channel.</summary>
    [Description("Extra screws at each end of a run of lock channel.")]
    public int? ChannelEndScrews { get; init; }

    /// <summary>True when lock channel on the baseboards holds the roof film of fixed sides; false for battens.</summary>
    [Description("True when lock channel on the baseboards holds the roof film of fixed sides; false for battens.")]
    public bool? SidesInChannel { get; init; }

    /// <summary>The most that the ropes which pull the roof film may stand apart.</summary>
    [Description("The most that the ropes which pull the roof film may stand apart.")]
    public Written<Length>? RopeSpacing { get; init; }

    /// <summary>How much longer than the roof film is wide a pulling rope is.</summary>
    [Description("How much longer than the roof film is wide a pulling rope is.")]
    public Written<Length>? RopeAllowance { get; init; }

    /// <summary>Tape over each sharp point: tops of end-wall posts, ends of lengthwise tubes.</summary>
    [Description("Tape over each sharp point: tops of end-wall posts, ends of lengthwise tubes.")]
    public Written<Length>? TapePerPoint { get; init; }

    /// <summary>How far film may be stressed on the coldest day, as a part of where it starts to stretch for good.</summary>
    [Description("How far film may be stressed on the coldest day, as a part of where it starts to stretch for good.")]
    public Written<Ratio>? ColdPart { get; init; }

    /// <summary>How far film may hang between two bows on the hottest day, as a part of the bay.</summary>
    [Description("How far film may hang between two bows on the hottest day, as a part of the bay.")]
    public Written<Ratio>? HotSag { get; init; }

    /// <summary>How far slack film may hang on the day it is pulled and still be laid evenly, as a part of the bay.</summary>
    [Description("How far slack film may hang on the day it is pulled and still be laid evenly, as a part of the bay.")]
    public Written<Ratio>? LooseSag { get; init; }

    /// <summary>True when narrow pieces may be cut side by side by slitting the film lengthwise.</summary>
    [Description("True when narrow pieces may be cut side by side by slitting the film lengthwise.")]
    public bool? SlitFilm { get; init; }

    /// <summary>True when pieces may be cut with their length across the roll, where that takes less film.</summary>
    [Description("True when pieces may be cut with their length across the roll, where that takes less film.")]
    public bool? TurnFilm { get; init; }
}
