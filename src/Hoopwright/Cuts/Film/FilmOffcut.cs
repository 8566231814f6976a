using Hoopwright.Quantities;

namespace Hoopwright.Cuts.Film;

/// <summary>A rectangle of film left over when a level is cut up.</summary>
/// <param name="Width">Across the roll.</param>
/// <param name="Length">Along the roll.</param>
public sealed record FilmOffcut(Length Width, Length Length)
{
    /// <summary>Width times length.</summary>
    public Area Area => Width * Length;
}
