using System.Text;
using System.Text.RegularExpressions;

namespace Hoopwright.Testing.Fuzz;

/// <summary>Makes new inputs from old ones: by bits, by bytes, by pieces of two inputs, by words and numbers. The same seed makes the same inputs.</summary>
/// <param name="seed">The seed.</param>
public sealed partial class Mutator(int seed)
{
    private const int MostBytes = 200_000;

    private static readonly string[] Odd =
    [
        "0", "-0", "-1", "1e308", "-1e308", "1e-320", "99999999999999999999", "0.1", "1.7976931348623157e309", "NaN", "null", "true", "[]", "{}", "\"\"", "\"\\u0000\"", "\"\\ud800\"", "1/0", "9'", "'", "\"", "\\", "in", "ft", " ", ",", ":", "[[[[[[[[[[[[[[[[", "{\"a\":", "\u202e", "\ufeff", "∞", "½", "−", "1 000 000 000 mm", "1e9 ft",
    ];

    // Fixed numbers in, fixed numbers out; nothing here needs to be hard to guess.
#pragma warning disable CA5394
    private readonly Random chance = new(seed);

    /// <summary>A new input.</summary>
    /// <param name="one">The input to change.</param>
    /// <param name="other">Another one to take pieces from.</param>
    public byte[] Next(byte[] one, byte[] other)
    {
        byte[] made = one;
        for (int times = 1 + chance.Next(4); times > 0; times--)
        {
            made = chance.Next(8) switch
            {
                0 => Bits(made),
                1 => Cut(made),
                2 => Twice(made),
                3 => Spliced(made, other),
                4 => Bytes(made),
                _ => Words(made, other),
            };
        }
        return made.Length > MostBytes ? made[..MostBytes] : made;
    }

    private byte[] Bits(byte[] input)
    {
        if (input.Length == 0) return [(byte)chance.Next(256)];
        byte[] made = [.. input];
        made[chance.Next(made.Length)] ^= (byte)(1 << chance.Next(8));
        return made;
    }

    private byte[] Bytes(byte[] input)
    {
        int at = chance.Next(input.Length + 1);
        byte[] some = new byte[1 + chance.Next(4)];
        chance.NextBytes(some);
        return [.. input.AsSpan(0, at), .. some, .. input.AsSpan(at)];
    }

    private (int From, int To) Piece(byte[] input)
    {
        int from = chance.Next(input.Length + 1), to = Math.Min(input.Length, from + 1 + chance.Next(1 + Math.Max(1, input.Length / 4)));
        return (from, to);
    }

    private byte[] Cut(byte[] input)
    {
        (int from, int to) = Piece(input);
        return [.. input.AsSpan(0, from), .. input.AsSpan(to)];
    }

    private byte[] Twice(byte[] input)
    {
        (int from, int to) = Piece(input);
        return [.. input.AsSpan(0, to), .. input.AsSpan(from)];
    }

    private byte[] Spliced(byte[] input, byte[] other)
    {
        (int from, int to) = Piece(other);
        int at = chance.Next(input.Length + 1);
        return [.. input.AsSpan(0, at), .. other.AsSpan(from, to - from), .. input.AsSpan(at)];
    }

    private byte[] Words(byte[] input, byte[] other)
    {
        string text = Encoding.Latin1.GetString(input);
        MatchCollection words = Word().Matches(text);
        if (words.Count == 0) return Bytes(input);
        Match word = words[chance.Next(words.Count)];
        string put = chance.Next(3) switch
        {
            0 => Latin(Odd[chance.Next(Odd.Length)]),
            1 => words[chance.Next(words.Count)].Value,
            _ => Word().Matches(Encoding.Latin1.GetString(other)) is { Count: > 0 } theirs ? theirs[chance.Next(theirs.Count)].Value : "",
        };
        return Encoding.Latin1.GetBytes(string.Concat(text.AsSpan(0, word.Index), put, text.AsSpan(word.Index + word.Length)));
    }
#pragma warning restore CA5394

    // Bytes of UTF-8 as so many letters, so that they come out as they went in.
    private static string Latin(string text) => Encoding.Latin1.GetString(Encoding.UTF8.GetBytes(text));

    [GeneratedRegex("""-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?|"[^"\\]*"|[A-Za-z]+|[\[\]{},:]""", RegexOptions.CultureInvariant)]
    private static partial Regex Word();
}
