using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>Heights of the bow at even steps across the span, for checking a bow with a tape.</summary>
public static class BowOrdinates
{
    /// <summary>One height.</summary>
    /// <param name="Across">From the left ground line.</param>
    /// <param name="Film">Height of the outside of the bow.</param>
    /// <param name="Underside">Height of its underside; zero beyond the inner faces of the legs.</param>
    public sealed record Ordinate(Length Across, Length Film, Length Underside);

    /// <summary>Every foot or half metre from the left string to the middle, and at the middle.</summary>
    public static ImmutableArray<Ordinate> Of(Tunnel tunnel)
    {
        Length step = tunnel.Units switch { UnitSystem.UsCustomary => Length.FromFeet(1), UnitSystem.Metric => Length.FromMetres(0.5) };
        Length middle = tunnel.Span / 2;
        int steps = (int)Math.Floor((middle / step) + Tolerances.WholeNumber);
        IEnumerable<Length> places = Enumerable.Range(0, steps + 1).Select(index => step * index);
        if ((middle - (step * steps)).Metres > Tolerances.PlaceM) places = places.Append(middle);
        return [.. places.Select(across => new Ordinate(across, tunnel.Bow.FilmLine.HeightAt(across) ?? Length.Zero, tunnel.Bow.UndersideAt(across) ?? Length.Zero))];
    }
}
