using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Layout;

/// <summary>What holds the edges of the film, where the plan does not say: takeoff counts it, strength holds it against the pull of the film.</summary>
internal static class FilmFasteners
{
    /// <summary>Screw of a channel on wood.</summary>
    internal const string ScrewInWood = "#8 x 1 in";

    /// <summary>Nail of a batten on wood.</summary>
    internal const string Nail = "1-1/2 in, galvanized";

    /// <summary>Self-drilling screw in tube.</summary>
    internal const string ScrewInTube = "#12 x 1 in";

    internal static Usual<Length> ChannelScrewSpacing { get; } = new(Length.FromInches(12), "Screws of the lock channel stand this far apart.", Citation.CommonPractice);

    internal static Usual<Length> BattenSpacing { get; } = new(Length.FromInches(6), "The other nails of a batten stand this far apart.", Citation.CommonPractice);

    internal static Usual<bool> EndsOnBow { get; } = new(true, "Lock channel on the end bows holds the film there.", Citation.CommonPractice);

    internal static Usual<bool> SidesInChannel { get; } = new(false, "Battens on the baseboards hold the roof film of fixed sides.", Citation.CommonPractice);
}
