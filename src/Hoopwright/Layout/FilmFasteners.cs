using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Layout;

/// <summary>What holds the edges of the film, where the plan does not say: takeoff counts it, strength holds it against the pull of the film.</summary>
internal static class FilmFasteners
{
    /// <summary>Self-drilling screw in tube.</summary>
    internal const string ScrewInTube = "#12 x 1 in";

    private static readonly Citation Sizes = Citation.FromMemory;

    /// <summary>Shank of the usual nail of a batten.</summary>
    internal static Usual<Length> BattenNailDiameter { get; } = new(Length.FromInches(0.12), "Nails of a batten are so thick; hold it against what you bought.", Sizes, Matters: true);

    internal static Usual<Length> BattenNailLength { get; } = new(Length.FromInches(1.5), "Nails of a batten are so long; hold it against what you bought.", Sizes, Matters: true);

    internal static Usual<Length> StapleLength { get; } = new(Length.FromInches(0.5), "Staples between the nails of a batten have legs so long.", Sizes);

    /// <summary>#8.</summary>
    internal static Usual<Length> ChannelScrewDiameter { get; } = new(Length.FromInches(0.164), "Screws of the lock channel in wood are so thick, #8; hold it against what you bought.", Sizes, Matters: true);

    internal static Usual<Length> ChannelScrewLength { get; } = new(Length.FromInches(1), "Screws of the lock channel in wood are so long; hold it against what you bought.", Sizes, Matters: true);

    /// <summary>#12.</summary>
    internal static Usual<Length> TubeScrewDiameter { get; } = new(Length.FromInches(0.216), "Self-drilling screws of the film in tube are so thick, #12; hold it against what you bought.", Sizes, Matters: true);

    internal static Usual<Length> ChannelScrewSpacing { get; } = new(Length.FromInches(12), "Screws of the lock channel stand this far apart.", Citation.CommonPractice);

    internal static Usual<Length> BattenSpacing { get; } = new(Length.FromInches(6), "The other nails of a batten stand this far apart.", Citation.CommonPractice);

    internal static Usual<bool> EndsOnBow { get; } = new(true, "Lock channel on the end bows holds the film there.", Citation.CommonPractice);

    internal static Usual<bool> SidesInChannel { get; } = new(false, "Battens on the baseboards hold the roof film of fixed sides.", Citation.CommonPractice);

    /// <summary>Size of a channel's screw in wood, as the takeoff writes it.</summary>
    internal static string ScrewInWoodSize(Plans.Cover cover, UnitSystem units) => cover.ChannelScrewDiameter is null && cover.ChannelScrewLength is null
        ? "#8 x 1 in"
        : Size(cover.ChannelScrewDiameter?.Value ?? ChannelScrewDiameter.Value, cover.ChannelScrewLength?.Value ?? ChannelScrewLength.Value, units);

    /// <summary>Size of the film's screw in tube.</summary>
    internal static string ScrewInTubeSize(Plans.Cover cover, UnitSystem units) => cover.TubeScrewDiameter is { } given ? Size(given.Value, Length.FromInches(1), units) : ScrewInTube;

    /// <summary>Size of a batten's nail.</summary>
    internal static string NailSize(Plans.Cover cover, UnitSystem units) => cover.BattenNailDiameter is null && cover.BattenNailLength is null
        ? "1-1/2 in, galvanized"
        : Size(cover.BattenNailDiameter?.Value ?? BattenNailDiameter.Value, cover.BattenNailLength?.Value ?? BattenNailLength.Value, units) + ", galvanized";

    /// <summary>Size of a staple between a batten's nails.</summary>
    internal static string StapleSize(Plans.Cover cover, UnitSystem units) => cover.StapleLength is { } given ? TapeText.OfThickness(given.Value, units) : "1/2 in";

    private static string Size(Length diameter, Length length, UnitSystem units) => $"{TapeText.OfThickness(diameter, units)} x {TapeText.OfThickness(length, units)}";
}
