using System.Text;
using System.Text.Json;
using Hoopwright.Diagnostics;
using Hoopwright.SiteBooks;

namespace Hoopwright.Web.Engine;

/// <content>Copies of a plan: put together, decided, told apart.</content>
public static partial class EngineWork
{
    /// <summary>Puts two copies of a plan together.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="other">The other copy.</param>
    /// <returns>JSON: document (empty when they cannot be put together), already, ofFirst, ofSecond (entries), faults (texts).</returns>
    public static string Merge(string document, string other)
    {
        MergedPlan merged = PlanMerge.Merge(Encoding.UTF8.GetBytes(document), Encoding.UTF8.GetBytes(other));
        return Json(json =>
        {
            json.WriteString("document", merged.Document.Span);
            json.WriteNumber("already", merged.EntriesAlready);
            json.WriteNumber("ofFirst", merged.EntriesOfFirst);
            json.WriteNumber("ofSecond", merged.EntriesOfSecond);
            Texts(json, "faults", merged.FirstDiagnostics.Concat(merged.SecondDiagnostics).Where(each => each.Severity == Severity.Error).Select(each => each.Message));
        });
    }

    /// <summary>The fields of which copies of the plan say different things.</summary>
    /// <param name="document">The plan as text.</param>
    /// <returns>JSON: fields [path, said [json, shown, by]], the value that the plan goes by first.</returns>
    public static string Undecided(string document) => Json(json => List(json, "fields", PlanMerge.Undecided(Encoding.UTF8.GetBytes(document)), field =>
    {
        json.WriteString("path", field.Path);
        List(json, "said", field.Said, said =>
        {
            json.WriteString("json", said.Json);
            json.WriteString("shown", said.Json is { } value ? Shown(value) : "");
            json.WriteString("by", string.Join(", ", ((string?[])[said.By, said.Device]).OfType<string>()));
        });
    }));

    /// <summary>The plan with one value for a field, whatever its copies said.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="path">The field.</param>
    /// <param name="value">Its value as JSON; empty takes it out.</param>
    /// <param name="id">An identity for the decision.</param>
    /// <param name="by">Who decides; empty where nobody is named.</param>
    /// <param name="device">On what; empty where it has no name.</param>
    /// <returns>The plan as text; empty when it cannot be read.</returns>
    public static string Decide(string document, string path, string value, string id, string by, string device) =>
        TextOf(PlanEdits.Decide(Encoding.UTF8.GetBytes(document), path, value.Length == 0 ? null : value, Author(id, by, device)));

    /// <summary>The plan with an edit for every field that differs from an earlier state of it.</summary>
    /// <param name="before">The plan as it was.</param>
    /// <param name="document">The plan as it is.</param>
    /// <param name="id">An identity for the edits.</param>
    /// <param name="by">Who made them; empty where nobody is named.</param>
    /// <param name="device">On what; empty where it has no name.</param>
    /// <returns>The plan as text; empty when one of the two cannot be read.</returns>
    public static string Record(string before, string document, string id, string by, string device) =>
        TextOf(PlanEdits.Record(Encoding.UTF8.GetBytes(before), Encoding.UTF8.GetBytes(document), Author(id, by, device)));

    private static EditAuthor Author(string id, string by, string device) => new(id, by.Length == 0 ? null : by, device.Length == 0 ? null : device);

    private static string TextOf(byte[]? document) => document is null ? "" : Encoding.UTF8.GetString(document);

    // A text as it reads, anything else as it stands in the file.
    private static string Shown(string json)
    {
        using JsonDocument read = JsonDocument.Parse(json);
        return read.RootElement.ValueKind == JsonValueKind.String ? read.RootElement.GetString()! : json;
    }
}
