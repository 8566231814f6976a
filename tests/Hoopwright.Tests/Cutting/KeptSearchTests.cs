using Hoopwright.Cutting;
using Hoopwright.Cutting.TwoStage;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Cutting;

/// <summary>
/// What the engine finds for some invented orders, and by how many steps, as it was when somebody last looked: steps are counted
/// alike on every machine, so that nothing of the search changes unseen. HOOPWRIGHT_ACCEPT=1 writes it anew.
/// </summary>
public sealed class KeptSearchTests
{
    private const long Steps = 20_000_000;

    [Fact]
    public void Orders_are_searched_as_they_were()
    {
        KeptText text = new();
        for (int number = 0; number < 48; number++)
        {
            UnitlessCutJob order = PracticalOrders.Of(number, leftovers: number % 3 == 2);
            // Lengths of a tape under a saw cut without a measure in common with them; too few bars of each length.
            if (number % 6 == 1) order = order with { Kerf = 3.175037m };
            if (number % 12 == 4) order = order with { Stock = [.. order.Stock.Select(bar => bar with { Limit = 4 })] };
            WholeJob whole = JobReader.Read(order, CutWords.Plain).Job!;
            (CutProblem problem, _) = WholeSolver.ProblemOf(whole, withMissing: number % 12 == 4);
            WorkMeter meter = new(Steps * (number % 8 == 7 ? 10 : 1), stopAsked: null), tidying = new(Steps / 10, stopAsked: null);
            LeastCostAnswer answer = LeastCost.Solve(problem, meter);
            Mixture tidied = Tidying.Of(problem, answer.Plan!, tidying);
            text.Line($"{number}: {answer.Plan!.Cost} of {answer.Bound} by {answer.Plan.Method} in {meter.Spent} steps, tidied in {tidying.Spent}");
            foreach ((Pattern pattern, int times) in tidied.Parts) text.Line($"  {times} of {pattern.Bar}: {Counts(pattern)}");
        }
        Golden.Match(text.ToString(), "Hoopwright.Tests/Cutting/Kept/bars.txt");
    }

    [Fact]
    public void Sheets_are_searched_as_they_were()
    {
        KeptText text = new();
        for (int number = 0; number < 40; number++)
        {
            UnitlessCutJob order = PracticalOrders.Of(number, leftovers: false);
            bool mayTurn = number % 4 == 1, isFine = number % 10 == 9;
            long unit = isFine ? 10_007 : 1;
            // Sizes made of the lengths and prices of an order of bars.
            TwoStageJob job = new(
                [.. order.Pieces.Take(4 + (number % 9)).Select((piece, index) => new TwoStagePiece((18 + ((long)piece.Length % 61)) * unit - index, (20 + ((long)piece.Length / 16)) * unit - 3, 1 + (piece.Count % 4), mayTurn,
                    number % 5 == 3 && index % 2 == 0 ? 40 + ((long)piece.Length % 50) : null))],
                [.. order.Stock.Select((bar, index) => new TwoStageStock((80 + (7 * index)) * unit, (long)bar.Length / 10 * unit, 100 + ((long)bar.Price % 400), index == 0 && number % 3 == 0 ? 2 : null)), new(130 * unit, 420 * unit, 700)],
                Slit: number % 7 != 6);
            TwoStagePlan plan = TwoStageCutter.Solve(job, new CutEffort(Steps))!;
            WorkMeter meter = new(Steps, stopAsked: null);
            LeastCostAnswer answer = SheetLeastCost.Solve(SheetProblem.Of(job), meter);
            text.Line($"{number}: {plan.Cost} of {plan.Bound}, without rounding {answer.Plan!.Cost} of {answer.Bound} by {answer.Plan.Method} in {meter.Spent} steps; left out {string.Join(' ', plan.LeftOut)}");
            foreach (TwoStageSheet sheet in plan.Sheets)
                text.Line($"  {sheet.Stock}: {string.Join(" | ", sheet.Levels.Select(level => string.Join(' ', level.Select(place => $"{place.Piece}{(place.Turned ? "t" : "")}"))))}");
        }
        Golden.Match(text.ToString(), "Hoopwright.Tests/Cutting/Kept/sheets.txt");
    }

    [Fact]
    public void Orders_that_were_stopped_go_on_as_they_did()
    {
        KeptText text = new();
        for (int number = 0; number < 12; number++)
        {
            UnitlessCutJob order = PracticalOrders.Of(number, leftovers: number % 2 == 1);
            UnitlessCutPlan first = Cutter.Solve(order, new CutEffort(Steps));
            if (!first.Found) continue;
            CutProgress[] earlier = [.. first.Patterns.Select((pattern, index) => new CutProgress(pattern.StockId, pattern.Times, pattern.Pieces, pattern.Times * (index % 3) / 3, index % 5 == 4 && pattern.Times > 1 ? 1 : 0))];
            // What is wanted has changed a little since.
            UnitlessCutJob now = order with { Pieces = [.. order.Pieces.Select((piece, index) => index == number ? piece with { Count = piece.Count + 3 } : piece)] };
            RecutPlan again = Recutter.Solve(now, [.. earlier], new CutEffort(Steps));
            text.Line($"{number}: {again.Plan.Cost} of {again.Plan.LowerBound}, {again.Plan.Bars} bars, waiting {again.Waiting}, kept {string.Join(' ', again.Kept)}, further {string.Join(' ', again.Further)}, fewest changed {again.FewestChanged}");
            foreach (UnitlessCutPattern pattern in again.Plan.Patterns) text.Line($"  {pattern.Times} of {pattern.StockId}: {string.Join(' ', pattern.Pieces)}; left {pattern.Leftover}, sawn {pattern.KerfLost}");
        }
        Golden.Match(text.ToString(), "Hoopwright.Tests/Cutting/Kept/stopped.txt");
    }

    private static string Counts(Pattern pattern) => string.Join(' ', pattern.Types.Select((type, index) => $"{pattern.Counts[index]}x{type}"));
}
