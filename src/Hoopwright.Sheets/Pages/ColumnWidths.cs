using System.Collections.Immutable;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Pages;

/// <summary>
/// Widths of the columns of a table on paper. Where every cell fits without a break each column gets what it needs and the
/// rest goes by the shares; else the width is dealt out so that the sum over all cells of the cube of their lines is
/// least: a few very tall cells cost more than many of two lines. No column is narrower than its longest word while there
/// is room for that.
/// </summary>
internal static class ColumnWidths
{
    private const double StepMm = 1.5;

    // A word that would take more of the width is no word of any language and is broken.
    private const double LongestWordShare = 0.4;

    /// <summary>A width for each column; together the whole width.</summary>
    /// <param name="table">The table, its headings among the cells.</param>
    /// <param name="wholeMm">The width to deal out.</param>
    /// <param name="padsMm">What the blanks beside a cell's text take of its column.</param>
    /// <param name="emMm">Size of the lettering.</param>
    public static double[] Of(Table table, double wholeMm, double padsMm, double emMm)
    {
        ImmutableArray<Cell>[] columns =
            [.. table.Columns.Select((column, at) => table.Rows.Select(row => new Cell(row.Cells[at], row.IsTotal, emMm)).Prepend(new Cell(column.Name, true, emMm)).ToImmutableArray())];
        double hairMm = padsMm + 0.01;
        double[] unbroken = [.. columns.Select(cells => cells.Max(cell => cell.UnbrokenMm) + hairMm)];
        double[] least = [.. columns.Select(cells => Math.Min(cells.Max(cell => cell.LongestWordMm), LongestWordShare * wholeMm) + hairMm)];
        double spareMm = wholeMm - unbroken.Sum();
        if (spareMm >= 0) return Shared(unbroken, spareMm, table);
        double toDealMm = wholeMm - least.Sum();
        if (toDealMm < 0) return [.. least.Select(width => wholeMm * width / least.Sum())];

        int steps = (int)(toDealMm / StepMm);
        double[] widths = [.. least];
        int[] dealt = Dealt([.. columns.Select((cells, at) => Costs(cells, least[at] - hairMm, unbroken[at] - least[at], steps))], steps);
        for (int column = 0; column < widths.Length; column++) widths[column] += dealt[column] * StepMm;
        return Shared(widths, wholeMm - widths.Sum(), table);
    }

    private static double[] Shared(double[] widths, double spareMm, Table table)
    {
        double shares = table.Columns.Sum(column => column.Share);
        return [.. widths.Select((width, column) => width + (spareMm * table.Columns[column].Share / shares))];
    }

    /// <summary>What a column costs with each number of steps more than its least width, up to that from which on nothing is broken.</summary>
    private static double[] Costs(ImmutableArray<Cell> cells, double leastMm, double toUnbrokenMm, int steps)
    {
        double[] costs = new double[Math.Min(steps, (int)Math.Ceiling(Math.Max(0, toUnbrokenMm) / StepMm) + 1) + 1];
        foreach (Cell cell in cells)
        {
            // Most cells are never broken.
            int step = 0;
            for (int lines; step < costs.Length && (lines = cell.LinesAt(leastMm + (step * StepMm))) > cell.LeastLines; step++) costs[step] += (double)lines * lines * lines;
            for (double rest = (double)cell.LeastLines * cell.LeastLines * cell.LeastLines; step < costs.Length; step++) costs[step] += rest;
        }
        return costs;
    }

    /// <summary>The steps of each column that together cost least; of equal ones the fewest for the columns on the right.</summary>
    private static int[] Dealt(double[][] costs, int steps)
    {
        double[] best = [.. Enumerable.Range(0, steps + 1).Select(all => costs[0][Math.Min(all, costs[0].Length - 1)])];
        var chosen = new int[costs.Length][];
        chosen[0] = [.. Enumerable.Range(0, steps + 1)];
        for (int column = 1; column < costs.Length; column++)
        {
            double[] with = new double[steps + 1], own = costs[column];
            int[] choice = chosen[column] = new int[steps + 1];
            for (int all = 0; all <= steps; all++)
            {
                double least = double.PositiveInfinity;
                // More steps than leave nothing broken gain nothing.
                for (int mine = 0, most = Math.Min(all, own.Length - 1); mine <= most; mine++)
                {
                    double cost = best[all - mine] + own[mine];
                    if (cost < least) (least, choice[all]) = (cost, mine);
                }
                with[all] = least;
            }
            best = with;
        }

        int[] dealt = new int[costs.Length];
        int left = steps;
        for (int column = costs.Length - 1; column >= 0; column--)
        {
            dealt[column] = chosen[column][left];
            left -= dealt[column];
        }
        return dealt;
    }

    /// <summary>The words of a cell, measured.</summary>
    private readonly struct Cell
    {
        private readonly double blankMm;
        private readonly double[][] words;

        public Cell(string text, bool isBold, double emMm)
        {
            Typeface face = Typeface.Of(isBold ? LetterWeight.Bold : LetterWeight.Regular);
            blankMm = face.WidthMm(" ", emMm);
            words = [.. TapeFractions.Set(text).Split('\n').Select(line => TextSetter.Words(line).Select(word => face.WidthMm(word, emMm)).ToArray())];
            double blank = blankMm;
            UnbrokenMm = words.Max(line => line.Sum() + (blank * Math.Max(0, line.Length - 1)));
            LongestWordMm = words.Max(line => line.Length == 0 ? 0 : line.Max());
        }

        public double UnbrokenMm { get; }

        public double LongestWordMm { get; }

        public int LeastLines => words.Length;

        public int LinesAt(double widthMm)
        {
            if (UnbrokenMm <= widthMm) return words.Length;
            int lines = 0;
            foreach (double[] line in words)
            {
                lines++;
                double takenMm = 0;
                foreach (double word in line)
                {
                    double withMm = takenMm == 0 ? word : takenMm + blankMm + word;
                    if (withMm > widthMm && takenMm > 0) lines++;
                    takenMm = withMm > widthMm ? word : withMm;
                }
            }
            return lines;
        }
    }
}
