using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Hoopwright.Web.Words;

namespace Hoopwright.Web.Tests;

public sealed partial class WordingTests
{
    [Fact]
    public void Every_text_in_Spanish_has_one_in_English_with_the_same_places()
    {
        ImmutableDictionary<string, string> english = Wording.Read("en"), spanish = Wording.Read("es");
        Assert.NotEmpty(spanish);
        foreach ((string key, string text) in spanish)
        {
            Assert.True(english.ContainsKey(key), key);
            Assert.Equal(Places(english[key]), Places(text));
        }
    }

    [Fact]
    public void A_field_without_a_name_of_its_own_is_spelled_out() => Assert.Equal("Snow given for", new Wording().Field("loads.snowGivenFor"));

    [Fact]
    public void What_Spanish_lacks_is_said_in_English()
    {
        Wording words = new();
        words.Choose("es");
        Assert.Equal("Deshacer", words["undo"]);
        Assert.Equal(Wording.Read("en")["packet.text"], words["packet.text"]);
    }

    private static string Places(string text) => string.Join(",", Place().Matches(text).Select(match => match.Value).Order(StringComparer.Ordinal));

    [GeneratedRegex(@"\{\d\}")]
    private static partial Regex Place();
}
