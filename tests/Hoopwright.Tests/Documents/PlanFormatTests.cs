using System.Collections.Immutable;
using System.Reflection;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using System.Text.RegularExpressions;
using Hoopwright.Plans;
using Json.Schema;

namespace Hoopwright.Tests.Documents;

/// <summary>Records, reader, writer and schema know the same fields, and what is shown as accepted is accepted.</summary>
public sealed partial class PlanFormatTests
{
    // Which text of a quantity a sample takes: the examples, then the ends of the range, each in feet and in metres.
    private enum Taken
    {
        Example,
        ExampleMetric,
        Least,
        Most,
        LeastMetric,
        MostMetric,
    }

    private static readonly JsonObject Schema = JsonNode.Parse(PlanSchema.Write())!.AsObject();

    public static TheoryData<string> Takings { get; } = [.. Enum.GetNames<Taken>()];

    [Fact]
    public void The_schema_has_exactly_the_properties_of_the_records() =>
        Assert.Equal(Properties(typeof(Plan), "").Order(StringComparer.Ordinal), Properties(Schema, "").Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Takings))]
    public void A_plan_with_every_field_given_as_the_schema_shows_it_reads_and_comes_back_whole(string taking)
    {
        var taken = Enum.Parse<Taken>(taking);
        JsonNode sample = Sample(Schema, taken);
        sample["units"] = taken is Taken.ExampleMetric or Taken.LeastMetric or Taken.MostMetric ? "metric" : "us";
        byte[] file = Encoding.UTF8.GetBytes(sample.ToJsonString());

        PlanReading reading = PlanReader.Read(file);
        Assert.Empty(reading.Diagnostics);
        byte[] written = PlanWriter.Write(reading.Plan);
        Assert.True(JsonNode.DeepEquals(sample, JsonNode.Parse(written)), "Something was lost between reading and writing.");
        Assert.Equal(written, PlanWriter.Write(PlanReader.Read(written).Plan));

        using JsonDocument document = JsonDocument.Parse(file);
        Assert.True(JsonSchema.FromText(Schema.ToJsonString()).Evaluate(document.RootElement).IsValid);
    }

    [Fact]
    public void The_schema_asks_for_a_peak_or_for_a_table_of_heights_as_the_reader_does()
    {
        const string start = "{ \"hoopwright\": \"1.0\", \"frame\": { \"span\": \"20 ft\", \"length\": \"48 ft\", \"bow\": { \"shape\": ";
        const string offsets = "\"offsets\": [ { \"across\": \"0 ft\", \"height\": \"4 ft\" } ]";
        var schema = JsonSchema.FromText(Schema.ToJsonString());
        foreach ((string bow, bool accepted) in new[]
        {
            ("\"round\", \"peakHeight\": \"11 ft\"", true), ("\"round\"", false), ("\"round\", " + offsets, false),
            ("\"offsets\", " + offsets, true), ("\"offsets\"", false), ("\"offsets\", \"peakHeight\": \"11 ft\"", false),
        })
        {
            string text = start + bow + " } } }";
            using JsonDocument document = JsonDocument.Parse(text);
            Assert.Equal(accepted, schema.Evaluate(document.RootElement).IsValid);
            Assert.Equal(accepted, PlanReader.Read(Encoding.UTF8.GetBytes(text)).IsUsable);
        }
    }

    private static IEnumerable<string> Properties(Type record, string path)
    {
        foreach (PropertyInfo property in record.GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            if (property.GetCustomAttribute<JsonIgnoreAttribute>() is not null) continue;
            string name = property.GetCustomAttribute<JsonPropertyNameAttribute>()?.Name ?? JsonNamingPolicy.CamelCase.ConvertName(property.Name);
            yield return $"{path}.{name}";
            Type type = property.PropertyType;
            if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>)) type = type.GetGenericArguments()[0];
            if (!type.IsSubclassOf(typeof(PlanSection))) continue;
            foreach (string inner in Properties(type, $"{path}.{name}")) yield return inner;
        }
    }

    private static IEnumerable<string> Properties(JsonNode schema, string path)
    {
        foreach ((string name, JsonNode? property) in schema["properties"] as JsonObject ?? [])
        {
            yield return $"{path}.{name}";
            foreach (string inner in Properties(property!["items"] ?? property, $"{path}.{name}")) yield return inner;
        }
    }

    private static JsonNode Sample(JsonNode schema, Taken taken)
    {
        if (schema["const"] is { } only) return only.DeepClone();
        if (schema["enum"] is JsonArray words) return words[^1]!.DeepClone();
        return (string?)schema["type"] switch
        {
            "object" => new JsonObject(schema["properties"]!.AsObject().Select(property =>
                KeyValuePair.Create<string, JsonNode?>(property.Key, Sample(property.Value!, taken)))),
            "array" => new JsonArray(Sample(schema["items"]!, taken)),
            "integer" => schema["minimum"]!.DeepClone(),
            "boolean" => true,
            "string" => Text(schema, taken),
            _ => throw new InvalidOperationException($"The schema has a type that no sample is made for: {schema["type"]}"),
        };
    }

    private static string Text(JsonNode schema, Taken taken)
    {
        if (schema["examples"] is not JsonArray examples) return "some words";
        if ((string?)schema["$comment"] is not { } comment) return (string)examples[0]!;
        Match bounds = Bounds().Match(comment);
        Assert.True(bounds.Success, comment);
        string Bound(string group, string usual) => bounds.Groups[group] is { Success: true } bound ? bound.Value : bounds.Groups[usual].Value;
        return taken switch
        {
            Taken.Example => (string)examples[0]!,
            Taken.ExampleMetric => (string)examples[^1]!,
            Taken.Least => bounds.Groups["least"].Value,
            Taken.Most => bounds.Groups["most"].Value,
            Taken.LeastMetric => Bound("leastMetric", "least"),
            Taken.MostMetric => Bound("mostMetric", "most"),
        };
    }

    [GeneratedRegex(@"^Accepted: (?<least>.+?) to (?<most>.+?)(?: \((?<leastMetric>.+?) to (?<mostMetric>.+?)\))?\.$", RegexOptions.CultureInvariant)]
    private static partial Regex Bounds();
}
