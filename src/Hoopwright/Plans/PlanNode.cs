using System.Globalization;
using System.Text;
using System.Text.Json;
using Hoopwright.Diagnostics;

namespace Hoopwright.Plans;

/// <summary>One value of a plan document with its place, so that every diagnostic can say where.</summary>
/// <param name="kind">What it is.</param>
/// <param name="parent">The group or list it stands in; null for the whole document.</param>
/// <param name="name">Its field's name in a group, null otherwise.</param>
/// <param name="index">Its number in a list, from 0.</param>
/// <param name="offset">Where it starts, in bytes.</param>
/// <param name="place">Where it starts, for people.</param>
/// <param name="text">The text itself, or the number or word as it stands in the file; empty for groups and lists.</param>
internal sealed class PlanNode(
    PlanNodeKind kind, PlanNode? parent, string? name, int index, int offset, TextPlace place, string text)
{
    private List<PlanNode>? _children;

    /// <summary>What it is.</summary>
    public PlanNodeKind Kind { get; } = kind;

    /// <summary>Its field's name in a group; null otherwise.</summary>
    public string? Name { get; } = name;

    /// <summary>Where it starts, in bytes; for a field, where its name starts.</summary>
    public int Offset { get; } = offset;

    /// <summary>Where it starts, as an editor counts.</summary>
    public TextPlace Place { get; } = place;

    /// <summary>The text itself, or the number or word as it stands in the file; empty for groups and lists.</summary>
    public string Text { get; } = text;

    /// <summary>The fields of a group in the order of the file, or the values of a list.</summary>
    public IReadOnlyList<PlanNode> Children => _children ?? (IReadOnlyList<PlanNode>)[];

    /// <summary>Dotted names and [index] from the top of the document; empty for the document itself.</summary>
    public string Path => parent switch
    {
        null => "",
        { Kind: PlanNodeKind.List } => string.Create(CultureInfo.InvariantCulture, $"{parent.Path}[{index}]"),
        _ => parent.PathOf(Name ?? ""),
    };

    /// <summary>The value as a person would point at it, shortened when long.</summary>
    public string Seen => Kind switch
    {
        PlanNodeKind.Group => "a group of fields in { }",
        PlanNodeKind.List when Children.Count > 0 && Children.All(child => child.Kind is PlanNodeKind.Text or PlanNodeKind.Number or PlanNodeKind.YesNo) =>
            $"a list in [ ]: {SeenText.Shorten(string.Join(", ", Children.Select(child => child.Text)))}",
        PlanNodeKind.List => "a list in [ ]",
        PlanNodeKind.Text => SeenText.Shorten(Text),
        PlanNodeKind.Number => SeenText.Shorten(Text),
        PlanNodeKind.YesNo => Text,
        PlanNodeKind.Null => "null",
    };

    /// <summary>The path of a field of this group, present or not.</summary>
    public string PathOf(string field)
    {
        var path = Path;
        var name = SeenText.Shorten(field);
        return path.Length == 0 ? name : $"{path}.{name}";
    }

    /// <summary>The value at a path, or the nearest group or list around it that is there.</summary>
    /// <param name="path">Dotted names and [index], from this value on.</param>
    /// <param name="isThere">True when it is the value itself.</param>
    public PlanNode Nearest(string path, out bool isThere)
    {
        var node = this;
        isThere = true;
        foreach (var step in path.Replace("[", ".[", StringComparison.Ordinal).Split('.', StringSplitOptions.RemoveEmptyEntries))
        {
            var next = node.Kind == PlanNodeKind.List
                ? int.TryParse(step.Trim('[', ']'), CultureInfo.InvariantCulture, out var at)
                    ? node.Children.ElementAtOrDefault(at)
                    : null
                : node.Children.FirstOrDefault(child => child.Name == step);
            if (next is null)
            {
                isThere = false;
                break;
            }

            node = next;
        }

        return node;
    }

    /// <summary>Puts a value into this group or list.</summary>
    public void Add(PlanNode child) => (_children ??= []).Add(child);

    /// <summary>The value as compact JSON: the same tokens, without comments and white space.</summary>
    public string ToJson()
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, PlanWriter.Compact))
        {
            WriteTo(writer);
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    private void WriteTo(Utf8JsonWriter writer)
    {
        switch (Kind)
        {
            case PlanNodeKind.Group:
                writer.WriteStartObject();
                foreach (var field in Children)
                {
                    writer.WritePropertyName(field.Name ?? "");
                    field.WriteTo(writer);
                }

                writer.WriteEndObject();
                break;
            case PlanNodeKind.List:
                writer.WriteStartArray();
                foreach (var item in Children)
                    item.WriteTo(writer);
                writer.WriteEndArray();
                break;
            case PlanNodeKind.Text:
                writer.WriteStringValue(Text);
                break;
            case PlanNodeKind.Number:
                writer.WriteRawValue(Text, skipInputValidation: true);
                break;
            case PlanNodeKind.YesNo:
                writer.WriteBooleanValue(Text == "true");
                break;
            case PlanNodeKind.Null:
                writer.WriteNullValue();
                break;
        }
    }
}
