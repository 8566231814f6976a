using Hoopwright.Quantities;
using Hoopwright.Sheets.Fonts;

namespace Hoopwright.Sheets.Drawings;

/// <summary>
/// Lays the rows of dimensions of one figure: outside it, stacked outward in the order asked for. A text that its gap
/// is too narrow for goes out beyond the line on a short leader; if even that has no room the row turns into running marks.
/// </summary>
internal sealed class RowPlacer
{
    internal const string Layer = "dimensions";
    private const double FirstMm = 4, PitchMm = 7.5, NearLineMm = 2.5, BaseMm = 1.2, OverMm = 1.5, OffPointMm = 1.2, TickMm = 1.1;
    private const double OutMm = 6.5, BetweenMm = 2.4, TurnedGapMm = 0.4;
    private static readonly double EmMm = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm);
    private readonly SheetBox figure, room;
    private readonly List<Mark> marks = [];
    private readonly List<Dimension> dimensions = [];
    private readonly double[] depthMm = [FirstMm, FirstMm, FirstMm, FirstMm];

    internal RowPlacer(SheetBox figure, SheetBox room) => (this.figure, this.room) = (figure, room);

    internal IReadOnlyList<Mark> Marks => marks;

    internal IReadOnlyList<Dimension> Dimensions => dimensions;

    /// <summary>How far the rows reach out from the figure on a side, mm; 0 when there are none.</summary>
    internal double DepthMm(Side side) => depthMm[(int)side] <= FirstMm ? 0 : depthMm[(int)side];

    internal void Place(RowRequest row, ModelView view)
    {
        SheetPoint[] points = [.. row.Points.Select(view.At)];
        string[] texts = [.. row.Texts.Select(TapeFractions.Set)];
        double[] along = [.. points.Select(point => Along(row.Side, point))];
        int before = marks.Count, measured = dimensions.Count;
        double depth = depthMm[(int)row.Side];
        // At a corner two rows may want the same place: the later one then goes further out.
        for (int step = 0; step <= 12; step++)
        {
            marks.RemoveRange(before, marks.Count - before);
            dimensions.RemoveRange(measured, dimensions.Count - measured);
            depthMm[(int)row.Side] = depth + (step * PitchMm / 2);
            if (row.IsRunning || !TryChain(row, points, along, texts))
                Running(row, points, along, texts);
            if (!Overlaps(before))
                break;
        }
    }

    private bool Overlaps(int from)
    {
        TurnedBox[] earlier = [.. marks.Take(from).OfType<TextMark>().Select(text => text.Box)];
        if (earlier.Length == 0) return false;
        return marks.Skip(from).OfType<TextMark>().Select(text => text.Box).Any(later => Array.Exists(earlier, box => box.Meets(later)));
    }

    private bool TryChain(RowRequest row, SheetPoint[] points, double[] along, string[] texts)
    {
        bool outward = row.Side is Side.Above or Side.Left;
        double start = depthMm[(int)row.Side], line = start + (outward ? NearLineMm : PitchMm - 2);
        List<(double Middle, string Text, int First, int Last)> fitting = [], overTicks = [], outlying = [];
        // Where the text of a run stands between the figure and the line, the places within the run have their ticks alone.
        HashSet<int> ticksAlone = [];
        for (int gap = 0; gap < texts.Length; gap++)
        {
            int last = RunEnd(texts, along, gap);
            double middle = (along[gap] + along[last + 1]) / 2, width = Math.Abs(along[last + 1] - along[gap]);
            if (last > gap)
            {
                string times = row.AddsUp?.Invoke(gap, last + 1) == false ? $"{last - gap + 1} equal" : $"{last - gap + 1} × {texts[gap]}";
                string[] ways = [times, ""];
                if (row.SumText is { } sum)
                    ways = [$"{times} = {TapeFractions.Set(sum(gap, last + 1))}", times];
                string? fits = Array.Find(ways, way => way.Length > 0 && Fits(way, width));
                if (fits is null) outlying.Add((middle, ways.Last(way => way.Length > 0), gap, last + 1));
                else overTicks.Add((middle, fits, gap, last + 1));
                if (fits is not null && !outward) ticksAlone.UnionWith(Enumerable.Range(gap + 1, last - gap));
                gap = last;
            }
            else if (texts[gap].Length > 0)
            {
                (Fits(texts[gap], width) ? fitting : outlying).Add((middle, texts[gap], gap, gap + 1));
            }
        }

        outlying.Sort((one, other) => one.Middle.CompareTo(other.Middle));
        (double low, double high) = Limits(row.Side);
        double[] widths = [.. outlying.Select(item => Width(item.Text))];
        if (outlying.Count > 0 && Spread.Needed(widths, BetweenMm) > high - low)
            return false;
        double[] placed = outlying.Count == 0 ? [] : Spread.Apart([.. outlying.Select(item => item.Middle)], widths, BetweenMm, low, high);
        if (outlying.Count > 2 && outlying.Select((item, index) => Math.Abs(item.Middle - placed[index])).Max() > 30)
            return false;

        // Places within a run belong to no dimension's end.
        HashSet<int> within = [.. overTicks.Concat(outlying).SelectMany(item => Enumerable.Range(item.First + 1, item.Last - item.First - 1))];
        LineMark?[] extensions = [.. points.Select(point => Extension(row.Side, point, line))];
        LineMark[] ticks = [.. along.Select(at => Tick(row.Side, at, line))];
        for (int index = 0; index < points.Length; index++)
        {
            if (!ticksAlone.Contains(index) && extensions[index] is { } extension) marks.Add(extension with { IsDimension = !within.Contains(index) });
        }
        marks.Add(Line(At(row.Side, along.Min(), line), At(row.Side, along.Max(), line)) with { IsDimension = true });
        for (int index = 0; index < ticks.Length; index++)
            marks.Add(ticks[index] with { IsDimension = !within.Contains(index) });
        foreach ((double middle, string text, int from, int to) in fitting)
            Measure(from, to, Text(row.Side, middle, line + (outward ? BaseMm : -BaseMm), text));
        // The text of a run lies over the ticks within the run, so it keeps clear of them.
        foreach ((double middle, string text, int from, int to) in overTicks)
            Measure(from, to, Text(row.Side, middle, line + (outward ? BaseMm + TickMm : -BaseMm - TickMm), text));
        for (int index = 0; index < outlying.Count; index++)
        {
            (double middle, string text, int from, int to) = outlying[index];
            double elbow = line + (outward ? 4.6 : 1.6), at = line + (outward ? OutMm + 0.4 : OutMm);
            double foot = outward ? at - (Typeface.FallEm * EmMm) : at - (Typeface.RiseEm * EmMm) - 0.2;
            LineMark leader = Line(At(row.Side, middle, line), At(row.Side, middle, elbow), At(row.Side, placed[index], foot));
            marks.Add(leader with { IsDimension = true });
            Measure(from, to, Text(row.Side, placed[index], at, text), leader);
        }
        for (int gap = 0; gap < texts.Length; gap++)
        {
            // A gap without words has its part of the line all the same.
            if (texts[gap].Length == 0) Dimensioned(gap, gap + 1, Text(row.Side, (along[gap] + along[gap + 1]) / 2, line, ""));
        }

        depthMm[(int)row.Side] = Math.Max(
            start + PitchMm, outlying.Count == 0 ? 0 : line + OutMm + (outward ? (Typeface.CapitalEm * EmMm) + 1.6 : 1.6));
        return true;

        void Measure(int from, int to, TextMark text, params Mark[] leader)
        {
            marks.Add(text with { IsDimension = true });
            Dimensioned(from, to, text, [.. leader, text]);
        }

        void Dimensioned(int from, int to, TextMark text, params Mark[] more)
        {
            SheetPoint begin = At(row.Side, along[from], line), end = At(row.Side, along[to], line);
            Mark?[] own = [extensions[from], extensions[to], Line(begin, end), ticks[from], ticks[to], .. more];
            dimensions.Add(new Dimension(IsUpright(row.Side) ? DimensionKind.Up : DimensionKind.Across, points[from], points[to], end, text, [.. own.OfType<Mark>()]));
        }
    }

    private void Running(RowRequest row, SheetPoint[] points, double[] along, string[] texts)
    {
        double line = depthMm[(int)row.Side] + 2, straight = line + 1.8, textAt = line + 5.6;
        int[] order = [.. Enumerable.Range(0, points.Length).OrderBy(index => along[index])];
        double height = (Typeface.RiseEm + Typeface.FallEm) * EmMm;
        (double low, double high) = Limits(row.Side);
        string[] marked = row.IsPlain ? ["", .. texts] : row.IsRunning ? ["0", .. texts] : Sums(row, texts);
        double[] placed = Spread.Apart([.. order.Select(index => along[index])], [.. order.Select(_ => height)], TurnedGapMm, low, high);
        marks.Add(Line(At(row.Side, along.Min(), line), At(row.Side, along.Max(), line)));
        for (int place = 0; place < order.Length; place++)
        {
            int index = order[place];
            int before = marks.Count;
            if (Extension(row.Side, points[index], line) is { } extension) marks.Add(extension);
            marks.Add(index == 0 ? new LineMark(Layer, SheetPath.Circle(At(row.Side, along[0], line), 0.9), LineRole.Dimension) : Tick(row.Side, along[index], line));
            marks.Add(Line(At(row.Side, along[index], line), At(row.Side, along[index], straight), At(row.Side, placed[place], textAt - 0.5)));
            TextMark text = TurnedText(row.Side, placed[place], textAt, marked[index]);
            marks.Add(text);
            if (index == 0 || row.IsPlain) continue;
            for (int mark = before; mark < marks.Count; mark++)
                marks[mark] = marks[mark] with { IsDimension = true };
            dimensions.Add(new Dimension(IsUpright(row.Side) ? DimensionKind.MarkUp : DimensionKind.MarkAcross, points[0], points[index], At(row.Side, placed[place], textAt - 0.5), text, [.. marks.Skip(before)]));
        }

        depthMm[(int)row.Side] = textAt + marked.Max(Width) + 1.5;
    }

    private static string[] Sums(RowRequest row, string[] texts) => row.SumText is { } sum
        ? ["0", .. Enumerable.Range(1, texts.Length).Select(index => TapeFractions.Set(sum(0, index)))]
        : ["", .. texts];

    /// <summary>The last gap of a run of three or more equal gaps of which each is too narrow for its own text.</summary>
    private static int RunEnd(string[] texts, double[] along, int first)
    {
        int last = first;
        while (last + 1 < texts.Length && texts[last + 1] == texts[first] && !Fits(texts[first], Math.Abs(along[last + 2] - along[last + 1])))
            last++;
        return texts[first].Length > 0 && last - first >= 2 && !Fits(texts[first], Math.Abs(along[first + 1] - along[first])) ? last : first;
    }

    private static bool Fits(string text, double widthMm) => Width(text) + 2 * 1.2 <= widthMm;

    private static double Width(string text) => Typeface.Of(LetterWeight.Regular).WidthMm(text, EmMm);

    private (double Low, double High) Limits(Side side) => IsUpright(side) ? (room.TopMm, room.BottomMm) : (room.LeftMm, room.RightMm);

    private static bool IsUpright(Side side) => side is Side.Left or Side.Right;

    private static double Along(Side side, SheetPoint point) => IsUpright(side) ? point.YMm : point.XMm;

    private SheetPoint At(Side side, double along, double outMm) => side switch
    {
        Side.Above => new(along, figure.TopMm - outMm),
        Side.Below => new(along, figure.BottomMm + outMm),
        Side.Left => new(figure.LeftMm - outMm, along),
        Side.Right => new(figure.RightMm + outMm, along),
    };

    private LineMark? Extension(Side side, SheetPoint point, double line)
    {
        SheetPoint end = At(side, Along(side, point), line + OverMm);
        double length = point.DistanceMm(end);
        return length > OffPointMm ? Line(point.Towards(end, OffPointMm / length), end) : null;
    }

    private LineMark Tick(Side side, double along, double line)
    {
        SheetPoint at = At(side, along, line);
        return new LineMark(Layer, SheetPath.Through(at.Moved(-TickMm, TickMm), at.Moved(TickMm, -TickMm)), LineRole.Outline);
    }

    private static LineMark Line(params SheetPoint[] points) => new(Layer, SheetPath.Through(points), LineRole.Dimension);

    private TextMark Text(Side side, double along, double outMm, string text) => new(Layer, At(side, along, outMm), text)
    {
        Align = TextAlign.Middle,
        Turn = IsUpright(side) ? Angle.FromDegrees(90) : Angle.Zero,
        Clears = true,
    };

    private TextMark TurnedText(Side side, double along, double outMm, string text)
    {
        double half = Typeface.CapitalEm * EmMm / 2;
        return new(Layer, At(side, along + half, outMm), text)
        {
            Align = side is Side.Below or Side.Left ? TextAlign.End : TextAlign.Start,
            Turn = IsUpright(side) ? Angle.Zero : Angle.FromDegrees(90),
            Clears = true,
        };
    }
}
