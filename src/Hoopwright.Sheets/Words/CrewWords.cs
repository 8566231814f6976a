using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Hoopwright.Diagnostics;

namespace Hoopwright.Sheets.Words;

/// <summary>
/// What a crew reads on set-out, film and cut sheets, in its language. The texts of the results are English; each is looked up
/// with a place for every number in it, so that "bow 3" is "bow {0}". What nobody has put into the language stays English.
/// </summary>
public sealed partial class CrewWords
{
    private readonly ImmutableDictionary<string, string> known;

    private CrewWords(string language, ImmutableDictionary<string, string> known) => (Language, this.known) = (language, known);

    /// <summary>The languages there are, by their codes.</summary>
    public static ImmutableArray<string> Languages { get; } = ["en", "es"];

    /// <summary>English, in which texts stay as they are.</summary>
    public static CrewWords English { get; } = new("en", ImmutableDictionary<string, string>.Empty);

    /// <summary>The code of the language.</summary>
    public string Language { get; }

    private static CrewWords Spanish { get; } = new("es", Read("es"));

    /// <summary>The words of a language; English for a code that is none of <see cref="Languages"/>.</summary>
    /// <param name="language">Its code.</param>
    public static CrewWords Of(string language) => language == "es" ? Spanish : English;

    /// <summary>A text of the results in the language: whole, or part by part between its commas.</summary>
    /// <param name="text">The text in English.</param>
    public string Say(string text) => Language == "en" || text.Length == 0 ? text : Whole(text) ?? string.Join(", ", text.Split(", ").Select(part => Whole(part) ?? part));

    /// <summary>A text with its places {0}, {1} filled.</summary>
    /// <param name="pattern">The text in English with its places.</param>
    /// <param name="values">What goes into the places.</param>
    public string Fill(string pattern, params ReadOnlySpan<string> values) => string.Format(CultureInfo.InvariantCulture, known.GetValueOrDefault(pattern, pattern), values.ToArray());

    /// <summary>A sentence with numbers and names in its places.</summary>
    /// <param name="phrase">The sentence.</param>
    public string Say(Phrase phrase)
    {
        ArgumentNullException.ThrowIfNull(phrase);
        return Fill(phrase.Pattern, [.. phrase.Values.Select(Say)]);
    }

    /// <summary>Sentences one after the other.</summary>
    /// <param name="phrases">The sentences.</param>
    public string Say(ImmutableArray<Phrase> phrases) => string.Join(" ", phrases.Select(Say));

    /// <summary>The short name of a month, 1 to 12.</summary>
    public string Month(int month) => Say(CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(month));

    /// <summary>True when a text, or every part of it between its commas, is known in the language.</summary>
    /// <param name="text">The text in English, or a pattern with its places.</param>
    public bool Knows(string text) => Language == "en" || text.Length == 0 || known.ContainsKey(text) || Whole(text) is not null || text.Split(", ").All(part => Whole(part) is not null);

    private string? Whole(string text)
    {
        List<object> numbers = [];
        string pattern = Numbers().Replace(text, match =>
        {
            numbers.Add(match.Value);
            return string.Create(CultureInfo.InvariantCulture, $"{{{numbers.Count - 1}}}");
        });
        return known.TryGetValue(pattern, out string? told) ? string.Format(CultureInfo.InvariantCulture, told, [.. numbers]) : null;
    }

    private static ImmutableDictionary<string, string> Read(string language)
    {
        using Stream file = typeof(CrewWords).Assembly.GetManifestResourceStream($"crew.{language}.json") ?? throw new InvalidOperationException($"There are no words of {language}.");
        using JsonDocument words = JsonDocument.Parse(file);
        return words.RootElement.EnumerateObject().ToImmutableDictionary(word => word.Name, word => word.Value.GetString() ?? "", StringComparer.Ordinal);
    }

    [GeneratedRegex("""\d+(?:\.\d+)?(?:['"/\-\d ]*[\d'"])?(?: mm)?""")]
    private static partial Regex Numbers();
}
