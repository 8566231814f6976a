using System.Collections.Immutable;
using System.Text.Json;
using System.Text.RegularExpressions;
using Hoopwright.Cutting;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Testing;
using Hoopwright.Web.Words;

namespace Hoopwright.Web.Tests;

public sealed partial class WordingTests
{
    [Fact]
    public void Every_text_in_Spanish_has_one_in_English_with_the_same_places()
    {
        ImmutableDictionary<string, string> english = Wording.Read("en"), spanish = Wording.Read("es");
        Assert.NotEmpty(spanish);
        foreach ((string key, string text) in spanish.Where(word => !word.Key.StartsWith("crew.", StringComparison.Ordinal)))
        {
            Assert.True(english.ContainsKey(key), key);
            Assert.Equal(Places(english[key]), Places(text));
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_text_that_a_crew_reads_in_the_cut_lists_is_known_in_Spanish(string example)
    {
        Wording words = new();
        words.Choose("es");
        PlannedTunnel planned = TunnelWorks.Plan(PlanReader.Read(SamplePlans.ExampleBytes(example)), effort: CutEffort.Least, depth: WorkDepth.Orders);
        using JsonDocument results = JsonDocument.Parse(ResultsJson.Write(planned));
        JsonElement[] sheets = [.. results.RootElement.GetProperty("cuts").EnumerateArray()];
        IEnumerable<string> read =
        [
            .. sheets.Select(sheet => sheet.GetProperty("item").GetString()!),
            .. results.RootElement.GetProperty("takeoff").EnumerateArray().Select(line => line.GetProperty("item").GetString()!),
            .. sheets.SelectMany(sheet => sheet.GetProperty("bars").EnumerateArray()).SelectMany(bar => bar.GetProperty("pieces").EnumerateArray()).Select(piece => piece.GetProperty("place").GetString()!),
        ];
        Assert.DoesNotContain(read.Distinct(), text => !words.KnowsCrew(text));
    }

    [Fact]
    public void Numbers_keep_their_places_in_another_language()
    {
        Wording words = new();
        words.Choose("es");
        Assert.Equal("frente, a 4' 4-7/8\" del hilo izquierdo", words.Crew("front end, 4' 4-7/8\" from the left string"));
        Assert.Equal("esquina de atrás a la izquierda, del arco 3 bajando al arco 1", words.Crew("back left corner, bow 3 down to bow 1"));
    }

    public static TheoryData<string> Examples() => [.. SamplePlans.GoodExamples];

    [Fact]
    public void A_field_without_a_name_of_its_own_is_spelled_out() => Assert.Equal("Some new field", new Wording().Field("loads.someNewField"));

    [Fact]
    public void What_Spanish_lacks_is_said_in_English()
    {
        Wording words = new();
        words.Choose("es");
        Assert.Equal("Deshacer", words["undo"]);
        Assert.Equal(Wording.Read("en")["field.hangersPerLeg"], words["field.hangersPerLeg"]);
    }

    private static string Places(string text) => string.Join(",", Place().Matches(text).Select(match => match.Value).Order(StringComparer.Ordinal));

    [GeneratedRegex(@"\{\d\}")]
    private static partial Regex Place();
}
