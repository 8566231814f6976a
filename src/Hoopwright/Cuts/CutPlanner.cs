using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cutting;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Pricing;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Cuts;

/// <summary>Cuts everything that comes in lengths from what is on hand and what is sold, at the least cost.</summary>
public static class CutPlanner
{
    /// <summary>The cut sheets of a takeoff.</summary>
    /// <param name="takeoff">What is needed.</param>
    /// <param name="plan">Stock on hand, prices and saw.</param>
    /// <param name="answers">Collects the rules used.</param>
    public static CutSheets Plan(TakeoffList takeoff, Plan plan, Answers answers)
    {
        Length kerf = answers.Take("cuts.kerf", CutDefaults.Kerf, plan.Cuts.Kerf);
        Length trim = answers.Take("cuts.endTrim", CutDefaults.EndTrim, plan.Cuts.EndTrim);
        Length useful = answers.Take("cuts.usefulLeftover", CutDefaults.UsefulLeftover, plan.Cuts.UsefulLeftover);
        var sheets = ImmutableArray.CreateBuilder<CutSheet>();
        var diagnostics = ImmutableArray.CreateBuilder<Diagnostic>();
        foreach (IGrouping<(string Item, string Size), MaterialLine> lines in takeoff.Lines.Where(line => line.Unit == MaterialUnit.CutLengths).GroupBy(line => (line.Item, line.Size)))
        {
            var worker = new SheetWorker(lines.Key.Item, lines.Key.Size, [.. lines], plan, answers.Units, kerf, trim, useful);
            if (worker.Work() is { } sheet) sheets.Add(sheet);
            diagnostics.AddRange(worker.Diagnostics);
        }
        return new CutSheets(sheets.ToImmutable(), diagnostics.ToImmutable());
    }

    /// <summary>Works one sheet out.</summary>
    private sealed class SheetWorker(string item, string size, ImmutableArray<MaterialLine> lines, Plan plan, UnitSystem units, Length kerf, Length trim, Length useful)
    {
        /// <summary>With more ways of joining than this, runs are settled one group after another instead of all together.</summary>
        private const int MostTogether = 48;

        public List<Diagnostic> Diagnostics { get; } = [];

        public CutSheet? Work()
        {
            (ImmutableArray<CutStock> stock, bool priced) = Stock();
            Length longest = stock.Max(each => each.Length) - trim;
            ImmutableArray<PieceNeed> whole = [.. lines.SelectMany(line => line.Pieces).Where(need => need.Joining is null || need.Length <= longest)];
            ImmutableArray<ImmutableArray<PieceNeed>> runs =
            [
                .. lines.SelectMany(line => line.Pieces).Where(need => need.Joining is not null && need.Length > longest)
                    .GroupBy(need => (need.Length, string.Join(';', need.Joining!.NoJoints.Select(none => none.From.Metres.ToString("R", CultureInfo.InvariantCulture))))).Select(group => group.ToImmutableArray()),
            ];
            if (whole.FirstOrDefault(need => need.Length > longest) is { } tooLong)
            {
                Diagnostics.Add(new Diagnostic("cuts.piece-too-long", Severity.Error, "stock", $"{Name} for {tooLong.MemberId} is longer than any that is sold.",
                    TapeText.Of(tooLong.Length, units), $"{Name} of {TapeText.Of(TapeText.RoundUpForLimit(tooLong.Length + trim, units), units)} or longer"));
                return null;
            }

            ImmutableArray<Length> usable = [.. stock.Select(each => each.Length - trim).Distinct()];
            ImmutableArray<ImmutableArray<ImmutableArray<Length>>> ways = [.. runs.Select(group => RunJoiner.Ways(group[0].Length, group[0].Joining!, usable))];
            for (int group = 0; group < ways.Length; group++)
            {
                if (!ways[group].IsEmpty) continue;
                Diagnostics.Add(new Diagnostic("cuts.run-cannot-be-joined", Severity.Error, "stock", $"{Name} for {runs[group][0].MemberId} cannot be joined from what is sold with the joints off the bows.",
                    TapeText.Of(longest, units), "longer stock"));
                return null;
            }

            int[] chosen = Choose(ways, choice => Solve(whole, runs, ways, choice, stock, CutEffort.Live), out int compared);
            CutPlan cut = Solve(whole, runs, ways, chosen, stock, CutEffort.Usual);
            if (!cut.Found)
            {
                Diagnostics.AddRange(cut.Diagnostics.Where(each => each.Severity == Severity.Error).Select(each => each with { Path = "stock" }));
                return null;
            }
            return Sheet(cut, stock, priced, Pieces(whole, runs, ways, chosen), runs.IsEmpty ? 0 : compared, Joints(runs, ways, chosen));
        }

