using System.Collections.Immutable;
using System.Globalization;

namespace Hoopwright.Diagnostics;

/// <summary>A sentence with places for numbers and names, so that it can be said in the language of a crew.</summary>
/// <param name="Pattern">The sentence in English with places {0}, {1}.</param>
/// <param name="Values">What goes into the places, as a tape reads it; names are English.</param>
public sealed record Phrase(string Pattern, ImmutableArray<string> Values)
{
    internal static Phrase Of(string pattern, params ReadOnlySpan<string> values) => new(pattern, [.. values]);

    /// <summary>The sentence in English.</summary>
    public override string ToString() => string.Format(CultureInfo.InvariantCulture, Pattern, [.. Values]);
}
