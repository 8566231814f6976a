namespace Hoopwright.Scheduling;

/// <summary>
/// Looks for starts by which everything ends by a time: narrows earliest and latest starts, chooses where nothing follows, and learns from
/// each dead end a set of facts that never hold together (lazy clause generation: Ohrimenko, Stuckey, Codish, Propagation via lazy clause
/// generation, Constraints 14 (2009); first unique implication point and activity as in SAT solvers; from memory).
/// </summary>
internal sealed class ScheduleSearch
{
    // Until so many dead ends what can start first is started first; then what led to dead ends is asked first.
    private const int PlainDeadEnds = 50, RestartUnit = 100, MostNogoods = 4000;

    private readonly ScheduleModel _model;
    private readonly BoundTrail _trail;
    private readonly Nogoods _nogoods;
    private readonly UseProfile[] _profiles;
    private readonly UseWindows[] _windows;
    private readonly bool[] _isDirty, _isWindowDirty;
    private readonly QuestionHeap _questions;
    private readonly List<int> _taken = [];
    private readonly int[] _liked;
    private readonly List<BoundFact> _conflict = [];
    private readonly int?[] _wanted;
    private readonly List<BoundFact> _because = [];
    private readonly Action<BoundFact, int> _fail;
    private readonly Func<BoundFact, List<BoundFact>, bool> _push;
    private int _next;
    private bool _isBroken;
    private int _mostNogoods = MostNogoods;

    /// <summary>Begins.</summary>
    /// <param name="model">The job.</param>
    /// <param name="liked">Starts that are tried first.</param>
    internal ScheduleSearch(ScheduleModel model, int[]? liked)
    {
        _model = model;
        _trail = new BoundTrail(model);
        _nogoods = new Nogoods(_trail, model);
        _profiles = [.. Enumerable.Range(0, model.Capacity.Length).Select(resource => new UseProfile(model, _trail, resource))];
        _isDirty = new bool[_profiles.Length];
        _windows = [.. Windows()];
        _isWindowDirty = new bool[_windows.Length];
        LookAtAll();
        _questions = new QuestionHeap(model.End + 1, model.Horizon);
        _liked = liked is null ? new int[model.End + 1] : [.. liked];
        _wanted = new int?[2 * (model.End + 1)];
        // A dead end is told once; what would follow from it is of no interest.
        _fail = (fact, nogood) => _isBroken |= !_isBroken && !Tighten(fact.Opposite, nogood);
        _push = Tighten;
        IsDead = !AtFirst();
    }

    /// <summary>True once it is known that nothing ends by the time asked for.</summary>
    internal bool IsDead { get; private set; }

    /// <summary>How many dead ends were met.</summary>
    internal long DeadEnds { get; private set; }

    /// <summary>No earlier end is possible, whatever is chosen.</summary>
    internal int LeastEnd => _trail.Earliest(_model.End);

    /// <summary>Asks for an end by this time or earlier, from now on.</summary>
    internal void EndBy(int time)
    {
        if (IsDead) return;
        BackTo(0);
        IsDead = !Tighten(BoundFact.NotAfter(_model.End, time), BoundTrail.Choice) || !Propagate();
    }

    /// <summary>Looks on.</summary>
    /// <param name="mostDeadEnds">How many dead ends may be met.</param>
    /// <param name="stopAsked">True ends the work.</param>
    /// <returns>A start for each activity; null when there is none, or the work has ended.</returns>
    internal int[]? Find(long mostDeadEnds, Func<bool>? stopAsked)
    {
        long last = DeadEnds + mostDeadEnds, restartAt = DeadEnds + RestartUnit;
        int restarts = 0;
        while (!IsDead)
        {
            if (!Propagate())
            {
                DeadEnds++;
                if (_trail.Level == 0)
                {
                    IsDead = true;
                    return null;
                }
                Learn();
                if (DeadEnds >= last || stopAsked?.Invoke() == true) return null;
                if (DeadEnds >= restartAt)
                {
                    BackTo(0);
                    restartAt = DeadEnds + (RestartUnit * Luby(++restarts));
                    if (_nogoods.Count > _mostNogoods)
                    {
                        _nogoods.Forget();
                        _mostNogoods += MostNogoods / 10;
                    }
                }
                continue;
            }
            if (!Choose())
            {
                int[] starts = [.. Enumerable.Range(0, _model.End + 1).Select(_trail.Earliest)];
                starts.CopyTo(_liked, 0);
                return starts;
            }
        }
        return null;
    }

