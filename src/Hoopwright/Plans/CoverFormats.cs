using Hoopwright.Quantities;
using static Hoopwright.Plans.PlanFields;
using static Hoopwright.Plans.PlanRanges;

namespace Hoopwright.Plans;

/// <summary>Film and how it is held.</summary>
internal static class CoverFormats
{
    public static PlanFormat<FilmRoll> FilmRoll { get; } = new(
        Quantity<FilmRoll, Length>(
            "width", PlanQuantities.Length.Within("1 ft", "200 ft", "0.31 m", "60 m").Like("36 ft", "11 m"),
            roll => roll.Width, (roll, value) => roll with { Width = value }, required: true),
        Quantity<FilmRoll, Length>(
            "length", PlanQuantities.Length.Within("1 ft", "5000 ft", "0.31 m", "1500 m").Like("100 ft", "30 m"),
            roll => roll.Length, (roll, value) => roll with { Length = value }, required: true),
        Quantity<FilmRoll, Money>("price", Price, roll => roll.Price, (roll, value) => roll with { Price = value }),
        Count<FilmRoll>("limit", 0, 1_000_000, roll => roll.Limit, (roll, value) => roll with { Limit = value }));

    public static PlanFormat<Cover> Cover { get; } = new(
        Count<Cover>("layers", 1, 2, cover => cover.Layers, (cover, value) => cover with { Layers = value }),
        YesNo<Cover>("inflated", cover => cover.Inflated, (cover, value) => cover with { Inflated = value }),
        Quantity<Cover, Pressure>(
            "inflationPressure", PlanQuantities.Pressure.Within("0.2 psf", "4 psf", "10 Pa", "190 Pa").Like("1.3 psf", "60 Pa"),
            cover => cover.InflationPressure, (cover, value) => cover with { InflationPressure = value }),
        Quantity<Cover, Length>(
            "thickness", PlanQuantities.FilmThickness.Within("1 mil", "100 mil", "0.03 mm", "2.5 mm").Like("6 mil", "0.15 mm"),
            cover => cover.Thickness, (cover, value) => cover with { Thickness = value }),
        Choice<Cover, CoverOrder>("order", cover => cover.Order, (cover, value) => cover with { Order = value }),
        Groups<Cover, FilmRoll>("rolls", FilmRoll, cover => cover.Rolls, (cover, value) => cover with { Rolls = value }),
        Quantity<Cover, Length>("roofEndAllowance", Allowance, cover => cover.RoofEndAllowance, (cover, value) => cover with { RoofEndAllowance = value }),
        Quantity<Cover, Length>("roofEndTrim", Allowance, cover => cover.RoofEndTrim, (cover, value) => cover with { RoofEndTrim = value }),
        Quantity<Cover, Length>("roofSideAllowance", Allowance, cover => cover.RoofSideAllowance, (cover, value) => cover with { RoofSideAllowance = value }),
        Quantity<Cover, Length>("endBelow", Allowance, cover => cover.EndBelow, (cover, value) => cover with { EndBelow = value }),
        Quantity<Cover, Length>("endAbove", Allowance, cover => cover.EndAbove, (cover, value) => cover with { EndAbove = value }),
        Quantity<Cover, Length>("endWorking", Allowance, cover => cover.EndWorking, (cover, value) => cover with { EndWorking = value }),
        Quantity<Cover, Length>("endSide", Allowance, cover => cover.EndSide, (cover, value) => cover with { EndSide = value }),
        Quantity<Cover, Length>(
            "cutStep", PlanQuantities.Length.Within("1/16 in", "240 in", "2 mm", "6000 mm").Like("12 in", "100 mm"),
            cover => cover.CutStep, (cover, value) => cover with { CutStep = value }),
        Quantity<Cover, Length>("battenFirst", Fastening, cover => cover.BattenFirst, (cover, value) => cover with { BattenFirst = value }),
        Quantity<Cover, Length>("battenSpacing", Fastening, cover => cover.BattenSpacing, (cover, value) => cover with { BattenSpacing = value }),
        Quantity<Cover, Length>(
            "channelScrewSpacing", Fastening, cover => cover.ChannelScrewSpacing, (cover, value) => cover with { ChannelScrewSpacing = value }),
        Quantity<Cover, Length>("battenNailDiameter", FastenerDiameter, cover => cover.BattenNailDiameter, (cover, value) => cover with { BattenNailDiameter = value }),
        Quantity<Cover, Length>("battenNailLength", FastenerLength, cover => cover.BattenNailLength, (cover, value) => cover with { BattenNailLength = value }),
        Quantity<Cover, Length>("stapleLength", FastenerLength, cover => cover.StapleLength, (cover, value) => cover with { StapleLength = value }),
        Quantity<Cover, Length>("channelScrewDiameter", FastenerDiameter, cover => cover.ChannelScrewDiameter, (cover, value) => cover with { ChannelScrewDiameter = value }),
        Quantity<Cover, Length>("channelScrewLength", FastenerLength, cover => cover.ChannelScrewLength, (cover, value) => cover with { ChannelScrewLength = value }),
        Quantity<Cover, Length>("tubeScrewDiameter", FastenerDiameter, cover => cover.TubeScrewDiameter, (cover, value) => cover with { TubeScrewDiameter = value }),
        Quantity<Cover, Ratio>(
            "wirePerChannel", PlanQuantities.Ratio.Within("0.5", "5").Like("1", "1"), cover => cover.WirePerChannel, (cover, value) => cover with { WirePerChannel = value }),
        Quantity<Cover, Length>("channelStick", Stick, cover => cover.ChannelStick, (cover, value) => cover with { ChannelStick = value }),
        Quantity<Cover, Length>("wirePiece", Stick, cover => cover.WirePiece, (cover, value) => cover with { WirePiece = value }),
        Quantity<Cover, Length>(
            "temporaryWireSpacing", PlanQuantities.Length.Within("6 in", "600 in", "160 mm", "15000 mm").Like("48 in", "1200 mm"),
            cover => cover.TemporaryWireSpacing, (cover, value) => cover with { TemporaryWireSpacing = value }),
        YesNo<Cover>("endsOnBow", cover => cover.EndsOnBow, (cover, value) => cover with { EndsOnBow = value }),
        Quantity<Cover, Length>("curtainEndAllowance", Allowance, cover => cover.CurtainEndAllowance, (cover, value) => cover with { CurtainEndAllowance = value }),
        Quantity<Cover, Length>("curtainAllowance", Allowance, cover => cover.CurtainAllowance, (cover, value) => cover with { CurtainAllowance = value }),
        Quantity<Cover, Length>("leafWrap", Allowance, cover => cover.LeafWrap, (cover, value) => cover with { LeafWrap = value }),
        Count<Cover>("channelEndScrews", 0, 10, cover => cover.ChannelEndScrews, (cover, value) => cover with { ChannelEndScrews = value }),
        YesNo<Cover>("sidesInChannel", cover => cover.SidesInChannel, (cover, value) => cover with { SidesInChannel = value }),
        Quantity<Cover, Length>(
            "ropeSpacing", PlanQuantities.Length.Within("3 ft", "200 ft", "1 m", "60 m"),
            cover => cover.RopeSpacing, (cover, value) => cover with { RopeSpacing = value }),
        Quantity<Cover, Length>(
            "ropeAllowance", PlanQuantities.Length.Within("0 ft", "100 ft", "0 m", "30 m"),
            cover => cover.RopeAllowance, (cover, value) => cover with { RopeAllowance = value }),
        Quantity<Cover, Length>("tapePerPoint", Allowance, cover => cover.TapePerPoint, (cover, value) => cover with { TapePerPoint = value }),
        Quantity<Cover, Ratio>("coldPart", PlanQuantities.Ratio.Within("0.05", "1").Like("50 %", "50 %"), cover => cover.ColdPart, (cover, value) => cover with { ColdPart = value }),
        Quantity<Cover, Ratio>("hotSag", PlanQuantities.Ratio.Within("0", "0.25").Like("6.25 %", "6.25 %"), cover => cover.HotSag, (cover, value) => cover with { HotSag = value }),
        Quantity<Cover, Ratio>("looseSag", PlanQuantities.Ratio.Within("0", "0.25").Like("3.125 %", "3.125 %"), cover => cover.LooseSag, (cover, value) => cover with { LooseSag = value }),
        YesNo<Cover>("slitFilm", cover => cover.SlitFilm, (cover, value) => cover with { SlitFilm = value }),
        YesNo<Cover>("turnFilm", cover => cover.TurnFilm, (cover, value) => cover with { TurnFilm = value }));
}
