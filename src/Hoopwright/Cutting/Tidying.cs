namespace Hoopwright.Cutting;

/// <summary>
/// Makes a plan easier to cut without making it dearer: fewer different patterns, then longer leftovers. It tries exchanges
/// between two patterns until none helps, so what it reaches is better but not proven best.
/// </summary>
internal sealed class Tidying
{
    private readonly CutProblem _problem;
    private readonly WorkMeter _meter;
    private readonly List<(Pattern Pattern, int Times)> _parts;

    private Tidying(CutProblem problem, Mixture plan, WorkMeter meter)
    {
        (_problem, _meter) = (problem, meter);
        _parts = [.. plan.Parts.OrderBy(part => part.Pattern, Pattern.InOrder)];
    }

    /// <summary>The tidied plan: no dearer, no more patterns.</summary>
    public static Mixture Of(CutProblem problem, Mixture plan, WorkMeter meter)
    {
        var tidying = new Tidying(problem, plan, meter);
        while (!meter.IsOver && (tidying.TryFewerPatterns() || tidying.TryLongerLeftover()))
        {
        }

        var tidied = new Mixture { Method = plan.Method };
        foreach (var (pattern, times) in tidying._parts)
            tidied.Add(pattern, times);
        return tidied;
    }

    /// <summary>Cuts the pieces of two patterns by one that is already in the plan and at most one more.</summary>
    private bool TryFewerPatterns()
    {
        for (var one = 0; one < _parts.Count; one++)
        {
            for (var other = one + 1; other < _parts.Count && !_meter.IsOver; other++)
            {
                if (_parts[one].Pattern.Bar != _parts[other].Pattern.Bar)
                    continue;
                var bars = _parts[one].Times + _parts[other].Times;
                var together = new int[_problem.Types];
                AddTo(together, _parts[one]);
                AddTo(together, _parts[other]);
                for (var kept = -1; kept < _parts.Count; kept++)
                {
                    if (kept != one && kept != other && TryWith(kept, one, other, together, bars))
                        return true;
                }
            }
        }

        return false;
    }

    private bool TryWith(int kept, int one, int other, int[] together, int bars)
    {
        var pattern = kept < 0 ? null : _parts[kept].Pattern;
        if (pattern is not null && pattern.Bar != _parts[one].Pattern.Bar)
            return false;
        var most = pattern is null ? 0 : Math.Min(bars, pattern.TimesWithin(together));
        _meter.Spend(20 + (10 * most));
        for (var times = pattern is null ? 0 : 1; times <= most; times++)
        {
            var rest = together.ToArray();
            if (pattern is not null)
                AddTo(rest, (pattern, -times));
            if (EqualShare(rest, bars - times, _parts[one].Pattern.Bar) is not { } shared)
                continue;
            var before = (_parts[one].Pattern.Cost * _parts[one].Times) + (_parts[other].Pattern.Cost * _parts[other].Times);
            var after = ((pattern?.Cost ?? 0) * times) + ((shared.Pattern?.Cost ?? 0) * (bars - times));
            if (after > before)
                continue;
            if (pattern is not null)
                _parts[kept] = (pattern, _parts[kept].Times + times);
            _parts.RemoveAt(other);
            _parts.RemoveAt(one);
            if (shared.Pattern is not null)
                Put(shared.Pattern, bars - times);
            return true;
        }

        return false;
    }

    /// <summary>The one pattern that shares pieces equally among bars; none for no bars and no pieces; null where it cannot be.</summary>
    private (Pattern? Pattern, bool Ok)? EqualShare(int[] counts, int bars, int bar)
    {
        if (bars == 0)
            return Array.TrueForAll(counts, count => count == 0) ? (null, true) : null;
        var each = new int[counts.Length];
        var used = 0L;
        for (var type = 0; type < counts.Length; type++)
        {
            if (counts[type] % bars != 0)
                return null;
            each[type] = counts[type] / bars;
            used += each[type] * _problem.Weight[type];
        }

        return used > 0 && used <= _problem.Bars[bar].Capacity ? (Pattern.Of(_problem, bar, each), true) : null;
    }

    /// <summary>Moves a piece, or exchanges two, between two patterns cut equally often, so that the longer rest grows.</summary>
    private bool TryLongerLeftover()
    {
        for (var one = 0; one < _parts.Count; one++)
        {
            for (var other = 0; other < _parts.Count && !_meter.IsOver; other++)
            {
                if (one == other || _parts[one].Times != _parts[other].Times)
                    continue;
                _meter.Spend(50);
                // How much more the first must give for its rest to become the longer of the two.
                var shortBy = Rest(_parts[other].Pattern) - Rest(_parts[one].Pattern);
                var room = _problem.Bars[_parts[other].Pattern.Bar].Capacity - _parts[other].Pattern.Used;
                foreach (var given in _parts[one].Pattern.Types)
                {
                    foreach (var taken in _parts[other].Pattern.Types.Prepend(-1))
                    {
                        var gain = _problem.Weight[given] - (taken < 0 ? 0 : _problem.Weight[taken]);
                        if (gain > 0 && gain <= room && gain * _problem.Grain > shortBy && TryMove(one, other, given, taken))
                            return true;
                    }
                }
            }
        }

        return false;
    }

    private bool TryMove(int from, int to, int given, int taken)
    {
        var (first, second) = (new int[_problem.Types], new int[_problem.Types]);
        AddTo(first, (_parts[from].Pattern, 1));
        AddTo(second, (_parts[to].Pattern, 1));
        first[given]--;
        second[given]++;
        if (taken >= 0)
        {
            first[taken]++;
            second[taken]--;
        }

        var (giver, taker) = (Pattern.Of(_problem, _parts[from].Pattern.Bar, first), Pattern.Of(_problem, _parts[to].Pattern.Bar, second));
        if (giver.Types.Length == 0 || giver.Cost + taker.Cost > _parts[from].Pattern.Cost + _parts[to].Pattern.Cost)
            return false;
        var times = _parts[from].Times;
        _parts.RemoveAt(Math.Max(from, to));
        _parts.RemoveAt(Math.Min(from, to));
        Put(giver, times);
        Put(taker, times);
        return true;
    }

    private void Put(Pattern pattern, int times)
    {
        var at = _parts.FindIndex(part => Pattern.Same.Instance.Equals(part.Pattern, pattern));
        if (at >= 0)
            _parts[at] = (pattern, _parts[at].Times + times);
        else
            _parts.Add((pattern, times));
    }

    private long Rest(Pattern pattern) => _problem.Bars[pattern.Bar].Usable - (pattern.Used * _problem.Grain);

    private static void AddTo(int[] counts, (Pattern Pattern, int Times) part)
    {
        for (var i = 0; i < part.Pattern.Types.Length; i++)
            counts[part.Pattern.Types[i]] += part.Pattern.Counts[i] * part.Times;
    }
}