    // Each resource, and sets of activities of which no two can run at once, each begun with the one that has most to do beside others.
    private IEnumerable<UseWindows> Windows()
    {
        int[] all = [.. Enumerable.Range(0, _model.End).Where(activity => _model.Duration[activity] > 0)];
        for (int resource = 0; resource < _model.Capacity.Length; resource++)
        {
            int[] users = [.. all.Where(activity => _model.MostNeed(resource, activity) > 0)];
            if (users.Length > 1) yield return new UseWindows(_model, _trail, users, resource);
        }
        HashSet<int> seen = [];
        foreach (int activity in all.OrderByDescending(each => all.Count(other => Excludes(each, other))).ThenBy(each => each))
        {
            if (!seen.Add(activity)) continue;
            List<int> set = [activity];
            foreach (int other in all.Where(each => each != activity).OrderBy(seen.Contains).ThenByDescending(each => _model.Duration[each]).ThenBy(each => each))
            {
                if (set.TrueForAll(each => Excludes(each, other))) set.Add(other);
            }
            seen.UnionWith(set);
            if (set.Count > 2) yield return new UseWindows(_model, _trail, [.. set], null);
        }

        bool Excludes(int one, int other)
        {
            for (int resource = 0; resource < _model.Capacity.Length; resource++)
            {
                if (one != other && IsShort(resource, one, other)) return true;
            }
            return false;
        }

        bool IsShort(int resource, int one, int other)
        {
            if (_model.NeedByTime(resource, one) is null && _model.NeedByTime(resource, other) is null) return _model.MostNeed(resource, one) + _model.MostNeed(resource, other) > _model.Most[resource];
            for (int time = 0; time < _model.Horizon; time++)
            {
                if (_model.NeedAt(resource, one, time) + _model.NeedAt(resource, other, time) <= _model.Capacity[resource][time]) return false;
            }
            return true;
        }
    }

    private bool AtFirst()
    {
        for (int activity = 0; activity <= _model.End; activity++)
        {
            int first = _model.FirstFrom(activity, 0), last = _model.LastUpTo(activity, _model.LastEndingBy(activity, _model.Horizon));
            if (last < first) return false;
            if (!Tighten(BoundFact.NotBefore(activity, first), BoundTrail.Choice) || !Tighten(BoundFact.NotAfter(activity, last), BoundTrail.Choice)) return false;
            foreach (ScheduleArc arc in _model.ArcsFrom[activity].Select(arc => _model.Arcs[arc]))
            {
                if (!Tighten(BoundFact.NotBefore(arc.Later, _model.ReadyAfter(arc, first)), BoundTrail.Choice)) return false;
            }
        }
        return Propagate();
    }

    // Makes a fact hold; at a contradiction what led to it is in _conflict.
    private bool Tighten(BoundFact fact, int reason, int cause = 0)
    {
        if (_trail.Holds(fact)) return true;
        if (_trail.Fails(fact))
        {
            _conflict.Clear();
            if (reason >= 0) AddOthers(reason, _conflict);
            else _trail.Explain(fact, reason, cause, _conflict);
            _conflict.Add(fact.Opposite);
            return false;
        }
        _trail.Narrow(fact, reason, cause);
        return OnStart(fact);
    }

    private bool Tighten(BoundFact fact, List<BoundFact> because)
    {
        if (_trail.Holds(fact)) return true;
        if (_trail.Fails(fact))
        {
            _conflict.Clear();
            _conflict.AddRange(because);
            _conflict.Add(fact.Opposite);
            return false;
        }
        _trail.Narrow(fact, System.Runtime.InteropServices.CollectionsMarshal.AsSpan(because));
        return OnStart(fact);
    }

    // A bound that is no possible start goes on to the next that is.
    private bool OnStart(BoundFact fact)
    {
        int start = fact.IsLatest ? _model.LastUpTo(fact.Activity, fact.Time) : _model.FirstFrom(fact.Activity, fact.Time);
        return start == fact.Time || Tighten(fact with { Time = start }, BoundTrail.NoStart);
    }

