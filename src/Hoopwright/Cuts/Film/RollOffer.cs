using Hoopwright.Quantities;

namespace Hoopwright.Cuts.Film;

/// <summary>A size of film roll that can be had.</summary>
/// <param name="Id">Its name: the place in the plan it comes from, or its size in the usual list.</param>
/// <param name="Width">Unfolded width; above zero.</param>
/// <param name="Length">Length on the roll; above zero.</param>
/// <param name="Price">Price of the whole roll; zero when it is on hand, null when no price is known.</param>
/// <param name="Limit">How many can be had; null for any number.</param>
/// <param name="OnHand">True when it already lies in the barn.</param>
public sealed record RollOffer(string Id, Length Width, Length Length, Money? Price, int? Limit, bool OnHand)
{
    /// <summary>Width times length.</summary>
    public Area Area => Width * Length;
}
