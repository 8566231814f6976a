using System.Collections.Frozen;
using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Pricing;

/// <summary>Every item that a takeoff can name. Packs are from memory and prices are invented.</summary>
internal static class ItemFacts
{
    private static readonly FrozenDictionary<string, ItemFact> ByName = Table().ToFrozenDictionary(fact => fact.Item, StringComparer.OrdinalIgnoreCase);

    /// <summary>The names, in the order of the table.</summary>
    public static ImmutableArray<string> Names { get; } = [.. Table().Select(fact => fact.Item)];

    /// <summary>The fact of an item; null for a name that no takeoff uses.</summary>
    public static ItemFact? Find(string item) => ByName.GetValueOrDefault(item.Trim());

    /// <summary>The fact of an item of the takeoff; one that the table lacks is sold singly by the hardware shop.</summary>
    public static ItemFact Of(string item) => Find(item) ?? new ItemFact(item, Supplier.HardwareShop, "each");

    private static ImmutableArray<ItemFact> Table() =>
    [
        new(Items.Board, Supplier.LumberYard, "board"),
        new(Items.Post, Supplier.LumberYard, "post"),
        new(Items.RigidSheet, Supplier.LumberYard, "sheet", ExamplePrice: 38.00m),

        new(Items.Tube, Supplier.SteelMerchant, "length"),
        new(Items.PlasticPipe, Supplier.HardwareShop, "length"),
        new(Items.TubeSleeve, Supplier.SteelMerchant, "each", ExamplePrice: 6.20m),
        new(Items.CrossClamp, Supplier.SteelMerchant, "each", ExamplePrice: 2.10m),
        new(Items.EndClamp, Supplier.SteelMerchant, "each", ExamplePrice: 2.60m),
        new(Items.PostBracket, Supplier.SteelMerchant, "each", ExamplePrice: 5.40m),

        new(Items.Film, Supplier.FilmSupplier, "roll"),
        new(Items.FilmTape, Supplier.FilmSupplier, "roll", Length: Length.FromFeet(100), MetricM: 30, ExamplePrice: 19.00m),
        new(Items.LockChannel, Supplier.FilmSupplier, "stick"),
        new(Items.SpringWire, Supplier.FilmSupplier, "piece", Length: Length.FromFeet(6.5), MetricM: 2, ExamplePrice: 1.55m),
        new(Items.Batten, Supplier.FilmSupplier, "roll", Length: Length.FromFeet(100), MetricM: 30, ExamplePrice: 17.50m),
        new(Items.InflationBlower, Supplier.FilmSupplier, "each", ExamplePrice: 96.00m),
        new(Items.InflationDuct, Supplier.FilmSupplier, "length", Length: Length.FromFeet(8), MetricM: 2.4, ExamplePrice: 14.50m),
        new(Items.FilmCollar, Supplier.FilmSupplier, "each", ExamplePrice: 7.20m),
        new(Items.Crank, Supplier.FilmSupplier, "each", ExamplePrice: 62.00m),
        new(Items.RollClip, Supplier.FilmSupplier, "bag", Pack: 10, ExamplePrice: 9.00m),
        new(Items.RopeEye, Supplier.FilmSupplier, "bag", Pack: 25, ExamplePrice: 11.00m),
        new(Items.CurtainWinch, Supplier.FilmSupplier, "each", ExamplePrice: 58.00m),
        new(Items.Pulley, Supplier.FilmSupplier, "each", ExamplePrice: 3.10m),

        new(Items.DryConcrete, Supplier.HardwareShop, "bag"),
        new(Items.ReinforcingPin, Supplier.HardwareShop, "each", ExamplePrice: 0.90m),
        new(Items.ConduitHanger, Supplier.HardwareShop, "each", ExamplePrice: 0.45m),
        new(Items.CarriageBolt, Supplier.HardwareShop, "box", Pack: 25, TakesSpare: true, ExamplePrice: 24.00m),
        new(Items.LumberScrew, Supplier.HardwareShop, "box", Pack: 100, TakesSpare: true, ExamplePrice: 14.00m),
        new(Items.BoardToTubeScrew, Supplier.HardwareShop, "box", Pack: 50, TakesSpare: true, ExamplePrice: 16.00m),
        new(Items.SelfDrillingScrew, Supplier.HardwareShop, "box", Pack: 100, TakesSpare: true, ExamplePrice: 12.00m),
        new(Items.ChannelScrew, Supplier.HardwareShop, "box", Pack: 100, TakesSpare: true, ExamplePrice: 9.00m),
        new(Items.SheetScrew, Supplier.HardwareShop, "box", Pack: 100, TakesSpare: true, ExamplePrice: 13.00m),
        new(Items.LagScrew, Supplier.HardwareShop, "box", Pack: 25, TakesSpare: true, ExamplePrice: 18.00m),
        new(Items.Nail, Supplier.HardwareShop, "box", Pack: 250, TakesSpare: true, ExamplePrice: 8.50m),
        new(Items.Staple, Supplier.HardwareShop, "box", Pack: 1000, TakesSpare: true, ExamplePrice: 6.00m),
        new(Items.Washer, Supplier.HardwareShop, "box", Pack: 100, TakesSpare: true, ExamplePrice: 5.00m),
        new(Items.MendingPlate, Supplier.HardwareShop, "each", ExamplePrice: 1.80m),
        new(Items.Stake, Supplier.HardwareShop, "bundle", Pack: 12, ExamplePrice: 10.00m),
        new(Items.StringLine, Supplier.HardwareShop, "reel", Length: Length.FromFeet(250), MetricM: 75, ExamplePrice: 7.00m),
        new(Items.PullingRope, Supplier.HardwareShop, "reel"),
        new(Items.PullingBall, Supplier.HardwareShop, "each", ExamplePrice: 1.50m),
        new(Items.Lacing, Supplier.HardwareShop, "reel", Length: Length.FromFeet(250), MetricM: 75, ExamplePrice: 21.00m),
        new(Items.CurtainCord, Supplier.HardwareShop, "reel", Length: Length.FromFeet(250), MetricM: 75, ExamplePrice: 24.00m),
        new(Items.Hinge, Supplier.HardwareShop, "each", ExamplePrice: 6.50m),
        new(Items.Latch, Supplier.HardwareShop, "each", ExamplePrice: 9.50m),
        new(Items.DropBolt, Supplier.HardwareShop, "each", ExamplePrice: 8.00m),
        new(Items.DoorHandle, Supplier.HardwareShop, "each", ExamplePrice: 7.00m),
        new(Items.DoorTrack, Supplier.HardwareShop, "length", Length: Length.FromFeet(8), MetricM: 2.4, ExamplePrice: 31.00m),
        new(Items.TrackBracket, Supplier.HardwareShop, "each", ExamplePrice: 6.00m),
        new(Items.RollerHanger, Supplier.HardwareShop, "each", ExamplePrice: 12.50m),
        new(Items.OverheadDoor, Supplier.HardwareShop, "each", ExamplePrice: 640.00m),
    ];
}
