namespace Hoopwright.Cuts.Film;

/// <summary>By what one choice of rolls was held better than another.</summary>
public enum RollRank
{
    /// <summary>Least price of what is bought.</summary>
    Price,

    /// <summary>Least area bought, since not every roll has a price.</summary>
    Area,
}
