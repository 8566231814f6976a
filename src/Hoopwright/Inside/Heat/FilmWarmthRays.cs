using Hoopwright.Plans;

namespace Hoopwright.Inside.Heat;

/// <summary>What a film does with warmth: lets it through, throws it back, and takes up and sends out the rest.</summary>
/// <param name="Through">τ.</param>
/// <param name="Back">ρ.</param>
internal readonly record struct FilmWarmthRays(double Through, double Back)
{
    // Plain polyethylene 0.5 to 0.75 (arid-zone review), film to hold warmth 0.2 to 0.4, wet film nearly opaque: middles from memory. Row cover: from memory.
    internal static readonly FilmWarmthRays Plain = new(0.65, 0.10), Infrared = new(0.25, 0.10), Wet = new(0.05, 0.05), RowCover = new(0.50, 0.10);

    internal static FilmWarmthRays Of(FilmKind kind) => kind switch { FilmKind.Plain => Plain, FilmKind.Infrared => Infrared };

    /// <summary>ε.</summary>
    internal double SendsOut => 1 - Through - Back;

    /// <summary>Part of the way to a wet film.</summary>
    /// <param name="wetness">0 dry, 1 wet all over.</param>
    internal FilmWarmthRays Wetted(double wetness) => new(Through + (wetness * (Wet.Through - Through)), Back + (wetness * (Wet.Back - Back)));
}
