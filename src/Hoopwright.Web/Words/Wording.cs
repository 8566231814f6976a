using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Hoopwright.Sheets.Words;
using Hoopwright.Web.Fields;
using Hoopwright.Web.State;

namespace Hoopwright.Web.Words;

/// <summary>Every text of the page, by key, in the language chosen. What a language lacks is said in English.</summary>
public sealed class Wording
{
    private static readonly ImmutableDictionary<string, string> English = Read("en");
    private ImmutableDictionary<string, string> chosen = English;

    /// <summary>Another language was chosen.</summary>
    public event Action? Changed;

    /// <summary>The languages there are, by their codes.</summary>
    public static ImmutableArray<string> Languages { get; } = ["en", "es"];

    /// <summary>The code of the language chosen.</summary>
    public string Language { get; private set; } = "en";

    /// <summary>The text of a key; the key itself when nobody has written it.</summary>
    /// <param name="key">The key.</param>
    public string this[string key] => chosen.GetValueOrDefault(key) ?? English.GetValueOrDefault(key) ?? key;

    /// <summary>The text of a key with its places {0}, {1} filled.</summary>
    /// <param name="key">The key.</param>
    /// <param name="values">What goes into the places.</param>
    public string Of(string key, params object[] values) => string.Format(CultureInfo.InvariantCulture, this[key], values);

    /// <summary>What a field is called: by its path, by its name, or its name spelled out.</summary>
    /// <param name="pattern">Its path with [] for list items.</param>
    public string Field(string pattern) => FieldName(pattern) ?? Spelled(NameOf(pattern));

    /// <summary>True when a field has a name of its own.</summary>
    /// <param name="pattern">Its path with [] for list items.</param>
    public bool HasField(string pattern) => FieldName(pattern) is not null;

    /// <summary>What a choice of a field is called.</summary>
    /// <param name="pattern">The field's path with [] for list items.</param>
    /// <param name="choice">The word in the plan.</param>
    public string Choice(string pattern, string choice) => ChoiceName(pattern, choice) ?? Spelled(choice);

    /// <summary>True when a choice has a word of its own.</summary>
    /// <param name="pattern">The field's path with [] for list items.</param>
    /// <param name="choice">The word in the plan.</param>
    public bool HasChoice(string pattern, string choice) => ChoiceName(pattern, choice) is not null;

    /// <summary>What a field means: in the language chosen where someone has put it into it, else as the schema of plans says it.</summary>
    /// <param name="field">The field.</param>
    public string Help(Field field) => chosen.GetValueOrDefault("help." + field.Path) ?? field.Help;

    /// <summary>What was found: in the language chosen where someone has put it into it, else as the engine says it.</summary>
    /// <param name="found">What was found; what was seen and what would do are told beside it.</param>
    public string Found(Finding found) => chosen.GetValueOrDefault("finding." + found.Code) ?? found.Message;

    /// <summary>What a result is called.</summary>
    /// <param name="path">Its path without unit.</param>
    public string Fact(string path) => Known("fact." + path) ?? Spelled(path[(path.LastIndexOf('.') + 1)..]);

    /// <summary>What a drawing is called.</summary>
    /// <param name="name">Its name, such as front-end or front-door-1-leaf.</param>
    public string Drawing(string name)
    {
        if (Known("drawing." + name) is { } known) return known;
        string spelled = name.Replace('-', ' ');
        return char.ToUpperInvariant(spelled[0]) + spelled[1..];
    }

    /// <summary>
    /// What a crew reads in cut lists and steps, in the language chosen: items, and places such as "front end, left jamb", part
    /// by part. A part that nobody has put into the language stays as it is.
    /// </summary>
    /// <param name="text">The text as the results have it, in English.</param>
    public string Crew(string text) => CrewWords.Of(Language).Say(text);

    /// <summary>Chooses a language.</summary>
    /// <param name="code">Its code; English when there is no such language.</param>
    public void Choose(string? code)
    {
        Language = code is not null && Languages.Contains(code) ? code : "en";
        chosen = Language == "en" ? English : Read(Language);
        Changed?.Invoke();
    }

    /// <summary>The keys of a language, for those who check that none is missing.</summary>
    /// <param name="code">Its code.</param>
    public static ImmutableDictionary<string, string> Read(string code)
    {
        using Stream? file = typeof(Wording).Assembly.GetManifestResourceStream($"words.{code}.json");
        if (file is null) return ImmutableDictionary<string, string>.Empty;
        using JsonDocument words = JsonDocument.Parse(file, new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
        return words.RootElement.EnumerateObject().ToImmutableDictionary(word => word.Name, word => word.Value.GetString() ?? "");
    }

    private static string NameOf(string pattern) => pattern[(pattern.LastIndexOf('.') + 1)..].Replace("[]", "", StringComparison.Ordinal);

    private string? FieldName(string pattern) => Known("field." + pattern) ?? Known("field." + NameOf(pattern));

    private string? ChoiceName(string pattern, string choice) =>
        Known($"choice.{pattern}.{choice}") ?? Known($"choice.{NameOf(pattern)}.{choice}") ?? Known("choice." + choice);

    private string? Known(string key) => chosen.GetValueOrDefault(key) ?? English.GetValueOrDefault(key);

    private static string Spelled(string name)
    {
        StringBuilder words = new();
        foreach (char letter in name)
        {
            if (words.Length == 0) words.Append(char.ToUpperInvariant(letter));
            else if (char.IsUpper(letter) && !char.IsUpper(words[^1])) words.Append(' ').Append(char.ToLowerInvariant(letter));
            else words.Append(letter);
        }
        return words.ToString();
    }
}
