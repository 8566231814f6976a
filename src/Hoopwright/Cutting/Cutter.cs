using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;

namespace Hoopwright.Cutting;

/// <summary>
/// Cuts bars at the least cost; at equal cost with fewer different patterns, then with longer leftovers. A pure function of
/// its job and effort: no clock, no randomness, the same plan on every machine.
/// </summary>
public static class Cutter
{
    // 5 nm: a tenth of a millimetre is 20 000 of them and 1/64 in is 79 375, both exactly.
    private const decimal GrainsPerMetre = 200_000_000m;
    private const decimal CoinsPerUnit = 10_000m;

    /// <summary>The least-cost plan for a job, or what is wrong with it.</summary>
    /// <param name="job">What to cut from what.</param>
    /// <param name="effort">How much work may be spent; <see cref="CutEffort.Usual"/> when null.</param>
    /// <param name="stopAsked">Asked now and then; true ends the work with the best plan so far. Null never stops.</param>
    public static CutPlan Solve(CutJob job, CutEffort? effort = null, Func<bool>? stopAsked = null)
    {
        var broken = QuantityFaults(job);
        if (!broken.IsEmpty)
            return Without(broken);
        var unitless = new UnitlessCutJob
        {
            Stock = [.. Or(job.Stock).Select(bar => new UnitlessCutStock(bar.Id, Grains(bar.Length), Coins(bar.Price), bar.Limit))],
            Pieces = [.. Or(job.Pieces).Select(piece => new UnitlessCutPiece(piece.Id, Grains(piece.Length), piece.Count))],
            Kerf = Grains(job.Kerf),
            Trim = Grains(job.Trim),
            Leftover = job.Leftover is { } rule ? new UnitlessLeftoverRule(Grains(rule.MinimumLength), Coins(rule.Worth)) : null,
        };
        (BigInteger, BigInteger)? worth = job.Leftover is { } priced
            ? (new BigInteger(Coins(priced.Worth)), new BigInteger(Grains(priced.Per)))
            : null;
        var plan = Solve(unitless, new CutWords(Tape, Amount), worth, effort, stopAsked);
        return new CutPlan
        {
            Patterns =
            [
                .. plan.Patterns.Select(pattern => new CutPattern(
                    pattern.StockId, pattern.Times, pattern.Pieces, Metres(pattern.Leftover), Metres(pattern.KerfLost))),
            ],
            Cost = new Money(plan.Cost / CoinsPerUnit),
            Bars = plan.Bars,
            LowerBound = new Money(plan.LowerBound / CoinsPerUnit),
            Proven = plan.Proven,
            Method = plan.Method,
            Diagnostics = plan.Diagnostics,
        };
    }

    /// <summary>The least-cost plan for a job in plain numbers, or what is wrong with it.</summary>
    /// <param name="job">What to cut from what.</param>
    /// <param name="effort">How much work may be spent; <see cref="CutEffort.Usual"/> when null.</param>
    /// <param name="stopAsked">Asked now and then; true ends the work with the best plan so far. Null never stops.</param>
    public static UnitlessCutPlan Solve(UnitlessCutJob job, CutEffort? effort = null, Func<bool>? stopAsked = null) =>
        Solve(job, CutWords.Plain, worth: null, effort, stopAsked);

    /// <summary>The same with words of one's own, and the worth of a rest as a fraction where the job's own rule cannot say it.</summary>
    internal static UnitlessCutPlan Solve(
        UnitlessCutJob job, CutWords words, (BigInteger, BigInteger)? worth, CutEffort? effort, Func<bool>? stopAsked)
    {
        var read = JobReader.Read(job, words, worth);
        if (read.Job is not { } whole)
            return PlainWithout(read.Diagnostics);
        var plan = WholeSolver.Solve(whole, effort ?? CutEffort.Usual, stopAsked);
        if (plan.Beyond.Any(more => more > 0))
            return PlainWithout([.. read.Diagnostics, Shortage.Of(whole, plan)]);
        if (!PlanCheck.Holds(whole, plan.Cuts, plan.Cost))
            throw new InvalidOperationException("The cutting engine made a plan that does not keep the job's own rules.");
        decimal Money(long coins) => coins * read.PricesToOne.Under / read.PricesToOne.Over;
        return new UnitlessCutPlan
        {
            Patterns = [.. plan.Cuts.Select(cut => PatternOf(whole, cut, read.LengthsToOne))],
            Cost = Money(plan.Cost),
            Bars = plan.Cuts.Sum(cut => cut.Times),
            LowerBound = Money(plan.Bound),
            Proven = plan.Cost == plan.Bound,
            Method = plan.Method,
            Diagnostics = read.Diagnostics,
        };
    }

