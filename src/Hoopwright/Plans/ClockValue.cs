using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A time of the day by the clock on the wall, as 7:30.</summary>
internal sealed class ClockValue : PlanValue<TimeOnly?>
{
    private const string Like = "7:30";

    public override bool IsAbsent(TimeOnly? value) => value is null;

    public override bool Read(PlanNode node, PlanProblems problems, out TimeOnly? value)
    {
        value = null;
        if (node.Kind != PlanNodeKind.Text)
        {
            WrongKind(node, problems, "a time of the day in quotes", $"\"{Like}\"");
            return false;
        }
        if (TimeOnly.TryParseExact(node.Text.Trim(), "H:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out TimeOnly time))
        {
            value = time;
            return true;
        }
        problems.Error(PlanCodes.BadClock, node, $"{node.Seen} is no time of the day; it must be hours from 0 to 23 and minutes.", $"\"{Like}\", or \"16:00\" for four in the afternoon");
        return false;
    }

    public override void Write(TimeOnly? value, Utf8JsonWriter writer) => writer.WriteStringValue(value?.ToString("H:mm", CultureInfo.InvariantCulture));

    public override string Example(UnitSystem units) => $"\"{Like}\"";

    public override void Describe(JsonObject schema)
    {
        schema["type"] = "string";
        schema["pattern"] = @"^\s*(?:[01]?\d|2[0-3]):[0-5]\d\s*$";
        schema["examples"] = new JsonArray(Like);
    }
}
