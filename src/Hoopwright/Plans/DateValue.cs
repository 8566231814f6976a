using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A day of the calendar, as 2026-04-18.</summary>
internal sealed class DateValue : PlanValue<DateOnly?>
{
    private const string Form = "yyyy-MM-dd", Like = "2026-04-18";

    public override bool IsAbsent(DateOnly? value) => value is null;

    public override bool Read(PlanNode node, PlanProblems problems, out DateOnly? value)
    {
        value = null;
        if (node.Kind != PlanNodeKind.Text)
        {
            WrongKind(node, problems, "a day in quotes", $"\"{Like}\"");
            return false;
        }
        if (DateOnly.TryParseExact(node.Text.Trim(), Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) && day.Year is >= 1900 and <= 2199)
        {
            value = day;
            return true;
        }
        problems.Error(PlanCodes.BadDate, node, $"{node.Seen} is no day of the calendar; it must be year, month and day.", $"\"{Like}\"");
        return false;
    }

    public override void Write(DateOnly? value, Utf8JsonWriter writer) => writer.WriteStringValue(value?.ToString(Form, CultureInfo.InvariantCulture));

    public override string Example(UnitSystem units) => $"\"{Like}\"";

    public override void Describe(JsonObject schema)
    {
        schema["type"] = "string";
        schema["pattern"] = @"^\s*(?:19|20|21)\d\d-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])\s*$";
        schema["examples"] = new JsonArray(Like);
    }
}
