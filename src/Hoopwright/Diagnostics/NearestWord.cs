using System.Collections.Immutable;

namespace Hoopwright.Diagnostics;

/// <summary>Finds what someone meant who typed a word that does not exist.</summary>
internal static class NearestWord
{
    // Longer words are no slip of the finger; this also bounds the work on hostile input.
    private const int LongestWord = 40;

    /// <summary>The nearest of some words, when it is near enough to be meant.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="words">What exists.</param>
    /// <returns>Null when none is within a third of the word's length, or two letters for a short one.</returns>
    public static string? Of(string typed, ImmutableArray<string> words)
    {
        if (typed.Length is 0 or > LongestWord)
            return null;
        string? nearest = null;
        var least = Math.Max(2, typed.Length / 3) + 1;
        foreach (var word in words)
        {
            if (Math.Abs(typed.Length - word.Length) >= least)
                continue;

            // Half of the word must be right: "in" is no slip for "tie".
            var distance = string.Equals(typed, word, StringComparison.OrdinalIgnoreCase) ? 0 : Distance(typed, word);
            if (distance < least && 2 * distance <= word.Length)
                (nearest, least) = (word, distance);
        }

        return nearest;
    }

    /// <summary>What would be accepted: the nearest word first, when there is one, then all of them.</summary>
    public static string Accepted(string typed, ImmutableArray<string> words)
    {
        var all = words is [.. var first, var last] && !first.IsEmpty ? $"{string.Join(", ", first)} or {last}" : string.Concat(words);
        return Of(typed, words) is { } nearest ? $"{nearest}; the choices are {all}" : all;
    }

    // Edit distance with swapped neighbours counted as one slip (optimal string alignment).
    public static int Distance(string left, string right)
    {
        var table = new int[left.Length + 1, right.Length + 1];
        for (var i = 0; i <= left.Length; i++)
            table[i, 0] = i;
        for (var j = 0; j <= right.Length; j++)
            table[0, j] = j;
        for (var i = 1; i <= left.Length; i++)
        {
            for (var j = 1; j <= right.Length; j++)
            {
                var change = table[i - 1, j - 1] + (Same(left[i - 1], right[j - 1]) ? 0 : 1);
                var best = Math.Min(change, Math.Min(table[i - 1, j], table[i, j - 1]) + 1);
                if (i > 1 && j > 1 && Same(left[i - 1], right[j - 2]) && Same(left[i - 2], right[j - 1]))
                    best = Math.Min(best, table[i - 2, j - 2] + 1);
                table[i, j] = best;
            }
        }

        return table[left.Length, right.Length];
    }

    private static bool Same(char left, char right) => char.ToLowerInvariant(left) == char.ToLowerInvariant(right);
}
