using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Pricing;

/// <summary>
/// Invented prices, so that a first plan shows what an order looks like. They come from no seller and no date; a plan's own
/// price book takes their place.
/// </summary>
public static class ExamplePrices
{
    /// <summary>The currency the invented prices are in.</summary>
    public const string Currency = "USD";

    /// <summary>What to print wherever they are used.</summary>
    public const string Note = "Example prices are invented; put your own in the price book.";

    // All invented.
    private const double SteelPerKg = 2.40;
    private const double PlasticPerKg = 3.60;
    private const double BoardPerM3 = 520;
    private const double PostPerM3 = 640;
    private const double TreatedTimes = 1.30;
    private const double LongerBoardsPerFoot = 0.01;
    private const double ChannelPerM = 4.40;
    private const double RopePerM = 0.45;
    private const double FilmPerM2 = 1.35;
    private const double ConcretePerKg = 0.19;

    // Rigid PVC, from memory.
    private const double PlasticKgM3 = 1400;

    /// <summary>The invented price of one stick, board or pipe; null for an item that is not sold so.</summary>
    /// <param name="item">The item of the takeoff.</param>
    /// <param name="section">Its section; null for lock channel and rope.</param>
    /// <param name="length">Length of the stick.</param>
    public static Money? OfStick(string item, MemberSection? section, Length length)
    {
        if (item == Items.LockChannel) return Rounded(ChannelPerM * length.Metres);
        if (item == Items.PullingRope) return Rounded(RopePerM * length.Metres);
        return section?.Match(tube => Rounded(KgPerM(tube) * length.Metres * PerKg(tube.Material)), board => Rounded(OfBoard(board, length)));
    }

    /// <summary>The invented price of a roll of film.</summary>
    /// <param name="area">Unfolded area of the roll.</param>
    public static Money OfFilm(Area area) => Rounded(FilmPerM2 * area.SquareMetres);

    /// <summary>The invented price of a bag of dry concrete.</summary>
    /// <param name="bag">Mass of the bag.</param>
    public static Money OfConcrete(Mass bag) => Rounded(ConcretePerKg * bag.Kilograms);

    /// <summary>The invented price of one package of anything else; null for an item without one.</summary>
    /// <param name="item">The item of the takeoff.</param>
    public static Money? OfPackage(string item) => ItemFacts.Find(item)?.ExamplePrice is { } price ? new Money(price) : null;

    private static double OfBoard(BoardSection board, Length length)
    {
        double perM3 = (board.Item == Items.Post ? PostPerM3 : BoardPerM3) * (board.Treated ? TreatedTimes : 1);
        double longer = 1 + (LongerBoardsPerFoot * Math.Max(0, length.Feet - 8));
        return board.Thickness.Metres * board.Depth.Metres * length.Metres * perM3 * longer;
    }

    private static double KgPerM(TubeSection tube)
    {
        Area area = tube.Form switch
        {
            TubeForm.Round => new RoundTube(tube.Outside, tube.Wall).Area,
            TubeForm.Square => new SquareTube(tube.Outside, tube.Wall).Area,
        };
        return tube.Material switch
        {
            TubeMaterial.GalvanizedSteel => area.SquareMetres * RoundTube.SteelKgM3,
            TubeMaterial.Pvc => area.SquareMetres * PlasticKgM3,
        };
    }

    private static double PerKg(TubeMaterial material) => material switch { TubeMaterial.GalvanizedSteel => SteelPerKg, TubeMaterial.Pvc => PlasticPerKg };

    private static Money Rounded(double amount) => new Money((decimal)amount).RoundToCents();
}
