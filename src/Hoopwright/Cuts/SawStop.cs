using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Quantities;

namespace Hoopwright.Cuts;

/// <summary>A setting of the saw stop.</summary>
/// <param name="Length">From blade to stop.</param>
/// <param name="Pieces">The numbers of the pieces cut against it.</param>
public sealed record SawStop(Length Length, ImmutableArray<string> Pieces)
{
    /// <summary>The numbers in words, those that follow one another drawn together: "A1, A3 to A7".</summary>
    public string Numbers
    {
        get
        {
            List<string> words = [];
            for (int first = 0; first < Pieces.Length;)
            {
                int last = first;
                while (last + 1 < Pieces.Length && Follows(Pieces[last], Pieces[last + 1])) last++;
                words.Add(last - first < 2 ? string.Join(", ", Pieces[first..(last + 1)]) : $"{Pieces[first]} to {Pieces[last]}");
                first = last + 1;
            }
            return string.Join(", ", words);
        }
    }

    private static bool Follows(string one, string next)
    {
        int digits = one.Length;
        while (digits > 0 && char.IsAsciiDigit(one[digits - 1])) digits--;
        return int.TryParse(one.AsSpan(digits), NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            && next == one[..digits] + (number + 1).ToString(CultureInfo.InvariantCulture);
    }
}
