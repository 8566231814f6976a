using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Cover;

/// <summary>
/// What the cover takes where the plan does not say, each with its source.
/// </summary>
internal static class CoverDefaults
{
    internal static Usual<int> Layers => LayoutDefaults.FilmLayers;

    internal static Usual<bool> Inflated { get; } = new(true, "Two layers of the roof are held apart by a small blower.", Citation.CommonPractice);

    internal static Usual<Pressure> InflationPressure { get; } = new(Pressure.FromPascals(62), "A quarter inch of water between two layers keeps them apart without straining them.", Citation.FromMemory);

    internal static Usual<CoverOrder> Order { get; } = new(CoverOrder.EndsFirst, "The ends are covered before the roof.", Citation.CommonPractice, Matters: true);

    internal static Usual<Length> RoofEndAllowance { get; } = new(Length.FromInches(18), "Roof film is cut this much past each end bow, to pull by.", Citation.CommonPractice);

    internal static Usual<Length> RoofEndTrim { get; } = new(Length.FromInches(4), "Roof film is trimmed this far past the end channel.", Citation.CommonPractice);

    internal static Usual<Length> RoofSideAllowance { get; } = new(Length.FromInches(15), "Roof film reaches this far past the hip board, or past the ground line of a fixed side.", Citation.CommonPractice);

    internal static Usual<Length> EndBelow { get; } = new(Length.FromInches(8), "End film is left this far below the baseboard.", Citation.CommonPractice);

    internal static Usual<Length> EndAbove { get; } = new(Length.FromInches(6), "End film is trimmed this far above the bow.", Citation.CommonPractice);

    internal static Usual<Length> EndWorking { get; } = new(Length.FromFeet(2), "Film over an end is cut this much longer, to pull and close by.", Citation.CommonPractice);

    internal static Usual<Length> EndSide { get; } = new(Length.FromFeet(1), "End film is cut this much past the bow at each side.", Citation.CommonPractice);

    /// <summary>The usual step of film's length: as film is measured off the roll.</summary>
    internal static Usual<Length> CutStep(UnitSystem units) => new(
        units switch { UnitSystem.UsCustomary => Length.FromFeet(1), UnitSystem.Metric => Length.FromMillimetres(100) }, "Film is cut at the next whole one of these.", Citation.CommonPractice);

    internal static Usual<Length> BattenFirst { get; } = new(Length.FromInches(4), "The first two nails of a batten stand this far apart and from its end.", Citation.CommonPractice);

    internal static Usual<Length> BattenSpacing => FilmFasteners.BattenSpacing;

    internal static Usual<Length> ChannelScrewSpacing => FilmFasteners.ChannelScrewSpacing;

    internal static Usual<Ratio> WirePerChannel { get; } = new(Ratio.FromValue(1.1), "Spring wire is bought this many times as long as the channel, for laps.", Citation.FromMemory);

    /// <summary>The usual stick of lock channel.</summary>
    internal static Usual<Length> ChannelStick(UnitSystem units) => new(
        units switch { UnitSystem.UsCustomary => Length.FromFeet(8), UnitSystem.Metric => Length.FromMetres(2) }, "Lock channel comes in sticks of this length.", Citation.FromMemory, Matters: true);

    internal static Usual<Length> WirePiece { get; } = new(Length.FromFeet(4), "Spring wire is put in by pieces of this length.", Citation.CommonPractice) { Metric = MetricWay.Down };

    internal static Usual<Length> TemporaryWireSpacing { get; } = new(Length.FromFeet(4), "Short pieces of spring wire this far apart hold the end film for the time being.", Citation.CommonPractice) { Metric = MetricWay.Down };

    internal static Usual<bool> EndsOnBow => FilmFasteners.EndsOnBow;

    internal static Usual<Length> CurtainEndAllowance { get; } = new(Length.FromFeet(1), "A curtain is cut this much past each end of the tunnel.", Citation.CommonPractice);

    internal static Usual<Length> CurtainAllowance { get; } = new(Length.FromInches(24), "A curtain is cut this much wider than it hangs, for the hem, the roll and the channel.", Citation.CommonPractice);

    internal static Usual<Length> LeafWrap { get; } = new(Length.FromInches(4), "Film is wrapped this far around each edge of a door leaf.", Citation.CommonPractice);

    internal static Usual<int> ChannelEndScrews { get; } = new(1, "So many screws more stand at each end of a run of lock channel.", Citation.CommonPractice);

    internal static Usual<Temperature> Install { get; } = new(Temperature.FromFahrenheit(60), "Frame and film are put up at this temperature.", Citation.CommonPractice);

    internal static Usual<Temperature> Coldest { get; } = new(Temperature.FromFahrenheit(-20), "The coldest that the frame gets; your weather service knows better.", Citation.FromMemory, Matters: true);

    internal static Usual<Temperature> Hottest { get; } = new(Temperature.FromFahrenheit(120), "The hottest that the frame gets in the sun.", Citation.FromMemory, Matters: true);

    internal static Usual<Ratio> ColdPart { get; } = new(Ratio.FromPercent(50), "On the coldest day film may be stressed to this part of where it starts to stretch for good; the rest is for wind and snow.", Citation.FromMemory);

    /// <summary>How far film may hang on the hottest day.</summary>
    internal static Usual<Ratio> HotSag(UnitSystem units) => new(
        Ratio.FromPercent(6.25), $"On the hottest day film may hang between two bows by this part of the bay: {units switch { UnitSystem.UsCustomary => "3 in of 4 ft", UnitSystem.Metric => "75 mm of 1.2 m" }}.", Citation.CommonPractice);

    /// <summary>How slack film can be laid evenly.</summary>
    internal static Usual<Ratio> LooseSag(UnitSystem units) => new(
        Ratio.FromPercent(3.125), $"On a hot day film can be laid evenly slack up to this part of the bay: {units switch { UnitSystem.UsCustomary => "1-1/2 in of 4 ft", UnitSystem.Metric => "50 mm of 1.6 m" }}.", Citation.CommonPractice);

    internal static Usual<bool> SidesInChannel => FilmFasteners.SidesInChannel;

    internal static Usual<Length> RopeSpacing { get; } = new(Length.FromFeet(24), "Ropes that pull the roof film stand no farther apart than this.", Citation.CommonPractice) { Metric = MetricWay.Down };

    internal static Usual<Length> RopeAllowance { get; } = new(Length.FromFeet(10), "A rope is this much longer than the roof film is wide.", Citation.CommonPractice) { Metric = MetricWay.Up };

    internal static Usual<Length> TapePerPoint { get; } = new(Length.FromFeet(1), "This much tape covers each sharp point that could cut the film.", Citation.CommonPractice);

    internal static Usual<bool> SlitFilm { get; } = new(true, "Narrow pieces may be cut side by side by slitting the film lengthwise.", Citation.CommonPractice);

    internal static Usual<bool> TurnFilm { get; } = new(false, "Pieces of film are cut with their length along the roll, so that all are pulled the same way of the film.", Citation.CommonPractice);

    /// <summary>A limit for a warning, not a rule of the plan.</summary>
    internal static Usual<Length> LeastSideAllowance { get; } = new(Length.FromInches(12), "The least tail of a roof sheet with which hands can still pull it down.", Citation.CommonPractice);
}
