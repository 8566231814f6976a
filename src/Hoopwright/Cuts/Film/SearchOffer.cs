namespace Hoopwright.Cuts.Film;

/// <summary>A roll as the search sees it.</summary>
/// <param name="Width">Width, in ticks.</param>
/// <param name="Length">Length, in ticks.</param>
/// <param name="Cost">What choosing it costs, in money or area; 0 when it is on hand.</param>
/// <param name="OnHand">True when it is not bought.</param>
/// <param name="Limit">How many can be had; null for any number.</param>
internal sealed record SearchOffer(long Width, long Length, decimal Cost, bool OnHand, int? Limit)
{
    /// <summary>How often the search must look at it for so many pieces: no more rolls than pieces are ever used.</summary>
    internal int Passes(int pieces) => Limit is { } limit ? Math.Min(limit, pieces) : 1;

    /// <summary>The score of one roll of it of which a stretch is cut.</summary>
    internal RollScore ScoreOf(long cut) => new(
        OnHand ? 0 : Cost, OnHand ? 0 : 1, OnHand ? 0 : (Int128)Width * Length, (Int128)Width * cut);
}
