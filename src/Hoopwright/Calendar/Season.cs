namespace Hoopwright.Calendar;

/// <summary>One season: each step in the planned order as early as it fits, in weather and hours of this season.</summary>
internal sealed class Season
{
    private readonly SeasonPlan _plan;
    private readonly int[] _busy, _ends;
    private readonly int[][] _inUse;

    internal Season(SeasonPlan plan)
    {
        _plan = plan;
        (_busy, _ends) = (new int[plan.Slots.Count], new int[plan.Job.Steps.Length]);
        _inUse = [.. plan.Job.Tools.Select(_ => new int[plan.Slots.Count])];
    }

    /// <summary>Goes through it.</summary>
    /// <param name="fit">By kind of weather, which slots are fit; null for any weather.</param>
    /// <param name="work">Slots of one person that each step takes.</param>
    /// <param name="waited">Takes for each step by how many slots it ends later for weather.</param>
    /// <returns>When all is done; past the last slot when it is not.</returns>
    internal int Run(bool[]?[] fit, int[] work, int[] waited)
    {
        Array.Clear(_busy);
        foreach (int[] tool in _inUse) Array.Clear(tool);
        int last = 0;
        foreach (int step in _plan.Order)
        {
            int ready = _plan.Job.ReadyAfterDone(_plan.Job.Steps[step]);
            foreach ((int earlier, int[]? table) in _plan.Waits[step]) ready = Math.Max(ready, table is null ? _ends[earlier] : table[_ends[earlier]]);
            (int start, int end) = Place(step, ready, work[step], fit[step]);
            waited[step] = fit[step] is null ? 0 : Math.Max(0, end - Place(step, ready, work[step], null).End);
            if (end > _plan.Slots.Count) return end;
            int[] takes = _plan.Takes[step];
            for (int slot = start; slot < end; slot++)
            {
                if (fit[step] is { } may && !may[slot]) continue;
                _busy[slot] += takes[slot];
                for (int tool = 0; tool < _inUse.Length && takes[slot] > 0; tool++) _inUse[tool][slot] += _plan.Job.ToolsTaken[step][tool];
            }
            _ends[step] = end;
            last = Math.Max(last, end);
        }
        return last;
    }

    // Whether hands or tools are wanting for a step in a slot.
    private bool Lacks(int step, int slot)
    {
        if (_busy[slot] + _plan.Takes[step][slot] > _plan.There(slot)) return true;
        for (int tool = 0; tool < _inUse.Length; tool++)
        {
            if (_inUse[tool][slot] + _plan.Job.ToolsTaken[step][tool] > _plan.Job.Tools[tool].Count) return true;
        }
        return false;
    }

    // The first start from which a step can be carried through.
    private (int Start, int End) Place(int step, int ready, int work, bool[]? fit)
    {
        int[] takes = _plan.Takes[step], dayOf = _plan.Slots.DayOf;
        bool inOneGo = _plan.Job.Steps[step].InOneGo;
        int count = _plan.Slots.Count, start = ready;
        while (start < count)
        {
            if (takes[start] == 0 || fit?[start] == false || Lacks(step, start))
            {
                start++;
                continue;
            }
            int slot = start, left = work, planned = _plan.Job.Work[step], blocked = -1;
            for (; left > 0 && slot < count; slot++)
            {
                if (inOneGo && (dayOf[slot] != dayOf[start] || takes[slot] == 0 || fit?[slot] == false))
                {
                    // What takes longer than planned is ended all the same, after hours or in worse weather; what would not fit as planned is not begun.
                    if (planned <= 0) left = 0;
                    else blocked = slot;
                    break;
                }
                if (takes[slot] == 0 || fit?[slot] == false) continue;
                if (Lacks(step, slot))
                {
                    if (!inOneGo || planned > 0) blocked = slot;
                    else left = 0;
                    break;
                }
                left -= takes[slot];
                planned -= takes[slot];
            }
            if (blocked < 0 && left <= 0) return (start, slot);
            start = Math.Max(start + 1, blocked);
        }
        return (count, count + 1);
    }
}