        private string Name => size.Length == 0 ? item : $"{item} {size}";

        private (ImmutableArray<CutStock> Stock, bool Priced) Stock()
        {
            ImmutableArray<PriceLine> book = PriceBook.LinesFor(plan.Prices, item, size);
            ImmutableArray<Length> asked = [.. lines.SelectMany(line => line.StockLengths).Distinct().Order()];
            ImmutableArray<Length> sold = !asked.IsEmpty ? asked
                : [.. book.Where(line => line.Length is not null).Select(line => line.Length!.Value.Value).Distinct().Order()];
            if (sold.IsEmpty) sold = CutDefaults.UsualLengths(item);
            Dictionary<Length, Money> prices = [];
            foreach (Length length in sold)
            {
                if (PriceBook.PriceOf(book, length) is { } price) prices[length] = price;
            }
            bool priced = prices.Count > 0;
            var stock = ImmutableArray.CreateBuilder<CutStock>();
            foreach (Length length in sold)
            {
                if (priced && !prices.ContainsKey(length)) continue;
                // Without any price the least length is sought: a bar "costs" its millimetres.
                stock.Add(new CutStock("sold " + TapeText.Of(length, units), length, priced ? prices[length] : new Money(decimal.Round((decimal)length.Millimetres, 4))));
            }
            int number = 0;
            foreach (StockOnHand hand in plan.Stock.Where(hand => hand.Item == item && (hand.Size ?? "") == size && hand.Count > 0 && hand.Length is { } length && length.Value > trim))
                stock.Add(new CutStock(FormattableString.Invariant($"on hand {++number}"), hand.Length!.Value.Value, Money.Zero, hand.Count));
            return (stock.ToImmutable(), priced);
        }

        private static int[] Choose(ImmutableArray<ImmutableArray<ImmutableArray<Length>>> ways, Func<int[], CutPlan> solve, out int compared)
        {
            int[] chosen = new int[ways.Length];
            long together = ways.Aggregate(1L, (product, each) => Math.Min(1_000_000, product * each.Length));
            compared = 0;
            if (together <= 1) return chosen;
            Money? best = null;
            int[] trial = new int[ways.Length];
            if (together <= MostTogether)
            {
                do
                {
                    Try(trial, ref compared);
                }
                while (Next(trial));
                return chosen;
            }
            for (int group = 0; group < ways.Length; group++)
            {
                trial = [.. chosen];
                for (int way = 0; way < ways[group].Length; way++)
                {
                    trial[group] = way;
                    Try(trial, ref compared);
                }
            }
            return chosen;

            void Try(int[] choice, ref int count)
            {
                count++;
                CutPlan plan = solve(choice);
                if (!plan.Found || (best is { } cost && plan.Cost >= cost)) return;
                best = plan.Cost;
                chosen = [.. choice];
            }

            bool Next(int[] choice)
            {
                for (int group = choice.Length - 1; group >= 0; group--)
                {
                    if (++choice[group] < ways[group].Length) return true;
                    choice[group] = 0;
                }
                return false;
            }
        }

