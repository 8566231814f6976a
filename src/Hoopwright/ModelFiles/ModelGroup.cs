using System.Collections.Immutable;
using System.Text.Json;
using Hoopwright.Diagnostics;

namespace Hoopwright.ModelFiles;

/// <summary>A group of fields in a model or job file. Asking for a field tells what is wrong with it, and then gives null.</summary>
internal sealed class ModelGroup
{
    private const int LongestName = 100;
    private const int MostDigits = 24;
    private const int MostDecimals = 20;
    private const int MostCounted = 1_000_000_000;
    private readonly JsonElement _json;
    private readonly ModelProblems _problems;

    private ModelGroup(JsonElement json, string path, ModelProblems problems) => (_json, Path, _problems) = (json, path, problems);

    /// <summary>Where what is wrong is told.</summary>
    internal ModelProblems Problems => _problems;

    /// <summary>Its path; empty for the whole file.</summary>
    internal string Path { get; }

    /// <summary>A value as a group; null, and told, when it is none.</summary>
    internal static ModelGroup? Of(JsonElement json, string path, ModelProblems problems)
    {
        if (json.ValueKind == JsonValueKind.Object)
            return new(json, path, problems);
        Wrong(problems, path, json, "a group of fields in { }");
        return null;
    }

    internal static string PathOf(string group, string field) =>
        group.Length == 0 ? SeenText.Shorten(field) : $"{group}.{SeenText.Shorten(field)}";

    /// <summary>The path of a field, there or not.</summary>
    internal string PathOf(string field) => PathOf(Path, field);

    /// <summary>How many fields it has.</summary>
    internal int Length => _json.EnumerateObject().Count();

    internal bool Has(string field) => _json.TryGetProperty(field, out _);

    /// <summary>Tells fields that do not belong here, and fields that stand here twice.</summary>
    internal void Only(ImmutableArray<string> known)
    {
        long seen = 0;
        foreach (var field in _json.EnumerateObject())
        {
            int at = 0;
            while (at < known.Length && !field.NameEquals(known[at]))
                at++;
            if (at == known.Length)
                _problems.Error("model.unknown-field", PathOf(field.Name), $"There is no field {SeenText.Shorten(field.Name)} here.", SeenText.Shorten(field.Name), _problems.IsFull ? null : NearestWord.Accepted(field.Name, known));
            else if ((seen >> at & 1) != 0)
                Twice(field.Name);
            else
                seen |= 1L << at;
        }
    }

