using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Takeoff;

namespace Hoopwright.Orders;

/// <summary>Spares, packages and bag yields.</summary>
internal static class OrderDefaults
{
    internal static Usual<Ratio> ConcreteWaste { get; } = new(Ratio.FromPercent(10), "So much more concrete is bought, since holes are never as round as drawn.", Citation.CommonPractice);

    internal static Usual<Ratio> FastenerSpare { get; } = new(Ratio.FromPercent(5), "So many more screws, nails and staples are bought, since some are dropped.", Citation.CommonPractice);

    /// <summary>
    /// Yield of packaged dry concrete: 0.0075 ft³ a pound (40 lb 0.30, 50 lb 0.375, 60 lb 0.45, 80 lb 0.60 ft³); as bags
    /// print it, and the printed bag decides.
    /// </summary>
    internal static Volume Yield(Mass bag) => Volume.FromCubicFeet(bag.Pounds * 0.0075);

    /// <summary>Which items are fasteners that get spares.</summary>
    internal static bool IsFastener(string item) => item is Items.CarriageBolt or Items.LumberScrew or Items.BoardToTubeScrew or Items.SelfDrillingScrew
        or Items.LagScrew or Items.ChannelScrew or Items.Washer or Items.Nail or Items.Staple or Items.SheetScrew;

    /// <summary>Who usually sells an item.</summary>
    internal static Supplier SupplierOf(string item) => item switch
    {
        Items.Board or Items.Post or Items.DryConcrete or Items.Stake => Supplier.LumberYard,
        Items.Tube or Items.PlasticPipe or Items.TubeSleeve or Items.CrossClamp or Items.EndClamp => Supplier.SteelMerchant,
        Items.Film or Items.FilmTape or Items.LockChannel or Items.SpringWire or Items.Batten or Items.Crank or Items.RollClip or Items.CurtainWinch or Items.RigidSheet => Supplier.FilmSupplier,
        _ => Supplier.HardwareShop,
    };

    /// <summary>The usual package of a thing sold by number; from memory.</summary>
    internal static int UsualPack(string item) => IsFastener(item) ? 100 : 1;

    /// <summary>The usual roll of a thing sold by length; from memory.</summary>
    internal static Length UsualRoll(string item) => item switch
    {
        Items.SpringWire => Length.FromFeet(500),
        Items.Batten => Length.FromFeet(300),
        Items.FilmTape => Length.FromFeet(150),
        Items.DoorTrack => Length.FromFeet(8),
        _ => Length.FromFeet(100),
    };
}
