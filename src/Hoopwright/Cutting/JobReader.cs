using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using Hoopwright.Diagnostics;

namespace Hoopwright.Cutting;

/// <summary>How lengths and money are said in a job's diagnostics.</summary>
internal sealed record CutWords(Func<decimal, string> Length, Func<decimal, string> Money)
{
    /// <summary>As plain numbers.</summary>
    public static CutWords Plain { get; } = new(
        length => length.ToString("0.##########", CultureInfo.InvariantCulture),
        money => money.ToString("0.##########", CultureInfo.InvariantCulture));
}

/// <summary>A job made whole, or what is wrong with it.</summary>
/// <param name="Job">The job in whole numbers; null when it has errors.</param>
/// <param name="LengthsToOne">Whole length units to one unit of the job's lengths.</param>
/// <param name="PricesToOne">Whole money units to one unit of the job's prices, as a fraction.</param>
/// <param name="Diagnostics">All that was found, in the job's order.</param>
internal sealed record ReadJob(
    WholeJob? Job, decimal LengthsToOne, (decimal Over, decimal Under) PricesToOne, ImmutableArray<Diagnostic> Diagnostics);

/// <summary>Checks a job and turns its numbers into whole ones.</summary>
internal sealed class JobReader
{
    private const decimal LongestWhole = 1e15m;
    private const decimal DearestWhole = 1e14m;
    private readonly UnitlessCutJob _job;
    private readonly CutWords _words;
    private readonly List<Diagnostic> _found = [];

    private JobReader(UnitlessCutJob job, CutWords words) => (_job, _words) = (job, words);

    /// <summary>Reads a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="words">How its numbers are said.</param>
    /// <param name="worth">Worth of a rest per length as a fraction of whole price units; null to take the job's own rule.</param>
    public static ReadJob Read(UnitlessCutJob job, CutWords words, (BigInteger Over, BigInteger Under)? worth = null) =>
        new JobReader(job, words).Read(worth);

    private ReadJob Read((BigInteger Over, BigInteger Under)? worth)
    {
        CheckSaw();
        CheckStock();
        CheckPieces();
        CheckLeftover();
        if (HasErrors)
            return Failed();

        decimal[] lengths =
        [
            _job.Kerf, _job.Trim, .. Stock.Select(bar => bar.Length), .. Pieces.Select(piece => piece.Length),
            .. _job.Leftover is { } rule ? [rule.MinLength] : Array.Empty<decimal>(),
        ];
        var perLength = PowerOfTenThatMakesWhole(lengths);
        var perPrice = PowerOfTenThatMakesWhole([1, .. Stock.Select(bar => bar.Price)]);
        var count = Math.Max(1, Pieces.Sum(piece => (decimal)piece.Count));
        if (perLength is null || lengths.Max() * perLength > LongestWhole)
            Error("cut.job.too-fine", "", "The lengths differ too much in size, or have too many decimals, to be reckoned exactly.");
        if (perPrice is null || count > int.MaxValue || Stock.Select(bar => bar.Price).DefaultIfEmpty(0).Max() * perPrice * count > DearestWhole)
            Error("cut.job.too-large", "", "The job is too large, or its prices have too many decimals, to be reckoned exactly.");
        if (HasErrors)
            return Failed();

        return Whole(perLength!.Value, perPrice!.Value, worth);
    }

    private ReadJob Whole(decimal perLength, decimal perPrice, (BigInteger Over, BigInteger Under)? worth)
    {
        long Length(decimal value) => (long)(value * perLength);
        WholeWorth? wholeWorth = null;
        var prices = Stock.Select(bar => (long)(bar.Price * perPrice)).ToArray();
        var divisor = prices.Aggregate(0L, WholeSolver.Divisor);
        if (_job.Leftover is { } rule && rule.ValuePer1000 > 0)
        {
            // floor(rest / perLength × value / 1000) whole units of price, each perPrice whole units here.
            divisor = WholeSolver.Divisor(divisor, (long)perPrice);
            var (over, under) = worth ?? Fraction(rule.ValuePer1000, 1000);
            wholeWorth = new WholeWorth(Length(rule.MinLength), over, under * new BigInteger(perLength), (long)perPrice / divisor);
        }

        divisor = Math.Max(1, divisor);
        var whole = new WholeJob(
            [.. Stock.Select((bar, index) => new WholeStock(bar.Id, Length(bar.Length), prices[index] / divisor, bar.Limit))],
            [.. Pieces.Select(piece => new WholePiece(piece.Id, Length(piece.Length), piece.Count))],
            Length(_job.Kerf),
            Length(_job.Trim),
            wholeWorth);
        var count = new BigInteger(Pieces.Sum(piece => (decimal)piece.Count));
        if (wholeWorth is not null && whole.Stock.Any(bar => wholeWorth.Exact(bar.Length) * count > new BigInteger(DearestWhole)))
        {
            Error("cut.job.too-large", "leftover", "The leftovers are worth too much to be reckoned exactly.");
            return Failed();
        }

        for (var line = 0; wholeWorth is not null && line < whole.Stock.Length; line++)
        {
            var bar = whole.Stock[line];
            if (wholeWorth.Of(bar.Length - whole.Trim) > bar.Price)
            {
                Add("cut.leftover.dearer-than-stock", Severity.Warning, $"stock[{Index(line)}].price",
                    "The rest of this bar can be worth more than the bar costs, so cutting into one looks like a gain.",
                    _words.Money(_job.Stock[line].Price), "a price of at least what the whole bar would be worth as a leftover");
            }
        }

        return new ReadJob(whole, perLength, (perPrice, divisor), [.. _found]);
    }

