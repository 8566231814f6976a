using System.Collections.Immutable;
using System.ComponentModel;
using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>
/// The fields of one section in the order they are written. Reader, writer and schema all go by this one list, so that none
/// can know a field that another does not.
/// </summary>
/// <typeparam name="TSection">The section.</typeparam>
/// <param name="fields">Its fields.</param>
internal sealed class PlanFormat<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicProperties)] TSection>(params ImmutableArray<PlanField<TSection>> fields)
    where TSection : PlanSection, new()
{
    private readonly Lazy<Dictionary<string, string?>> sentences = new(() => typeof(TSection).GetProperties().ToDictionary(
        property => property.GetCustomAttribute<JsonPropertyNameAttribute>()?.Name ?? JsonNamingPolicy.CamelCase.ConvertName(property.Name),
        property => property.GetCustomAttribute<DescriptionAttribute>()?.Description));

    /// <summary>Checks that need more than one field of the section.</summary>
    public Action<PlanNode, PlanProblems>? Check { get; init; }

    /// <summary>Puts into the schema what that check asks for; null when it asks for nothing that a schema can say.</summary>
    public Action<JsonObject>? DescribeCheck { get; init; }

    /// <summary>Its fields in the order they are written.</summary>
    public ImmutableArray<PlanField<TSection>> Fields => fields;

    /// <summary>Reads the fields of a group.</summary>
    public TSection Read(PlanNode group, PlanProblems problems)
    {
        var section = new TSection();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var unknown = ImmutableArray.CreateBuilder<UnknownField>();
        foreach (var node in group.Children)
        {
            var name = node.Name ?? "";
            if (!seen.Add(name))
            {
                problems.Error(
                    PlanCodes.DuplicateField, node, $"The field stands twice in its group; this is the second, at {node.Place}.",
                    "one of the two");
            }
            else if (Find(name) is { } field)
            {
                section = field.Read(section, node, problems);
            }
            else if (problems.KeepsUnknown)
            {
                unknown.Add(new UnknownField(name, node.ToJson()));
            }
            else
            {
                problems.Error(
                    PlanCodes.UnknownField, node.Offset, node.Path, $"There is no field {SeenText.Shorten(name)} here.",
                    SeenText.Shorten(name), NearestWord.Accepted(name, [.. fields.Select(field => field.Name)]));
            }
        }

        foreach (var field in fields)
        {
            if (field.Required && !seen.Contains(field.Name))
                field.Miss(group, problems);
        }

        Check?.Invoke(group, problems);
        return unknown.Count == 0 ? section : section with { Unknown = unknown.ToImmutable() };
    }

    /// <summary>Writes a group with the fields that are given, then those that this version does not know.</summary>
    public void Write(TSection section, Utf8JsonWriter writer)
    {
        writer.WriteStartObject();
        foreach (var field in fields)
            field.Write(section, writer);
        foreach (var field in Unknown(section))
        {
            writer.WritePropertyName(field.Name);
            writer.WriteRawValue(field.Json);
        }

        writer.WriteEndObject();
    }

    /// <summary>
    /// Puts the fields into a schema, each with the sentence that its property's [Description] says, so that editors show it.
    /// </summary>
    public void Describe(JsonObject schema)
    {
        var properties = new JsonObject();
        foreach (var field in fields)
        {
            var property = new JsonObject();
            if (SentenceOf(field.Name) is { } sentence)
                property["description"] = sentence;
            field.Describe(property);
            properties[field.Name] = property;
        }

        schema["type"] = "object";
        schema["properties"] = properties;
        var required = fields.Where(field => field.Required).Select(field => (JsonNode?)JsonValue.Create(field.Name)).ToArray();
        if (required.Length > 0)
            schema["required"] = new JsonArray(required);
        schema["additionalProperties"] = false;
        DescribeCheck?.Invoke(schema);
    }

    /// <summary>What a field means, by the sentence that its property's [Description] says; null when there is no such field.</summary>
    /// <param name="path">From this group on, such as doors[0].swing.</param>
    public string? SentenceAt(string path)
    {
        string[] steps = path.Split('.', 2);
        string name = steps[0].Split('[')[0];
        return steps.Length == 1 ? SentenceOf(name) : Find(name)?.SentenceAt(steps[1]);
    }

    /// <summary>What such a group looks like in the file: its first field, and that there are more.</summary>
    public string Example(UnitSystem units) => $"{{ \"{fields[0].Name}\": {fields[0].Example(units)}{(fields.Length > 1 ? ", …" : "")} }}";

    /// <summary>True when no field is given.</summary>
    public bool IsEmpty(TSection section) => Unknown(section).IsEmpty && fields.All(field => field.IsAbsent(section));

    private static ImmutableArray<UnknownField> Unknown(TSection section) =>
        section.Unknown.IsDefault ? [] : section.Unknown;

    private string? SentenceOf(string field) => sentences.Value.GetValueOrDefault(field);

    private PlanField<TSection>? Find(string name)
    {
        foreach (var field in fields)
        {
            if (field.Name == name)
                return field;
        }

        return null;
    }
}
