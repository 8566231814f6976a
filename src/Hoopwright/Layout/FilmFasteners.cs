using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Layout;

/// <summary>What holds the edges of the film, where the plan does not say: takeoff counts it, strength holds it against the pull of the film.</summary>
internal static class FilmFasteners
{
    /// <summary>Self-drilling screw in tube.</summary>
    internal static string ScrewInTube(UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => "#12 x 1 in",
        UnitSystem.Metric => Size(TubeScrewDiameter(units).Value, TubeScrewLength.ValueIn(units), units),
    };

    private static readonly Citation Sizes = Citation.FromMemory;

    private static readonly Citation MetricThreads = new("tapping screw threads ST4.2 and ST5.5 of ISO 1478", "", Standing.FromMemory);

    /// <summary>Shank of the usual nail of a batten.</summary>
    internal static Usual<Length> BattenNailDiameter { get; } = new(Length.FromInches(0.12), "Nails of a batten are so thick; hold it against what you bought.", Sizes, Matters: true) { Metric = MetricWay.Down };

    internal static Usual<Length> BattenNailLength { get; } = new(Length.FromInches(1.5), "Nails of a batten are so long; hold it against what you bought.", Sizes, Matters: true);

    internal static Usual<Length> StapleLength { get; } = new(Length.FromInches(0.5), "Staples between the nails of a batten have legs so long.", Sizes) { Metric = MetricWay.Down };

    /// <summary>#8, or ST4.2 of ISO 1478.</summary>
    internal static Usual<Length> ChannelScrewDiameter(UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => new(Length.FromInches(0.164), "Screws of the lock channel in wood are so thick, #8; hold it against what you bought.", Sizes, Matters: true),
        UnitSystem.Metric => new(Length.FromMillimetres(4.2), "Screws of the lock channel in wood are so thick; hold it against what you bought.", MetricThreads, Matters: true) { Metric = MetricWay.AsItIs },
    };

    internal static Usual<Length> ChannelScrewLength { get; } = new(Length.FromInches(1), "Screws of the lock channel in wood are so long; hold it against what you bought.", Sizes, Matters: true);

    /// <summary>#12, or ST5.5 of ISO 1478.</summary>
    internal static Usual<Length> TubeScrewDiameter(UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => new(Length.FromInches(0.216), "Self-drilling screws of the film in tube are so thick, #12; hold it against what you bought.", Sizes, Matters: true),
        UnitSystem.Metric => new(Length.FromMillimetres(5.5), "Self-drilling screws of the film in tube are so thick; hold it against what you bought.", MetricThreads, Matters: true) { Metric = MetricWay.AsItIs },
    };

    private static readonly Usual<Length> TubeScrewLength = new(Length.FromInches(1), "Self-drilling screws of the film in tube are so long.", Sizes);

    internal static Usual<Length> ChannelScrewSpacing { get; } = new(Length.FromInches(12), "Screws of the lock channel stand this far apart.", Citation.CommonPractice) { Metric = MetricWay.Down };

    internal static Usual<Length> BattenSpacing { get; } = new(Length.FromInches(6), "The other nails of a batten stand this far apart.", Citation.CommonPractice) { Metric = MetricWay.Down };

    internal static Usual<bool> EndsOnBow { get; } = new(true, "Lock channel on the end bows holds the film there.", Citation.CommonPractice);

    internal static Usual<bool> SidesInChannel { get; } = new(false, "Battens on the baseboards hold the roof film of fixed sides.", Citation.CommonPractice);

    /// <summary>Size of a channel's screw in wood, as the takeoff writes it.</summary>
    internal static string ScrewInWoodSize(Plans.Cover cover, UnitSystem units) => units == UnitSystem.UsCustomary && cover.ChannelScrewDiameter is null && cover.ChannelScrewLength is null
        ? "#8 x 1 in"
        : Size(cover.ChannelScrewDiameter?.Value ?? ChannelScrewDiameter(units).Value, cover.ChannelScrewLength?.Value ?? ChannelScrewLength.ValueIn(units), units);

    /// <summary>Size of the film's screw in tube.</summary>
    internal static string ScrewInTubeSize(Plans.Cover cover, UnitSystem units) => cover.TubeScrewDiameter is { } given ? Size(given.Value, TubeScrewLength.ValueIn(units), units) : ScrewInTube(units);

    /// <summary>Size of a batten's nail.</summary>
    internal static string NailSize(Plans.Cover cover, UnitSystem units) => units == UnitSystem.UsCustomary && cover.BattenNailDiameter is null && cover.BattenNailLength is null
        ? "1-1/2 in, galvanized"
        : Size(cover.BattenNailDiameter?.Value ?? BattenNailDiameter.ValueIn(units), cover.BattenNailLength?.Value ?? BattenNailLength.ValueIn(units), units) + ", galvanized";

    /// <summary>Size of a staple between a batten's nails.</summary>
    internal static string StapleSize(Plans.Cover cover, UnitSystem units) => cover.StapleLength is { } given
        ? TapeText.OfThickness(given.Value, units)
        : units switch { UnitSystem.UsCustomary => "1/2 in", UnitSystem.Metric => TapeText.OfThickness(StapleLength.ValueIn(units), units) };

    private static string Size(Length diameter, Length length, UnitSystem units) => units switch
    {
        UnitSystem.UsCustomary => $"{TapeText.OfThickness(diameter, units)} x {TapeText.OfThickness(length, units)}",
        UnitSystem.Metric => FormattableString.Invariant($"{diameter.Millimetres:0.##} x {length.Millimetres:0.##} mm"),
    };
}
