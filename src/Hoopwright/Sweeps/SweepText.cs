using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Strength;

namespace Hoopwright.Sweeps;

/// <summary>Writes ranked designs: as JSON, as CSV, and as rows of texts for a table.</summary>
public static class SweepText
{
    /// <summary>The ranked designs as JSON.</summary>
    /// <param name="sweep">The sweep.</param>
    /// <param name="ranked">The designs to write, in order.</param>
    /// <param name="worked">How many designs were worked out.</param>
    public static byte[] Json(Sweep sweep, ImmutableArray<SweptDesign> ranked, int worked)
    {
        using var stream = new MemoryStream();
        using (var json = new ResultWriter(stream, sweep.Units))
        {
            json.Whole(() =>
            {
                json.Count("designs", sweep.Designs);
                json.Count("workedOut", worked);
                json.Text("caution", StrengthCaution.Text);
                json.Text("currency", sweep.Currency);
                json.List("ranked", ranked.Select((design, place) => (design, place)), each => Design(json, sweep, each.design, each.place + 1));
            });
        }
        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    /// <summary>The ranked designs as CSV (RFC 4180, but lines end in \n): values as typed, SI numbers with the unit in the column's name.</summary>
    public static string Csv(Sweep sweep, ImmutableArray<SweptDesign> ranked)
    {
        return Rows(
        [
            ["place", .. sweep.Fields.Select(field => field.Path), "cost", "currency", "unpricedLines", "verdict", "stormSnowPa", "stormGustMps", "codeSnowPa", "codeGustMps", "governs", "problem"],
            .. ranked.Select((design, place) => (ImmutableArray<string>)
            [
                Whole(place + 1), .. design.Values, design.Cost?.ToString() ?? "", sweep.Currency, Whole(design.Unpriced),
                Verdict(design), Number(design.StormSnow?.Pascals), Number(design.StormGust?.MetresPerSecond), Number(design.CodeSnow?.Pascals), Number(design.CodeGust?.MetresPerSecond),
                design.Governs, design.Problem,
            ]),
        ]);
    }

    internal static string Rows(IEnumerable<ImmutableArray<string>> rows)
    {
        var text = new StringBuilder();
        foreach (ImmutableArray<string> row in rows) text.AppendJoin(',', row.Select(Cell)).Append('\n');
        return text.ToString();
    }

    internal static string Whole(int count) => count.ToString(CultureInfo.InvariantCulture);

    /// <summary>The heads of the table's columns.</summary>
    public static ImmutableArray<string> Heads(Sweep sweep) =>
        [.. sweep.Fields.Select(field => field.Path), $"cost {sweep.Currency}", "verdict", "storm snow", "storm wind", "code snow", "code wind", "what governs"];

    /// <summary>A design as a row of the table.</summary>
    public static ImmutableArray<string> Cells(Sweep sweep, SweptDesign design) =>
    [
        .. design.Values, Cost(design), design.Verdict is null ? "cannot be built" : VerdictWords.Of(design.Verdict.Value),
        Snow(design.StormSnow, sweep.Units), Gust(design.StormGust, sweep.Units), Snow(design.CodeSnow, sweep.Units), Gust(design.CodeGust, sweep.Units),
        design.Problem.Length > 0 ? design.Problem : design.Governs,
    ];

    internal static string Snow(Pressure? snow, UnitSystem units) => snow is { } given ? TapeText.Of(given, units) : "-";

    internal static string Gust(Speed? gust, UnitSystem units) => gust is { } given ? TapeText.Of(given, units) : "-";

    private static string Cost(SweptDesign design) =>
        design.Cost is not { } cost ? "-" : design.Unpriced == 0 ? cost.ToString() : string.Create(CultureInfo.InvariantCulture, $"{cost} + {design.Unpriced} unpriced");

    internal static string Verdict(SweptDesign design) => design.Verdict is { } verdict ? TunnelResults.Word(verdict) : "cannotBeBuilt";

    private static void Design(ResultWriter json, Sweep sweep, SweptDesign design, int place)
    {
        json.Count("place", place);
        json.Count("number", design.Number);
        json.Group("values", () =>
        {
            for (int field = 0; field < sweep.Fields.Length; field++) json.Text(sweep.Fields[field].Path, design.Values[field]);
        });
        json.Price("cost", design.Cost);
        json.Count("unpricedLines", design.Unpriced);
        Stands(json, design);
    }

    internal static void Stands(ResultWriter json, SweptDesign design)
    {
        json.Text("verdict", Verdict(design));
        if (design.StormSnow is { } stormSnow) json.Pressure("stormSnow", stormSnow);
        if (design.StormGust is { } stormGust) json.Speed("stormGust", stormGust);
        if (design.CodeSnow is { } codeSnow) json.Pressure("codeSnow", codeSnow);
        if (design.CodeGust is { } codeGust) json.Speed("codeGust", codeGust);
        json.Text("governs", design.Governs);
        json.Text("problem", design.Problem);
    }

    internal static string Number(double? value) => value is { } given ? Math.Round(given, 3).ToString("0.###", CultureInfo.InvariantCulture) : "";

    private static string Cell(string text) => text.AsSpan().ContainsAny(",\"\n\r") ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
}