    /// <summary>Its fields as named things, each name once.</summary>
    internal IEnumerable<ModelEntry> Entries()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var field in _json.EnumerateObject())
        {
            string id = field.Name;
            if (id.Length is 0 or > LongestName || SeenText.Shorten(id).Contains('\uFFFD', StringComparison.Ordinal))
                _problems.Error("model.name", PathOf(id), "A name is empty, very long, or holds a character that cannot be shown.", SeenText.Shorten(id), "a name of 1 to 100 letters, digits and signs");
            if (seen.Add(id))
                yield return new(id, field.Value, Path);
            else
                Twice(id);
        }
    }

    /// <summary>A group in this one; null when there is none.</summary>
    internal ModelGroup? Group(string field) => _json.TryGetProperty(field, out var json) ? Of(json, PathOf(field), _problems) : null;

    /// <summary>A group that must be there.</summary>
    internal ModelGroup? NeededGroup(string field, string example)
    {
        if (!Has(field))
            Missing(field, example);
        return Group(field);
    }

    /// <summary>A number; null when there is none.</summary>
    internal double? Number(string field) => _json.TryGetProperty(field, out var json) ? Number(json, PathOf(field), _problems) : null;

    /// <summary>A number that must be there.</summary>
    internal double? NeededNumber(string field, string example)
    {
        if (!Has(field))
            Missing(field, example);
        return Number(field);
    }

    /// <summary>A whole number within a range; null when there is none.</summary>
    internal int? Count(string field, int least, int most)
    {
        if (!_json.TryGetProperty(field, out var json))
            return null;
        if (json.ValueKind == JsonValueKind.Number && json.TryGetInt32(out int count) && count >= least && count <= most)
            return count;
        _problems.Error("model.count", PathOf(field), $"{field} is no whole number from {Text(least)} to {Text(most)}.", Seen(json), $"{Text(least)} to {Text(most)}");
        return null;

        static string Text(int value) => value.ToString(System.Globalization.CultureInfo.InvariantCulture);
    }

    /// <summary>true or false; null when there is none.</summary>
    internal bool? Flag(string field)
    {
        if (!_json.TryGetProperty(field, out var json))
            return null;
        if (json.ValueKind is JsonValueKind.True or JsonValueKind.False)
            return json.GetBoolean();
        Wrong(_problems, PathOf(field), json, "true or false");
        return null;
    }

    /// <summary>A text that must be there.</summary>
    internal string? NeededText(string field, string example)
    {
        if (!_json.TryGetProperty(field, out var json))
            Missing(field, example);
        else if (json.ValueKind == JsonValueKind.String)
            return json.GetString();
        else
            Wrong(_problems, PathOf(field), json, "a text in double quotes");
        return null;
    }

    /// <summary>One of a few words; null when there is none.</summary>
    internal T? Word<T>(string field, ImmutableArray<(string Word, T Value)> words)
        where T : struct
    {
        if (!_json.TryGetProperty(field, out var json))
            return null;
        return Word(json, PathOf(field), words, _problems);
    }

    /// <summary>One of a few words that must be there.</summary>
    internal T? NeededWord<T>(string field, ImmutableArray<(string Word, T Value)> words)
        where T : struct
    {
        if (!Has(field))
            Missing(field, $"\"{words[0].Word}\"");
        return Word(field, words);
    }

    /// <summary>A value as one of a few words.</summary>
    internal static T? Word<T>(JsonElement json, string path, ImmutableArray<(string Word, T Value)> words, ModelProblems problems)
        where T : struct
    {
        if (json.ValueKind != JsonValueKind.String)
        {
            Wrong(problems, path, json, "a word in double quotes");
            return null;
        }
        foreach (var (word, value) in words)
        {
            if (json.ValueEquals(word))
                return value;
        }
        string typed = json.GetString() ?? "";
        problems.Error("model.unknown-word", path, $"{SeenText.Shorten(typed)} is none of the words that may stand here.", SeenText.Shorten(typed), NearestWord.Accepted(typed, [.. words.Select(each => each.Word)]));
        return null;
    }

    /// <summary>The value of a field as it stands in the file; null when there is none.</summary>
    internal JsonElement? Value(string field) => _json.TryGetProperty(field, out var json) ? json : null;

    /// <summary>The value of a field that must be there.</summary>
    internal JsonElement? NeededValue(string field, string example)
    {
        if (!Has(field))
            Missing(field, example);
        return Value(field);
    }

    /// <summary>A value as a number without loss; null, and told, when it has more digits than can be kept.</summary>
    internal static decimal? Exact(JsonElement json, string path, ModelProblems problems)
    {
        if (json.ValueKind != JsonValueKind.Number)
        {
            Wrong(problems, path, json, "a number");
            return null;
        }
        string digits = json.GetRawText();
        string mantissa = digits.Split('e', 'E')[0].TrimStart('-').Replace(".", "", StringComparison.Ordinal).TrimStart('0').TrimEnd('0');
        if (mantissa.Length <= MostDigits && json.TryGetDecimal(out decimal value) && (value != 0 || mantissa.Length == 0) && value.Scale <= MostDecimals)
            return value;
        problems.Error("model.number", path, "The number has more digits than can be reckoned with exactly.", Seen(json), "a number of up to 15 digits, such as 1371.6");
        return null;
    }

    /// <summary>A value as a whole number of any sign; null, and told, when it is none.</summary>
    internal static int? Whole(JsonElement json, string path, ModelProblems problems)
    {
        if (json.ValueKind == JsonValueKind.Number && json.TryGetDecimal(out decimal value) && decimal.IsInteger(value) && Math.Abs(value) <= MostCounted)
            return (int)value;
        if (json.ValueKind != JsonValueKind.Number)
            Wrong(problems, path, json, "a whole number");
        else
            problems.Error("model.count", path, "This is no whole number, or too large a one.", Seen(json), "a whole number up to 1 000 000 000");
        return null;
    }

    /// <summary>The values of a list; none, and told, when it is no list.</summary>
    internal IEnumerable<(JsonElement Json, string Path)> List(string field)
    {
        if (!_json.TryGetProperty(field, out var json))
            return [];
        if (json.ValueKind == JsonValueKind.Array)
            return json.EnumerateArray().Select((item, at) => (item, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{PathOf(field)}[{at}]")));
        Wrong(_problems, PathOf(field), json, "a list in [ ]");
        return [];
    }

    /// <summary>A value as a number.</summary>
    internal static double? Number(JsonElement json, string path, ModelProblems problems)
    {
        if (json.ValueKind != JsonValueKind.Number)
        {
            Wrong(problems, path, json, "a number");
            return null;
        }
        if (json.TryGetDouble(out double value) && double.IsFinite(value))
            return value;
        problems.Error("model.number", path, "The number is too large to be reckoned with.", Seen(json), "a number up to 1e308");
        return null;
    }

    /// <summary>Tells that a value is of another kind than it must be.</summary>
    internal static void Wrong(ModelProblems problems, string path, JsonElement json, string accepted) =>
        problems.Error("model.wrong-kind", path, $"Here stands {Seen(json)}; it must be {accepted}.", Seen(json), accepted);

    private void Missing(string field, string example) =>
        _problems.Error("model.missing-field", PathOf(field), $"{field} is missing.", null, $"\"{field}\": {example}");

    private void Twice(string field) =>
        _problems.Error("model.duplicate", PathOf(field), $"The name {SeenText.Shorten(field)} stands here twice.", SeenText.Shorten(field), "each name once");

    /// <summary>A value as a diagnostic shows it.</summary>
    internal static string Seen(JsonElement json) => json.ValueKind switch
    {
        JsonValueKind.Object => "a group of fields in { }",
        JsonValueKind.Array => "a list in [ ]",
        JsonValueKind.String => "\"" + SeenText.Shorten(json.GetString() ?? "") + "\"",
        _ => SeenText.Shorten(json.GetRawText()),
    };
}
