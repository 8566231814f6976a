using System.Globalization;

namespace Hoopwright.Testing;

/// <summary>Checks a computed value against a value printed by someone else.</summary>
public static class Published
{
    /// <summary>Fails with the source, the printed and the computed value when they differ by more than the tolerance.</summary>
    /// <param name="source">Title, publisher and place of the printed value, or "common practice, no source" or "from memory".</param>
    /// <param name="what">What the value is.</param>
    /// <param name="expected">As printed.</param>
    /// <param name="actual">As computed, in the same unit.</param>
    /// <param name="tolerance">Largest difference, in that unit.</param>
    /// <param name="because">Why so much is allowed.</param>
    public static void Check(string source, string what, double expected, double actual, double tolerance, string because)
    {
        if (Math.Abs(actual - expected) <= tolerance) return;
        throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture,
            $"{what}: computed {actual:G9}, but {source} has {expected:G9} (allowed ±{tolerance:G3}: {because})."));
    }
}