    private bool Propagate()
    {
        while (!_isBroken)
        {
            while (_next < _trail.Count)
            {
                (int side, int from, int to) = _trail.StepAt(_next++);
                int activity = side >> 1;
                for (int resource = 0; resource < _profiles.Length; resource++) _isDirty[resource] |= _profiles[resource].IsUsedBy(activity);
                for (int window = 0; window < _windows.Length; window++) _isWindowDirty[window] |= _windows[window].IsUsedBy(activity);
                if (!Waits(activity, (side & 1) == 1, to)) return Dead();
                int broken = _nogoods.Follow(side, from, to, _fail);
                if (_isBroken) return Dead();
                if (broken >= 0)
                {
                    _conflict.Clear();
                    foreach (BoundFact fact in _nogoods[broken]) _conflict.Add(fact);
                    return Dead();
                }
            }
            int dirty = Array.IndexOf(_isDirty, true);
            if (dirty < 0)
            {
                int window = Array.IndexOf(_isWindowDirty, true);
                if (window < 0) return true;
                _isWindowDirty[window] = false;
                if (!_windows[window].Push(_push, _conflict)) return Dead();
                continue;
            }
            _isDirty[dirty] = false;
            UseProfile profile = _profiles[dirty];
            if (profile.Sum() is >= 0 and var time)
            {
                profile.Gather(time, -1, profile.CapacityAt(time), _conflict);
                return Dead();
            }
            if (!profile.Push(_push)) return Dead();
        }
        return Dead();
    }

    private bool Dead()
    {
        _isBroken = false;
        LookAtAll();
        return false;
    }

    // After steps were taken back nothing is known of what is surely used.
    private void LookAtAll()
    {
        Array.Fill(_isDirty, true);
        Array.Fill(_isWindowDirty, true);
    }

    private bool Waits(int activity, bool isLatest, int bound)
    {
        if (isLatest)
        {
            foreach (int at in _model.ArcsInto[activity])
            {
                ScheduleArc arc = _model.Arcs[at];
                if (!Tighten(BoundFact.NotAfter(arc.Earlier, _model.LastReadyBy(arc, bound)), BoundTrail.Wait, at)) return false;
            }
        }
        else
        {
            foreach (int at in _model.ArcsFrom[activity])
            {
                ScheduleArc arc = _model.Arcs[at];
                if (!Tighten(BoundFact.NotBefore(arc.Later, _model.ReadyAfter(arc, bound)), BoundTrail.Wait, at)) return false;
            }
        }
        return true;
    }

    // The next choice; false when every start is known.
    private bool Choose()
    {
        if (DeadEnds > PlainDeadEnds)
        {
            while (_questions.Take() is >= 0 and var question)
            {
                (int activity, int time) = _questions.At(question);
                _taken.Add(question);
                if (time < _trail.Earliest(activity) || time >= _trail.Latest(activity)) continue;
                Decide(_liked[activity] <= time ? BoundFact.NotAfter(activity, time) : BoundFact.NotBefore(activity, time + 1));
                return true;
            }
        }
        int best = -1;
        for (int activity = 0; activity <= _model.End; activity++)
        {
            if (_trail.IsFixed(activity)) continue;
            if (best < 0 || _trail.Earliest(activity) < _trail.Earliest(best)
                || (_trail.Earliest(activity) == _trail.Earliest(best) && _trail.Latest(activity) < _trail.Latest(best))) best = activity;
        }
        if (best < 0) return false;
        Decide(BoundFact.NotAfter(best, _trail.Earliest(best)));
        return true;
    }

    private void Decide(BoundFact fact)
    {
        _trail.Open();
        _isBroken = !Tighten(fact, BoundTrail.Choice);
    }

    private void BackTo(int level)
    {
        if (level >= _trail.Level) return;
        _trail.BackTo(level);
        _next = Math.Min(_next, _trail.Count);
        foreach (int question in _taken) _questions.Reopen(question);
        _taken.Clear();
        LookAtAll();
    }

