using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>Free words, or one of a few words where there are such.</summary>
/// <param name="example">A text to show to someone who left it out.</param>
internal sealed class TextValue(string example) : PlanValue<string?>
{
    /// <summary>The only words accepted; empty for any.</summary>
    public ImmutableArray<string> Words { get; init; } = [];

    /// <summary>True when an empty text means nothing.</summary>
    public bool MustSaySomething { get; init; }

    public override bool IsAbsent(string? value) => value is null;

    public override bool Read(PlanNode node, PlanProblems problems, out string? value)
    {
        value = null;
        if (node.Kind != PlanNodeKind.Text)
        {
            WrongKind(node, problems, "a text in quotes", $"\"{example}\"");
            return false;
        }

        if (MustSaySomething && string.IsNullOrWhiteSpace(node.Text))
        {
            problems.Error(PlanCodes.EmptyText, node, "The text is empty; it must say something.", $"\"{example}\"");
            return false;
        }

        if (!Words.IsEmpty && !Words.Contains(node.Text))
        {
            problems.Error(PlanCodes.UnknownWord, node, $"{node.Seen} is none of the choices.", NearestWord.Accepted(node.Text, Words));
            return false;
        }

        value = node.Text;
        return true;
    }

    public override void Write(string? value, Utf8JsonWriter writer) => writer.WriteStringValue(value);

    public override string Example(UnitSystem units) => $"\"{example}\"";

    public override void Describe(JsonObject schema)
    {
        schema["type"] = "string";
        if (!Words.IsEmpty)
            schema["enum"] = new JsonArray([.. Words.Select(word => (JsonNode?)JsonValue.Create(word))]);
        if (MustSaySomething)
            schema["pattern"] = "\\S";
    }
}
