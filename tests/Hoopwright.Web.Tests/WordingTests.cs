using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Hoopwright.Web.Fields;
using Hoopwright.Web.State;
using Hoopwright.Web.Words;

namespace Hoopwright.Web.Tests;

public sealed partial class WordingTests
{
    [Fact]
    public void Every_text_is_there_in_both_languages_with_the_same_places()
    {
        ImmutableDictionary<string, string> english = Wording.Read("en"), spanish = Wording.Read("es");
        // What fields mean and what is found is said in English by the engine.
        Assert.Equal(english.Keys.Order(StringComparer.Ordinal), spanish.Keys.Where(key => !key.StartsWith("help.", StringComparison.Ordinal) && !key.StartsWith("finding.", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        foreach (string key in english.Keys) Assert.True(Places(english[key]) == Places(spanish[key]), key);
    }

    [Fact]
    public void Every_field_of_a_plan_has_a_name_and_every_choice_a_word_in_both_languages()
    {
        Wording words = new();
        words.Choose("es");
        List<string> missing = [];
        foreach (Field field in All(FieldSheet.Read().Fields).Where(field => field.Path != "hoopwright"))
        {
            if (!words.HasField(field.Path)) missing.Add("field " + field.Path);
            missing.AddRange(field.Choices.Where(choice => choice.Any(char.IsAsciiLetter) && !words.HasChoice(field.Path, choice)).Select(choice => $"choice {field.Path} {choice}"));
        }
        Assert.True(missing.Count == 0, string.Join('\n', missing));

        static IEnumerable<Field> All(IEnumerable<Field> fields) => fields.SelectMany(field => All(field.Fields).Prepend(field));
    }

    [Fact]
    public void What_the_engine_says_of_fields_and_findings_is_put_into_a_language_where_it_has_words_for_it()
    {
        Wording words = new();
        Field book = FieldSheet.Read()["siteBook"], span = FieldSheet.Read()["frame"].Fields.First(field => field.Name == "span");
        Finding twice = new("error", "plan.site-book.duplicate-id", "siteBook[1].id", "Two entries.", "2", null), unknown = twice with { Code = "none.such" };
        Assert.Equal((book.Help, "Two entries."), (words.Help(book), words.Found(twice)));
        words.Choose("es");
        Assert.NotEqual(book.Help, words.Help(book));
        Assert.All(book.Fields, field => Assert.NotEqual(field.Help, words.Help(field)));
        Assert.Equal("Dos anotaciones del libro de obra tienen la misma marca.", words.Found(twice));
        Assert.Equal((span.Help, "Two entries."), (words.Help(span), words.Found(unknown)));
    }

    [Fact]
    public void Numbers_keep_their_places_in_another_language()
    {
        Wording words = new();
        words.Choose("es");
        Assert.Equal("frente, a 4' 4-7/8\" del hilo izquierdo", words.Crew("front end, 4' 4-7/8\" from the left string"));
        Assert.Equal("esquina de atrás a la izquierda, del arco 3 bajando al arco 1", words.Crew("back left corner, bow 3 down to bow 1"));
    }

    [Fact]
    public void A_field_without_a_name_of_its_own_is_spelled_out() => Assert.Equal("Some new field", new Wording().Field("loads.someNewField"));

    private static string Places(string text) => string.Join(",", Place().Matches(text).Select(match => match.Value).Order(StringComparer.Ordinal));

    [GeneratedRegex(@"\{\d\}")]
    private static partial Regex Place();
}
