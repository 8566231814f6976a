using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using System.Text.Json;
using Hoopwright.Diagnostics;
using Hoopwright.ModelFiles;
using Hoopwright.Quantities;

namespace Hoopwright.Cutting;

/// <summary>Makes a cutting job of a file's fields. What cannot be read is told and left out.</summary>
internal sealed class CutFileReader(ModelProblems problems)
{
    private static readonly ImmutableArray<string> Fields = ["kerf", "trim", "leftover", "stock", "pieces"];
    private static readonly ImmutableArray<string> StockFields = ["id", "length", "price", "limit"];
    private static readonly ImmutableArray<string> PieceFields = ["id", "length", "count"];
    private static readonly ImmutableArray<string> LeftoverFields = ["minLength", "valuePer1000", "value", "per"];

    // Lengths with units are read as doubles, which keep so many digits.
    private const int MostDigits = 15;

    // The first length that is not 0 says whether the job names its units; 0 is 0 in any unit.
    private bool? _namesUnits;
    private bool _isMetric;

    /// <summary>The job, as far as it can be read.</summary>
    internal CutFileJob? Read(ModelGroup file)
    {
        file.Only(Fields);
        decimal kerf = LengthOf(file, "kerf") ?? 0, trim = LengthOf(file, "trim") ?? 0;
        if (!file.Has("kerf"))
            problems.Assume("cut.kerf.not-given", "kerf", "The job does not say how wide the saw cut is.", "0, as with snips or a knife");
        (ModelGroup Group, decimal MinLength)? leftover = null;
        if (file.Value("leftover") is { ValueKind: not JsonValueKind.Null } && file.Group("leftover") is { } rule)
        {
            rule.Only(LeftoverFields);
            if (NeededLength(rule, "minLength") is { } least)
                leftover = (rule, least);
        }

        var stock = Entries(file, "stock", """[{ "id": "a", "length": 3000, "price": 5 }]""", StockFields, Stock);
        var pieces = Entries(file, "pieces", """[{ "id": "p1", "length": 420, "count": 7 }]""", PieceFields, Piece);
        var named = _namesUnits ?? false;
        (UnitlessLeftoverRule? Rule, (BigInteger, BigInteger)? Worth) worth = leftover is { } found ? WorthOf(found.Group, found.MinLength, named) : default;
        var scale = named ? 100 : 1;
        return new CutFileJob(
            new UnitlessCutJob
            {
                Stock = [.. stock.Select(bar => bar with { Price = bar.Price * scale })],
                Pieces = pieces,
                Kerf = kerf,
                Trim = trim,
                Leftover = worth.Rule,
            },
            named ? new CutWords(_isMetric ? Millimetres : FeetAndInches, cents => CutWords.Plain.Money(cents / 100)) : CutWords.Plain,
            worth.Worth,
            named);
    }

    private ImmutableArray<T> Entries<T>(ModelGroup file, string field, string example, ImmutableArray<string> fields, Func<ModelGroup, T?> read)
        where T : class
    {
        _ = file.NeededValue(field, example);
        var all = ImmutableArray.CreateBuilder<T>();
        foreach (var (json, path) in file.List(field))
        {
            if (ModelGroup.Of(json, path, problems) is not { } group)
                continue;
            group.Only(fields);
            if (read(group) is { } entry)
                all.Add(entry);
        }

        return all.ToImmutable();
    }

    private UnitlessCutStock? Stock(ModelGroup group)
    {
        var id = Name(group, "\"a\"");
        var length = NeededLength(group, "length");
        var price = group.NeededValue("price", "5") is { } json ? PriceOf(json, group.PathOf("price")) : null;
        int? limit = group.Value("limit") is { ValueKind: not JsonValueKind.Null } most ? ModelGroup.Whole(most, group.PathOf("limit"), problems) : null;
        return id is null || length is null || price is null ? null : new(id, length.Value, price.Value, limit);
    }

    private UnitlessCutPiece? Piece(ModelGroup group)
    {
        var id = Name(group, "\"p1\"");
        var length = NeededLength(group, "length");
        var count = group.NeededValue("count", "7") is { } json ? ModelGroup.Whole(json, group.PathOf("count"), problems) : null;
        return id is null || length is null || count is null ? null : new(id, length.Value, count.Value);
    }

    private string? Name(ModelGroup group, string example)
    {
        var id = group.NeededText("id", example);
        if (id is null || (id.Length is > 0 and <= 100 && SeenText.Shorten(id.Length > 60 ? id[..60] : id).All(letter => letter != '\uFFFD')))
            return id;
        problems.Error("model.name", group.PathOf("id"), "A name is empty, very long, or holds a character that cannot be shown.", SeenText.Shorten(id), "a name of 1 to 100 letters, digits and signs");
        return null;
    }

