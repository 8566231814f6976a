namespace Hoopwright.Pricing;

/// <summary>The kind of seller that an item is bought from, so that an order splits into one list for each.</summary>
public enum Supplier
{
    /// <summary>Boards and posts.</summary>
    LumberYard,

    /// <summary>Tubes, clamps and sleeves.</summary>
    SteelMerchant,

    /// <summary>Film, lock channel, spring wire and parts of the sides.</summary>
    FilmSupplier,

    /// <summary>Concrete, screws, door hardware, rope.</summary>
    HardwareShop,

    /// <summary>Lines that the plan adds by hand; it does not say who sells them.</summary>
    AddedByHand,
}
