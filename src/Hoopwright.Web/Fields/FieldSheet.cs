using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Plans;
using Hoopwright.Web.State;

namespace Hoopwright.Web.Fields;

/// <summary>
/// Every field of the plan, read from the schema that reader and writer of plans go by, so that the page can ask for
/// whatever a plan may hold and for nothing else.
/// </summary>
public sealed class FieldSheet
{
    // What results rest on without a field of its own is told at the field that does most about it.
    private static readonly FrozenDictionary<string, string> Kin = new Dictionary<string, string> { ["strength.filmFasteners"] = "cover.channelScrewSpacing" }.ToFrozenDictionary();

    private readonly FrozenSet<string> patterns;

    private FieldSheet(ImmutableArray<Field> fields)
    {
        Fields = fields;
        patterns = fields.Where(field => Stage.All.Any(stage => stage.Sections.Contains(field.Name))).SelectMany(Patterns).ToFrozenSet(StringComparer.Ordinal);
    }

    /// <summary>The fields and groups of the plan itself, in the order a builder meets them.</summary>
    public ImmutableArray<Field> Fields { get; }

    /// <summary>Reads the schema.</summary>
    public static FieldSheet Read()
    {
        using JsonDocument schema = JsonDocument.Parse(PlanSchema.Write());
        return new FieldSheet(Children(schema.RootElement, ""));
    }

    /// <summary>A field or group of the plan by its name.</summary>
    public Field this[string name] => Fields.First(field => field.Name == name);

    /// <summary>
    /// Where something found at a path stands on the page: the field itself, or the nearest group that the page asks for
    /// when the plan has no such field; empty when there is none.
    /// </summary>
    /// <param name="path">A path of the plan.</param>
    /// <param name="plan">The plan, so that no item is named that it does not have.</param>
    public string PlaceOf(string path, JsonNode plan)
    {
        path = Kin.GetValueOrDefault(path, path);
        while (path.Length > 0)
        {
            if (patterns.Contains(PlanPath.Pattern(path)) && (!path.EndsWith(']') || PlanPath.At(plan, path) is not null)) return path;
            path = path[..Math.Max(0, path.LastIndexOfAny(['.', '[']))];
        }
        return path;
    }

    private static IEnumerable<string> Patterns(Field field) => field.Kind is FieldKind.Groups or FieldKind.Values
        ? [field.Path, field.Path + "[]", .. field.Fields.SelectMany(Patterns)]
        : [field.Path, .. field.Fields.SelectMany(Patterns)];

    private static ImmutableArray<Field> Children(JsonElement group, string path)
    {
        HashSet<string> required = group.TryGetProperty("required", out JsonElement names) ? [.. names.EnumerateArray().Select(name => name.GetString() ?? "")] : [];
        return group.TryGetProperty("properties", out JsonElement fields)
            ? [.. fields.EnumerateObject().Select(field => Of(field.Name, path.Length == 0 ? field.Name : path + "." + field.Name, field.Value, required.Contains(field.Name)))]
            : [];
    }

    private static Field Of(string name, string path, JsonElement schema, bool required)
    {
        string type = Text(schema, "type");
        bool isList = type == "array" && schema.TryGetProperty("items", out _);
        JsonElement items = isList ? schema.GetProperty("items") : default;
        bool ofGroups = isList && Text(items, "type") == "object";
        JsonElement told = isList && !ofGroups ? items : schema;
        ImmutableArray<string> examples = told.TryGetProperty("examples", out JsonElement given) ? [.. given.EnumerateArray().Select(each => each.GetString() ?? "")] : [];
        return new Field
        {
            Name = name,
            Path = path,
            Kind = type switch
            {
                "object" => FieldKind.Group,
                "array" => ofGroups ? FieldKind.Groups : FieldKind.Values,
                "boolean" => FieldKind.YesNo,
                "integer" => FieldKind.Count,
                _ when schema.TryGetProperty("enum", out _) => FieldKind.Choice,
                _ when !examples.IsEmpty => FieldKind.Quantity,
                _ => FieldKind.Words,
            },
            Help = Text(schema, "description"),
            Choices = schema.TryGetProperty("enum", out JsonElement words) ? [.. words.EnumerateArray().Select(word => word.ToString())] : [],
            Example = examples.FirstOrDefault() ?? "",
            ExampleMetric = examples.LastOrDefault() ?? "",
            Required = required,
            Fields = type == "object" ? Children(schema, path) : ofGroups ? Children(items, path + "[]") : [],
        };
    }

    private static string Text(JsonElement schema, string name) => schema.TryGetProperty(name, out JsonElement value) && value.ValueKind == JsonValueKind.String ? value.GetString() ?? "" : "";
}
