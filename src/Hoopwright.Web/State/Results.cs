using System.Globalization;
using System.Text.Json;
using Hoopwright.Packets;

namespace Hoopwright.Web.State;

/// <summary>Looks values up in results, as parts of the page show them.</summary>
public static class Results
{
    /// <summary>The value at a path; null when it is not there or is null itself.</summary>
    /// <param name="results">Results, or a part of them.</param>
    /// <param name="path">Dotted names and [index], such as orders.total.</param>
    public static JsonElement? Find(JsonElement? results, string path) =>
        results is { } root && ResultPath.Find(root, path) is { ValueKind: not JsonValueKind.Null } found ? found : null;

    /// <summary>The value at a path as text; empty when it is not there.</summary>
    /// <param name="results">Results, or a part of them.</param>
    /// <param name="path">The path.</param>
    public static string Word(JsonElement? results, string path) => Find(results, path)?.ToString() ?? "";

    /// <summary>The money at a path, to the cent; empty when it is not there.</summary>
    /// <param name="results">Results, or a part of them.</param>
    /// <param name="path">The path.</param>
    public static string Money(JsonElement? results, string path) => Cents(Find(results, path));

    /// <summary>A sum of money to the cent; empty when it is none.</summary>
    /// <param name="amount">The sum.</param>
    public static string Cents(JsonElement? amount) => amount is { ValueKind: JsonValueKind.Number } sum ? sum.GetDecimal().ToString("0.00", CultureInfo.InvariantCulture) : "";

    /// <summary>The items of a list; none when it is not there.</summary>
    /// <param name="list">The list.</param>
    public static JsonElement[] Items(JsonElement? list) => list is { ValueKind: JsonValueKind.Array } items ? [.. items.EnumerateArray()] : [];
}
