using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Hoopwright.Testing.Fuzz;

/// <summary>
/// Makes new inputs of JSON that are JSON again: a value somewhat more or less, another word, a member less or taken from another input, an element more or
/// less. Most of these can still be read, and so lead behind the reader. The same seed makes the same inputs.
/// </summary>
/// <param name="seed">The seed.</param>
public sealed partial class TreeMutator(int seed)
{
    /// <summary>What sets two files apart that are one input.</summary>
    public const byte Between = 0;

    private const int MostOfOne = 20;

    private static readonly JsonDocumentOptions Lenient = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true, AllowDuplicateProperties = false };
    private static readonly double[] Factors = [0, .1, .5, .9, .99, 1.01, 1.1, 1.5, 2, 3, 10, -1];
    private static readonly string[] Odd = ["0", "0 in", "-1 ft", "1e9 ft", "1 mm", "", "front", "none", "9' 11-15/16\""];

    // Fixed numbers in, fixed numbers out; nothing here needs to be hard to guess.
#pragma warning disable CA5394
    private readonly Random chance = new(seed);

    /// <summary>A new input; null where the one to change is no JSON.</summary>
    /// <param name="one">The input to change.</param>
    /// <param name="other">Another one to take values from.</param>
    public byte[]? Next(byte[] one, byte[] other)
    {
        int at = Array.IndexOf(one, Between);
        if (at < 0) return Changed(one, other);
        byte[] first = one[..at], second = one[(at + 1)..];
        bool isFirst = chance.Next(2) == 0;
        return Changed(isFirst ? first : second, isFirst ? second : first) is { } made ? isFirst ? [.. made, Between, .. second] : [.. first, Between, .. made] : null;
    }

    private byte[]? Changed(byte[] one, byte[] other)
    {
        if (Read(one) is not { } tree) return null;
        JsonNode theirs = Read(other) ?? tree.DeepClone();
        for (int times = 1 + chance.Next(4); times > 0; times--) Change(tree, theirs);
        return JsonSerializer.SerializeToUtf8Bytes(tree);
    }

    private static JsonNode? Read(byte[] input)
    {
        try
        {
            JsonNode? tree = JsonNode.Parse(Encoding.UTF8.GetString(input), documentOptions: Lenient);
            if (tree is null or JsonValue) return null;
            // Names and texts are read when they are asked for; half a character is told only then.
            foreach (JsonValue text in Inside(tree).OfType<JsonValue>().Where(each => each.GetValueKind() == JsonValueKind.String)) text.GetValue<string>();
            return tree;
        }
        catch (Exception fault) when (fault is JsonException or InvalidOperationException)
        {
            return null;
        }
    }

    private void Change(JsonNode tree, JsonNode theirs)
    {
        List<JsonNode> inside = [.. Inside(tree)];
        if (inside.Count == 0) return;
        JsonNode chosen = inside[chance.Next(inside.Count)];
        switch (chosen)
        {
            case JsonValue value:
                Put(value, Other(value, theirs));
                break;
            case JsonArray { Count: > 0 } list:
                Lengthen(list);
                break;
            case JsonObject group:
                Exchange(group, theirs);
                break;
        }
    }

    private static IEnumerable<JsonNode> Inside(JsonNode node)
    {
        IEnumerable<JsonNode?> below = node switch
        {
            JsonObject group => group.Select(member => member.Value),
            JsonArray list => list,
            _ => [],
        };
        foreach (JsonNode? each in below)
        {
            if (each is null) continue;
            yield return each;
            foreach (JsonNode further in Inside(each)) yield return further;
        }
    }

    private static void Put(JsonValue old, JsonNode? put)
    {
        if (old.Parent is JsonArray list) list[list.IndexOf(old)] = put;
        else if (old.Parent is JsonObject group) group[old.GetPropertyName()] = put;
    }

    private JsonNode? Other(JsonValue value, JsonNode theirs) => value.GetValueKind() switch
    {
        JsonValueKind.True => false,
        JsonValueKind.False => true,
        JsonValueKind.Number => double.TryParse(Near(value.ToJsonString()), CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) ? number : 0,
        _ when value.GetValueKind() != JsonValueKind.String => null,
        _ when chance.Next(3) > 0 => Near(value.GetValue<string>()),
        _ => Like(value, theirs),
    };

    // One of its numbers by a factor, the rest as it stood.
    private string Near(string text)
    {
        MatchCollection numbers = Number().Matches(text);
        if (numbers.Count == 0) return Odd[chance.Next(Odd.Length)];
        Match number = numbers[chance.Next(numbers.Count)];
        double made = double.Parse(number.Value, CultureInfo.InvariantCulture) * Factors[chance.Next(Factors.Length)];
        return string.Concat(text.AsSpan(0, number.Index), made.ToString("0.####", CultureInfo.InvariantCulture), text.AsSpan(number.Index + number.Length));
    }

    // A word that the other has under the same name, so that choices meet choices.
    private JsonNode? Like(JsonValue value, JsonNode theirs)
    {
        string? name = value.Parent is JsonObject ? value.GetPropertyName() : null;
        JsonValue[] words = [.. Inside(theirs).OfType<JsonValue>().Where(each => name is null ? each.Parent is JsonArray : each.Parent is JsonObject && each.GetPropertyName() == name)];
        return words.Length == 0 ? Odd[chance.Next(Odd.Length)] : words[chance.Next(words.Length)].DeepClone();
    }

    private void Lengthen(JsonArray list)
    {
        int at = chance.Next(list.Count);
        if (chance.Next(2) == 0) list.RemoveAt(at);
        else for (int more = 1 + (chance.Next(4) == 0 ? chance.Next(MostOfOne) : 0); more > 0; more--) list.Insert(at, list[at]?.DeepClone());
    }

    private void Exchange(JsonObject group, JsonNode theirs)
    {
        string? name = group.Parent is JsonObject ? group.GetPropertyName() : null;
        JsonObject[] alike = [.. Inside(theirs).Append(theirs).OfType<JsonObject>().Where(each => name is null ? each.Parent is not JsonObject : each.Parent is JsonObject && each.GetPropertyName() == name)];
        if (chance.Next(2) == 0 && group.Count > 0) group.RemoveAt(chance.Next(group.Count));
        else if (alike.Length > 0 && alike[chance.Next(alike.Length)] is { Count: > 0 } from && from.GetAt(chance.Next(from.Count)) is var taken) group[taken.Key] = taken.Value?.DeepClone();
    }
#pragma warning restore CA5394

    [GeneratedRegex(@"\d+(?:\.\d+)?(?:[eE][+-]?\d+)?", RegexOptions.CultureInvariant)]
    private static partial Regex Number();
}
