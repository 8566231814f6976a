using System.Globalization;
using System.Text;

namespace Hoopwright.Frames;

/// <summary>An answer as tables for a terminal.</summary>
internal static class FrameAnswerTable
{
    private const int MostRows = 24;
    private static readonly string[] Moves = ["node", "ux mm", "uy mm", "uz mm", "rx mrad", "ry mrad", "rz mrad"];
    private static readonly string[] Holds = ["node", "fx N", "fy N", "fz N", "mx N·m", "my N·m", "mz N·m"];
    private static readonly string[] Forces = ["member", "n N", "vy N", "vz N", "t N·m", "my N·m", "mz N·m"];

    internal static string Of(FrameAnswer answer)
    {
        var text = new StringBuilder();
        for (int at = 0; at < answer.States.Length; at++)
            Combination(text, answer, at);
        foreach (var (combination, code) in answer.Unsolved)
            Line(text, $"Combination {answer.Model.Combinations[combination].Id}: not solved, {code}");
        return text.ToString();
    }

    private static void Combination(StringBuilder text, FrameAnswer answer, int at)
    {
        var (model, state) = (answer.Model, answer.States[at]);
        string solved = state.Iterations == 1 ? "solved once" : $"solved {Whole(state.Iterations)} times";
        Line(text, $"Combination {model.Combinations[answer.Solved[at]].Id}: {Kind(model.Analysis.Kind)}, {solved}, out of balance {state.Residual.ToString("0.0e-0", CultureInfo.InvariantCulture)}");
        if (at < answer.Buckling.Length)
            Line(text, "Buckles at this load times " + string.Join(", ", answer.Buckling[at].Factors.Select(factor => factor.ToString("0.0000", CultureInfo.InvariantCulture))));
        if (at < answer.Paths.Length)
            Line(text, "Path, as multiples of this load: " + string.Join(", ", answer.Paths[at].Select(point => Number(point.LoadFactor))));
        Block(text, "Displacements", "that move most", Moves, Rows(model.Nodes.Length, node => model.Nodes[node].Id, state.Displacements.AsSpan(), 6, 1000, first: 0, _ => true));
        Block(text, "Reactions on the frame", "that hold most", Holds, Rows(model.Nodes.Length, node => model.Nodes[node].Id, state.Reactions.AsSpan(), 6, 1, first: 0, node => model.Nodes[node].Held != Freedoms.None || model.Nodes[node].Springs is not null));
        Block(text, "Section forces, each member at its start and at its end", "with the greatest moments", Forces, Rows(2 * model.Members.Length, end => model.Members[end / 2].Id + (end % 2 == 0 ? " from" : " to"), state.SectionForces.AsSpan(), 6, 1, first: 3, _ => true));
        text.Append('\n');
    }

    private static List<(double Rank, int At, string[] Cells)> Rows(int count, Func<int, string> name, ReadOnlySpan<double> values, int width, double scale, int first, Func<int, bool> wanted)
    {
        double nothing = 0;
        foreach (double value in values)
            nothing = Math.Max(nothing, Math.Abs(value) * 1e-9);
        var rows = new List<(double, int, string[])>();
        for (int at = 0; at < count; at++)
        {
            if (!wanted(at))
                continue;
            var row = values.Slice(width * at, width);
            double rank = 0;
            for (int axis = first; axis < first + 3; axis++)
                rank += row[axis] * row[axis];
            string[] cells = new string[width + 1];
            cells[0] = name(at);
            for (int cell = 0; cell < width; cell++)
                cells[cell + 1] = Number(Math.Abs(row[cell]) <= nothing ? 0 : row[cell] * scale);
            rows.Add((rank, at, cells));
        }
        return rows;
    }

    private static void Block(StringBuilder text, string title, string most, string[] heads, List<(double Rank, int At, string[] Cells)> rows)
    {
        var shown = rows.Count <= MostRows ? rows : [.. rows.OrderByDescending(row => row.Rank).ThenBy(row => row.At).Take(MostRows).OrderBy(row => row.At)];
        Line(text, rows.Count <= MostRows ? title : $"{title}: the {Whole(MostRows)} {most}, of {Whole(rows.Count)}");
        string[][] cells = [heads, .. shown.Select(row => row.Cells)];
        int[] widths = [.. heads.Select((_, column) => cells.Max(row => row[column].Length))];
        foreach (string[] row in cells)
            Line(text, "  " + string.Join("  ", row.Select((cell, column) => column == 0 ? cell.PadRight(widths[column]) : cell.PadLeft(widths[column]))).TrimEnd());
    }

    private static string Kind(FrameAnalysisKind kind) => kind switch
    {
        FrameAnalysisKind.Linear => "linear",
        FrameAnalysisKind.SecondOrder => "second order",
        FrameAnalysisKind.Buckling => "linear, with buckling",
        FrameAnalysisKind.LargeDisplacement => "large displacements",
    };

    private static string Number(double value)
    {
        string text = value.ToString("0.000", CultureInfo.InvariantCulture);
        return text == "-0.000" ? "0.000" : text;
    }

    private static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
