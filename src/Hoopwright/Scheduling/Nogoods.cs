namespace Hoopwright.Scheduling;

/// <summary>Sets of facts that were found not to hold all at once, each watched at two of its facts.</summary>
internal sealed class Nogoods
{
    private readonly BoundTrail _trail;
    private readonly List<int>?[][] _watching;
    private readonly List<BoundFact[]> _all = [];
    private readonly List<int> _levels = [];

    internal Nogoods(BoundTrail trail, ScheduleModel model)
    {
        _trail = trail;
        _watching = [.. Enumerable.Range(0, 2 * (model.End + 1)).Select(_ => new List<int>?[model.Horizon + 2])];
    }

    /// <summary>How many there are.</summary>
    internal int Count => _all.Count;

    /// <summary>The facts of one.</summary>
    internal ReadOnlySpan<BoundFact> this[int nogood] => _all[nogood];

    /// <summary>Adds one of two facts or more; the first is the one that is known to fail next.</summary>
    /// <param name="facts">The facts; the second is the one that held last of the others.</param>
    /// <param name="levels">How many levels they come from: the fewer, the longer it is of use.</param>
    internal int Add(BoundFact[] facts, int levels)
    {
        _all.Add(facts);
        _levels.Add(levels);
        Watch(facts[0], _all.Count - 1);
        Watch(facts[1], _all.Count - 1);
        return _all.Count - 1;
    }

    /// <summary>
    /// Looks at those that watch a side that was narrowed. For each of which all facts but one hold, that one is made to fail.
    /// </summary>
    /// <param name="side">The side.</param>
    /// <param name="from">Its bound before.</param>
    /// <param name="to">Its bound now.</param>
    /// <param name="fails">Makes a fact fail because of a nogood.</param>
    /// <returns>A nogood of which all facts hold; -1 when there is none.</returns>
    internal int Follow(int side, int from, int to, Action<BoundFact, int> fails)
    {
        bool isLatest = (side & 1) == 1;
        (int first, int last) = isLatest ? (to, from - 1) : (from + 1, to);
        for (int time = Math.Max(first, 0); time <= last; time++)
        {
            if (_watching[side][time] is not { Count: > 0 } list) continue;
            int kept = 0;
            for (int at = 0; at < list.Count; at++)
            {
                int nogood = list[at];
                BoundFact[] facts = _all[nogood];
                if (facts[0].Side == side && facts[0].Time == time) (facts[0], facts[1]) = (facts[1], facts[0]);
                int other = _trail.Fails(facts[0]) ? 0 : Elsewhere(facts);
                if (other > 0)
                {
                    (facts[1], facts[other]) = (facts[other], facts[1]);
                    Watch(facts[1], nogood);
                    continue;
                }
                list[kept++] = nogood;
                if (other == 0) continue;
                if (_trail.Holds(facts[0]))
                {
                    for (at++; at < list.Count; at++) list[kept++] = list[at];
                    list.RemoveRange(kept, list.Count - kept);
                    return nogood;
                }
                fails(facts[0], nogood);
            }
            list.RemoveRange(kept, list.Count - kept);
        }
        return -1;
    }

    /// <summary>Forgets the half that is of least use. Only while no choice stands, since steps rest on them.</summary>
    internal void Forget()
    {
        int[] order = [.. Enumerable.Range(0, _all.Count).OrderBy(at => _levels[at]).ThenByDescending(at => at)];
        (BoundFact[] Facts, int Levels)[] kept = [.. order.Take(order.Length / 2).Order().Select(at => (_all[at], _levels[at]))];
        foreach (List<int>?[] side in _watching) Array.Clear(side);
        _all.Clear();
        _levels.Clear();
        foreach ((BoundFact[] facts, int levels) in kept)
        {
            // What holds for good is left out; what fails for good makes the whole of no use.
            BoundFact[] open = [.. facts.Where(fact => !_trail.Holds(fact))];
            if (open.Length >= 2 && !Array.Exists(open, _trail.Fails)) Add(open, levels);
        }
    }

    // A fact that does not hold yet: -1 when there is none.
    private int Elsewhere(BoundFact[] facts)
    {
        for (int at = 2; at < facts.Length; at++)
        {
            if (!_trail.Holds(facts[at])) return at;
        }
        return -1;
    }

    private void Watch(BoundFact fact, int nogood) => (_watching[fact.Side][fact.Time] ??= []).Add(nogood);
}