        private ImmutableArray<PieceNeed> Pieces(ImmutableArray<PieceNeed> whole, ImmutableArray<ImmutableArray<PieceNeed>> runs, ImmutableArray<ImmutableArray<ImmutableArray<Length>>> ways, int[] chosen)
        {
            var pieces = whole.ToBuilder();
            for (int group = 0; group < runs.Length; group++)
            {
                foreach (PieceNeed run in runs[group])
                {
                    ImmutableArray<Length> lengths = RunJoiner.Pieces(run.Length, ways[group][chosen[group]]);
                    for (int index = 0; index < lengths.Length; index++)
                    {
                        pieces.Add(run with
                        {
                            Length = TapeText.RoundForMember(lengths[index], units),
                            Place = FormattableString.Invariant($"{run.Place}, piece {index + 1} of {lengths.Length}"),
                        });
                    }
                }
            }
            return pieces.ToImmutable();
        }

        private static ImmutableArray<RunJoint> Joints(ImmutableArray<ImmutableArray<PieceNeed>> runs, ImmutableArray<ImmutableArray<ImmutableArray<Length>>> ways, int[] chosen) =>
            [.. runs.SelectMany((group, index) => group.SelectMany(run => ways[index][chosen[index]].Select(joint => new RunJoint(run.MemberId, joint))))];

        private CutPlan Solve(ImmutableArray<PieceNeed> whole, ImmutableArray<ImmutableArray<PieceNeed>> runs, ImmutableArray<ImmutableArray<ImmutableArray<Length>>> ways, int[] chosen, ImmutableArray<CutStock> stock, CutEffort effort) =>
            Cutter.Solve(new CutJob
            {
                Stock = stock,
                Pieces = [.. Pieces(whole, runs, ways, chosen).GroupBy(piece => piece.Length).OrderByDescending(group => group.Key).Select(group => new CutPiece(Key(group.Key), group.Key, group.Count()))],
                Kerf = kerf,
                Trim = trim,
            }, effort);

        private static string Key(Length length) => length.Metres.ToString("R", CultureInfo.InvariantCulture);

        private CutSheet Sheet(CutPlan cut, ImmutableArray<CutStock> stock, bool priced, ImmutableArray<PieceNeed> pieces, int compared, ImmutableArray<RunJoint> joints)
        {
            Dictionary<string, Queue<PieceNeed>> waiting = pieces.GroupBy(piece => Key(piece.Length)).ToDictionary(group => group.Key, group => new Queue<PieceNeed>(group), StringComparer.Ordinal);
            var bars = ImmutableArray.CreateBuilder<CutBar>();
            int number = 0;
            foreach (CutPattern pattern in cut.Patterns.OrderByDescending(pattern => waiting[pattern.Pieces[0]].Peek().Length).ThenBy(pattern => pattern.StockId, StringComparer.Ordinal))
            {
                CutStock from = stock.First(each => each.Id == pattern.StockId);
                for (int time = 0; time < pattern.Times; time++)
                {
                    bars.Add(new CutBar(bars.Count + 1, from.Length, from.Limit is not null,
                        [.. pattern.Pieces.Select(id => waiting[id].Dequeue()).Select(piece => new BarPiece(++number, piece.Length, piece.MemberId, piece.Place))],
                        pattern.Leftover, pattern.KerfLost, pattern.Leftover >= useful));
                }
            }
            return new CutSheet
            {
                Item = item,
                Size = size,
                Kerf = kerf,
                Trim = trim,
                Bars = bars.ToImmutable(),
                Cost = priced ? cut.Cost : null,
                Proven = cut.Proven,
                Gap = cut.Proven || cut.LowerBound.Amount == 0 ? Ratio.Zero : Ratio.FromValue((double)((cut.Cost.Amount - cut.LowerBound.Amount) / cut.LowerBound.Amount)),
                JoinsCompared = compared,
                Joints = joints,
            };
        }
    }
}