    private bool HasErrors => _found.Exists(found => found.Severity == Severity.Error);

    private ReadJob Failed() => new(null, 1, (1, 1), [.. _found]);

    private void CheckSaw()
    {
        if (_job.Kerf < 0)
            Error("cut.kerf.negative", "kerf", "The saw cut is below zero; it must be 0 or more.", _words.Length(_job.Kerf), "0 or more");
        if (_job.Trim < 0)
            Error("cut.trim.negative", "trim", "The end trim is below zero; it must be 0 or more.", _words.Length(_job.Trim), "0 or more");
    }

    private void CheckStock()
    {
        if (Stock.IsEmpty && Pieces.Any(piece => piece.Count > 0))
            Error("cut.stock.none", "stock", "There is no stock to cut from.", null, "at least one stock length");
        var ids = new HashSet<string>(StringComparer.Ordinal);
        for (var line = 0; line < Stock.Length; line++)
        {
            var bar = Stock[line];
            var path = $"stock[{Index(line)}]";
            if (!ids.Add(bar.Id))
                Error("cut.id.repeated", path + ".id", "Two stock lines have the same name; each needs its own.", bar.Id);
            if (bar.Length <= 0)
                Error("cut.stock.length-not-positive", path + ".length", "A stock length must be above zero.", _words.Length(bar.Length), "above 0");
            if (bar.Price < 0)
                Error("cut.stock.price-negative", path + ".price", "A price must be 0 or more.", _words.Money(bar.Price), "0 or more");
            if (bar.Limit < 0)
                Error("cut.stock.limit-negative", path + ".limit", "There cannot be fewer than no bars.", Index(bar.Limit.Value), "0 or more, or no limit");
        }
    }

    private void CheckPieces()
    {
        var longest = Stock.IsEmpty ? 0 : Stock.Max(bar => bar.Length) - _job.Trim;
        var ids = new HashSet<string>(StringComparer.Ordinal);
        for (var index = 0; index < Pieces.Length; index++)
        {
            var piece = Pieces[index];
            var path = $"pieces[{Index(index)}]";
            if (!ids.Add(piece.Id))
                Error("cut.id.repeated", path + ".id", "Two pieces have the same name; each needs its own.", piece.Id);
            if (piece.Length <= 0)
            {
                Error("cut.piece.length-not-positive", path + ".length", "A piece must be longer than zero.", _words.Length(piece.Length), "above 0");
            }
            else if (piece.Length > longest && piece.Count > 0 && Stock.Any(bar => bar.Length > 0))
            {
                var accepted = longest > 0 ? $"up to {_words.Length(longest)}" : "a stock length longer than the trim";
                Error("cut.piece.too-long", path + ".length",
                    $"Piece {piece.Id} is longer than any stock length once its end is trimmed.", _words.Length(piece.Length), accepted);
            }
            else if (piece.Length < _job.Kerf)
            {
                Add("cut.kerf.longer-than-piece", Severity.Warning, path + ".length",
                    "The saw cut is wider than this piece is long.", _words.Length(piece.Length), $"{_words.Length(_job.Kerf)} or more");
            }

            if (piece.Count < 0)
                Error("cut.piece.count-negative", path + ".count", "A count must be 0 or more.", Index(piece.Count), "0 or more");
        }
    }

    private void CheckLeftover()
    {
        if (_job.Leftover is not { } rule)
            return;
        if (rule.MinLength < 0)
            Error("cut.leftover.length-negative", "leftover.minLength", "The least useful leftover must be 0 or longer.", _words.Length(rule.MinLength), "0 or more");
        if (rule.ValuePer1000 < 0)
            Error("cut.leftover.value-negative", "leftover.valuePer1000", "A leftover must be worth 0 or more.", _words.Money(rule.ValuePer1000), "0 or more");
    }

    private ImmutableArray<UnitlessCutStock> Stock => _job.Stock.IsDefault ? [] : _job.Stock;

    private ImmutableArray<UnitlessCutPiece> Pieces => _job.Pieces.IsDefault ? [] : _job.Pieces;

    private void Error(string code, string path, string message, string? seen = null, string? accepted = null) =>
        Add(code, Severity.Error, path, message, seen, accepted);

    private void Add(string code, Severity severity, string path, string message, string? seen, string? accepted) =>
        _found.Add(new Diagnostic(code, severity, path, message, seen, accepted));

    private static string Index(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static decimal? PowerOfTenThatMakesWhole(IEnumerable<decimal> values)
    {
        var scale = values.Max(value => (value / 1.0000000000000000000000000000m).Scale);
        return scale > 12 ? null : Enumerable.Repeat(10m, scale).Aggregate(1m, (product, ten) => product * ten);
    }

    private static (BigInteger Over, BigInteger Under) Fraction(decimal value, int by)
    {
        var scale = value.Scale;
        var ten = BigInteger.Pow(10, scale);
        return (new BigInteger(value * (decimal)ten), ten * by);
    }
}
