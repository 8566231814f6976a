namespace Hoopwright.Pricing;

/// <summary>Where a price comes from.</summary>
public enum PriceOrigin
{
    /// <summary>The plan's own price book, or the price of a roll of film in the plan.</summary>
    Plan,

    /// <summary>The built-in example prices, which are invented.</summary>
    Example,

    /// <summary>There is none.</summary>
    None,
}
