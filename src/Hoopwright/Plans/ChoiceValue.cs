using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>One of a few words.</summary>
/// <typeparam name="TEnum">What the words stand for.</typeparam>
internal sealed class ChoiceValue<TEnum> : PlanValue<TEnum?>
    where TEnum : struct, Enum
{
    private readonly ImmutableArray<(TEnum Value, string Word)> _choices = PlanChoices.Of<TEnum>();

    private ImmutableArray<string> Words => [.. _choices.Select(choice => choice.Word)];

    public override bool IsAbsent(TEnum? value) => value is null;

    public override bool Read(PlanNode node, PlanProblems problems, out TEnum? value)
    {
        value = null;
        if (node.Kind != PlanNodeKind.Text)
        {
            WrongKind(node, problems, "one word in quotes", NearestWord.Accepted("", Words));
            return false;
        }

        foreach (var choice in _choices)
        {
            if (choice.Word == node.Text)
            {
                value = choice.Value;
                return true;
            }
        }

        problems.Error(PlanCodes.UnknownWord, node, $"{node.Seen} is none of the choices.", NearestWord.Accepted(node.Text, Words));
        return false;
    }

    public override void Write(TEnum? value, Utf8JsonWriter writer) =>
        writer.WriteStringValue(_choices.First(choice => choice.Value.Equals(value)).Word);

    public override string Example(UnitSystem units) => $"\"{_choices[0].Word}\"";

    public override void Describe(JsonObject schema)
    {
        schema["type"] = "string";
        schema["enum"] = new JsonArray([.. Words.Select(word => (JsonNode?)JsonValue.Create(word))]);
    }
}