    private static UnitlessCutPattern PatternOf(WholeJob job, WholeCut cut, decimal lengthsToOne)
    {
        var bar = job.Stock[cut.Stock].Length - job.Trim;
        var pieces = cut.Pieces.Sum(piece => job.Pieces[piece].Length);
        var leftover = Math.Max(0, bar - pieces - (job.Kerf * cut.Pieces.Length));
        return new UnitlessCutPattern(
            job.Stock[cut.Stock].Id,
            cut.Times,
            [.. cut.Pieces.Select(piece => job.Pieces[piece].Id)],
            leftover / lengthsToOne,
            (bar - pieces - leftover) / lengthsToOne);
    }

    /// <summary>What cannot be turned into whole numbers at all.</summary>
    private static ImmutableArray<Diagnostic> QuantityFaults(CutJob job)
    {
        var found = ImmutableArray.CreateBuilder<Diagnostic>();
        Check(job.Kerf, "kerf");
        Check(job.Trim, "trim");
        for (var line = 0; line < Or(job.Stock).Length; line++)
            Check(job.Stock[line].Length, string.Create(CultureInfo.InvariantCulture, $"stock[{line}].length"));
        for (var index = 0; index < Or(job.Pieces).Length; index++)
            Check(job.Pieces[index].Length, string.Create(CultureInfo.InvariantCulture, $"pieces[{index}].length"));
        for (var line = 0; line < Or(job.Stock).Length; line++)
            CheckMoney(job.Stock[line].Price, string.Create(CultureInfo.InvariantCulture, $"stock[{line}].price"));
        if (job.Leftover is { } rule)
        {
            Check(rule.MinimumLength, "leftover.minimumLength");
            CheckMoney(rule.Worth, "leftover.worth");
            if (Check(rule.Per, "leftover.per") && Grains(rule.Per) <= 0)
            {
                found.Add(new Diagnostic("cut.leftover.per-not-positive", Severity.Error, "leftover.per",
                    "The length that a leftover's worth is for must be above zero.", Tape(Grains(rule.Per)), "above 0"));
            }
        }

        return found.ToImmutable();

        bool Check(Length length, string path)
        {
            if (double.IsFinite(length.Metres) && Math.Abs(length.Metres) <= 1e6)
                return true;
            found.Add(new Diagnostic("cut.number.out-of-range", Severity.Error, path,
                "This is not a length that can be cut.", length.Metres.ToString("R", CultureInfo.InvariantCulture) + " m", "up to 1000 km"));
            return false;
        }

        void CheckMoney(Money money, string path)
        {
            if (Math.Abs(money.Amount) > 1e9m)
            {
                found.Add(new Diagnostic("cut.number.out-of-range", Severity.Error, path,
                    "This is more money than can be reckoned exactly.", money.ToString(), "up to 1 000 000 000"));
            }
        }
    }

    private static CutPlan Without(ImmutableArray<Diagnostic> diagnostics) => new()
    {
        Patterns = [],
        Cost = Quantities.Money.Zero,
        Bars = 0,
        LowerBound = Quantities.Money.Zero,
        Proven = false,
        Method = CutMethod.None,
        Diagnostics = diagnostics,
    };

    internal static UnitlessCutPlan PlainWithout(ImmutableArray<Diagnostic> diagnostics) => new()
    {
        Patterns = [],
        Cost = 0,
        Bars = 0,
        LowerBound = 0,
        Proven = false,
        Method = CutMethod.None,
        Diagnostics = diagnostics,
    };

    private static ImmutableArray<T> Or<T>(ImmutableArray<T> list) => list.IsDefault ? [] : list;

    private static decimal Grains(Length length) => (decimal)Math.Round(length.Metres * (double)GrainsPerMetre);

    private static decimal Coins(Money money) => decimal.Round(money.Amount * CoinsPerUnit, MidpointRounding.AwayFromZero);

    private static Length Metres(decimal grains) => Length.FromMetres((double)(grains / GrainsPerMetre));

    private static string Tape(decimal grains) =>
        (grains / GrainsPerMetre * 1000).ToString("0.###", CultureInfo.InvariantCulture) + " mm";

    private static string Amount(decimal coins) => (coins / CoinsPerUnit).ToString("0.00##", CultureInfo.InvariantCulture);
}