    /// <summary>Traces a dead end to the last fact of this level through which all of it came, goes back, and keeps what was learned.</summary>
    private void Learn()
    {
        // The dead end may lie wholly in levels before this one.
        int level = 0;
        foreach (BoundFact fact in _conflict) level = Math.Max(level, LevelOf(fact));
        if (level == 0)
        {
            IsDead = true;
            return;
        }
        if (level < _trail.Level) BackTo(level);
        Array.Clear(_wanted);
        int open = 0;
        foreach (BoundFact fact in _conflict) Want(fact);
        int step = _trail.Count;
        BoundFact last;
        while (true)
        {
            step--;
            (int side, int from, int _) = _trail.StepAt(step);
            if (_wanted[side] is not { } time) continue;
            last = new BoundFact(side, time);
            if (last.IsLatest ? from <= time : from >= time) continue;
            if (open == 1) break;
            _wanted[side] = null;
            open--;
            _questions.Bump(last);
            Explain(last, step);
            foreach (BoundFact fact in _because) Want(fact);
        }
        _questions.Bump(last);
        List<(BoundFact Fact, int Level)> others = [];
        for (int side = 0; side < _wanted.Length; side++)
        {
            if (side == last.Side && _wanted[side] == last.Time) continue;
            if (_wanted[side] is { } time && !Follows(new BoundFact(side, time)))
            {
                var fact = new BoundFact(side, time);
                others.Add((fact, LevelOf(fact)));
                _questions.Bump(fact);
            }
        }
        _questions.Age();
        if (others.Count == 0)
        {
            BackTo(0);
            IsDead = !Tighten(last.Opposite, BoundTrail.Choice);
            return;
        }
        others.Sort((one, other) => one.Level != other.Level ? other.Level - one.Level : one.Fact.Side - other.Fact.Side);
        BackTo(others[0].Level);
        int learned = _nogoods.Add([last, .. others.Select(each => each.Fact)], others.Select(each => each.Level).Distinct().Count() + 1);
        _isBroken = !Tighten(last.Opposite, learned);

        void Want(BoundFact fact)
        {
            int at = _trail.StepOf(fact);
            if (at < 0 || _trail.LevelOf(at) == 0) return;
            if (_wanted[fact.Side] is { } before)
            {
                if (fact.IsLatest ? before <= fact.Time : before >= fact.Time) return;
                if (LevelOf(new BoundFact(fact.Side, before)) == level) open--;
            }
            _wanted[fact.Side] = fact.Time;
            if (_trail.LevelOf(at) == level) open++;
        }
    }

    // True when a wanted fact follows from the other wanted ones, so that it need not be said.
    private bool Follows(BoundFact fact)
    {
        int step = _trail.StepOf(fact);
        Explain(fact, step);
        if (_because.Count == 0) return false;
        foreach (BoundFact cause in _because)
        {
            if (cause.Side == fact.Side) return false;
            if (LevelOf(cause) == 0) continue;
            if (_wanted[cause.Side] is not { } time || (cause.IsLatest ? time > cause.Time : time < cause.Time)) return false;
        }
        return true;
    }

    // What made a fact hold at a step, in _because.
    private void Explain(BoundFact fact, int step)
    {
        _because.Clear();
        if (_trail.NogoodOf(step) is >= 0 and var nogood) AddOthers(nogood, _because);
        else _trail.Explain(fact, step, _because);
    }

    // Of a nogood, all facts but the one that had to fail, which stands first.
    private void AddOthers(int nogood, List<BoundFact> because)
    {
        ReadOnlySpan<BoundFact> facts = _nogoods[nogood];
        for (int at = 1; at < facts.Length; at++) because.Add(facts[at]);
    }

    private int LevelOf(BoundFact fact) => _trail.StepOf(fact) is >= 0 and var step ? _trail.LevelOf(step) : 0;

    // 1 1 2 1 1 2 4 ...: Luby, Sinclair, Zuckerman (1993), from memory.
    private static int Luby(int index)
    {
        int size = 1, power = 0;
        while (size < index + 1)
        {
            power++;
            size = (2 * size) + 1;
        }
        while (size - 1 != index)
        {
            size = (size - 1) / 2;
            power--;
            index %= size;
        }
        return 1 << power;
    }
}