    private (UnitlessLeftoverRule? Rule, (BigInteger, BigInteger)? Worth) WorthOf(ModelGroup group, decimal least, bool named)
    {
        var wrong = named ? "valuePer1000" : group.Has("value") ? "value" : "per";
        if (group.Has(wrong))
        {
            problems.Error("cut.leftover.rule", group.PathOf(wrong), named ? "Where lengths have units, the worth of a leftover is a value per a length." : "Where lengths are plain numbers, the worth of a leftover is a value per 1000 of them.", wrong, named ? "\"value\": 0.50, \"per\": \"1 ft\"" : "\"valuePer1000\": 74");
            return default;
        }

        if (!named)
            return group.NeededValue("valuePer1000", "74") is { } json && ModelGroup.Exact(json, group.PathOf("valuePer1000"), problems) is { } each ? (new(least, each), null) : default;
        if (group.NeededValue("value", "0.50") is not { } priced || PriceOf(priced, group.PathOf("value")) is not { } value || NeededLength(group, "per") is not { } per)
            return default;
        if (value < 0)
        {
            problems.Error("cut.leftover.value-negative", group.PathOf("value"), "A leftover must be worth 0 or more.", CutWords.Plain.Money(value), "0 or more");
            return default;
        }

        if (per > 0)
            return (new(least, value), (Whole(value * 100), Whole(per)));
        problems.Error("cut.leftover.per-not-positive", group.PathOf("per"), "The length that a leftover's worth is for must be above zero.", null, "above 0");
        return default;

        // Both in the same small parts, so that their ratio is kept.
        static BigInteger Whole(decimal number) => new(number * 1_000_000_000_000m);
    }

    private decimal? PriceOf(JsonElement json, string path)
    {
        if (json.ValueKind != JsonValueKind.String)
            return ModelGroup.Exact(json, path, problems);
        var read = QuantityText.ReadMoney(json.GetString());
        if (read.IsRead)
            return read.Value.Amount;
        problems.Error("cut.price.unread", path, read.Problem!, ModelGroup.Seen(json), read.Accepted);
        return null;
    }

    private decimal? NeededLength(ModelGroup group, string field)
    {
        _ = group.NeededValue(field, _namesUnits == true ? "\"5' 6-1/2\\\"\"" : "420");
        return LengthOf(group, field);
    }

    private decimal? LengthOf(ModelGroup group, string field)
    {
        if (group.Value(field) is not { } json)
            return null;
        var path = group.PathOf(field);
        if (json.ValueKind == JsonValueKind.Number)
        {
            if (ModelGroup.Exact(json, path, problems) is not { } number)
                return null;
            return number == 0 || IsAlike(json, path, names: false) ? number : null;
        }

        if (json.ValueKind != JsonValueKind.String)
        {
            ModelGroup.Wrong(problems, path, json, "a length: a number, or a text with its unit");
            return null;
        }

        var text = json.GetString()!;
        var read = QuantityText.ReadLength(text);
        if (!read.IsRead)
        {
            problems.Error("cut.length.unread", path, read.Problem!, ModelGroup.Seen(json), read.Accepted);
            return null;
        }

        if (text.Count(char.IsAsciiDigit) > MostDigits)
        {
            problems.Error("cut.length.unread", path, "The length has more digits than can be reckoned with exactly.", ModelGroup.Seen(json), "a length that a tape can read, such as 5' 6-1/2\" or 1689.1 mm");
            return null;
        }

        if (_namesUnits is null)
            _isMetric = text.TrimEnd().EndsWith('m') || text.Contains("met", StringComparison.OrdinalIgnoreCase);
        // The shortest digits that read back as this double are those that were meant: up to 15 of them are kept exactly.
        return IsAlike(json, path, names: true) ? decimal.Parse(read.Value.Metres.ToString("R", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture) : null;
    }

    private bool IsAlike(JsonElement json, string path, bool names)
    {
        if ((_namesUnits ??= names) == names)
            return true;
        problems.Error("cut.units.mixed", path, "Some lengths have a unit and some have none, so they cannot be compared.", ModelGroup.Seen(json), names ? "plain numbers throughout" : "a unit on every length, such as \"420 mm\"");
        return false;
    }

    private static string FeetAndInches(decimal metres) => TapeText.FeetAndInches(Length.FromMetres((double)metres), 64);

    private static string Millimetres(decimal metres) => (metres * 1000).ToString("0.###", CultureInfo.InvariantCulture) + " mm";
}
