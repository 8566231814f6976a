namespace Hoopwright.Cuts;

/// <summary>By what the stock of a cut list was chosen.</summary>
public enum CutRank
{
    /// <summary>By price.</summary>
    Price,

    /// <summary>By length in all, since nothing of it has a price.</summary>
    Length,

    /// <summary>By price, with lengths that have none counted at the dearest price a metre of those that do.</summary>
    PriceWithGaps,
}
