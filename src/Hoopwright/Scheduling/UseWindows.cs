namespace Hoopwright.Scheduling;

/// <summary>
/// What activities use of one resource within a window of time, started at their earliest and ended at their latest: where the window holds
/// less than that there is a dead end, and where it would with one more, that one is pushed out as far as needed (energetic edge finding with
/// explanations: Schutt, Feydy, Stuckey, Explaining time-table-edge-finding propagation, CPAIOR 2013, from memory, without its time-table part).
/// </summary>
internal sealed class UseWindows
{
    private readonly ScheduleModel _model;
    private readonly BoundTrail _trail;
    private readonly int[] _users;
    private readonly long[] _energy;
    private readonly int[] _need;
    private readonly long[]?[] _needBefore;
    private readonly long[] _room;
    private readonly bool[] _isUser;
    private readonly int[] _byStart;
    private readonly int[] _byEnd;
    private readonly int[] _earliest;
    private readonly int[] _latestEnd;
    private readonly List<int> _inside = [];
    private readonly List<BoundFact> _because = [];

    /// <summary>Windows of a resource, or of activities of which no two can run at once.</summary>
    /// <param name="model">The job.</param>
    /// <param name="trail">Earliest and latest starts.</param>
    /// <param name="users">Those that use it.</param>
    /// <param name="resource">The resource; null for activities of which no two can run at once.</param>
    internal UseWindows(ScheduleModel model, BoundTrail trail, int[] users, int? resource)
    {
        (_model, _trail, _users) = (model, trail, users);
        (_byStart, _byEnd) = ([.. users], [.. users]);
        int count = model.End + 1;
        (_earliest, _latestEnd, _isUser, _energy, _need, _needBefore) = (new int[count], new int[count], new bool[count], new long[count], new int[count], new long[count][]);
        foreach (int activity in users)
        {
            _isUser[activity] = true;
            _need[activity] = resource is { } of ? model.MostNeed(of, activity) : 1;
            _needBefore[activity] = resource is { } at && model.NeedByTime(at, activity) is not null ? Summed(time => model.NeedAt(at, activity, time)) : null;
            _energy[activity] = _needBefore[activity] is { } before ? Least(activity, before) : (long)_need[activity] * model.Duration[activity];
        }
        _room = Summed(time => resource is { } of ? model.Capacity[of][time] : 1);
    }

    /// <summary>True when an activity uses it.</summary>
    internal bool IsUsedBy(int activity) => _isUser[activity];

    /// <summary>Looks at all windows, and pushes what does not fit.</summary>
    /// <param name="narrow">Takes a fact with what it rests on; false when that is a dead end.</param>
    /// <param name="overfull">Takes the facts of a dead end.</param>
    /// <returns>False at a dead end.</returns>
    internal bool Push(Func<BoundFact, List<BoundFact>, bool> narrow, List<BoundFact> overfull)
    {
        foreach (int activity in _users)
        {
            _earliest[activity] = _trail.Earliest(activity);
            _latestEnd[activity] = _model.EndOf(activity, _trail.Latest(activity));
        }
        Array.Sort(_byStart, (one, other) => _earliest[other] != _earliest[one] ? _earliest[other] - _earliest[one] : one - other);
        Array.Sort(_byEnd, (one, other) => _latestEnd[one] != _latestEnd[other] ? _latestEnd[one] - _latestEnd[other] : one - other);
        int before = int.MinValue;
        foreach (int last in _byEnd)
        {
            int end = _latestEnd[last];
            if (end == before) continue;
            before = end;
            _inside.Clear();
            long energy = 0;
            foreach (int first in _byStart)
            {
                if (_latestEnd[first] > end) continue;
                _inside.Add(first);
                energy += _energy[first];
                int start = _earliest[first];
                long room = _room[end] - _room[start] - energy;
                if (room < 0)
                {
                    Gather(start, end, -room - 1, overfull);
                    return false;
                }
                bool isNarrowed = false;
                foreach (int other in _users)
                {
                    int earliest = _earliest[other];
                    if (_latestEnd[other] > end && earliest >= start && earliest < end && Within(other, earliest, end) > room)
                    {
                        Gather(start, end, 0, _because);
                        _because.Add(BoundFact.NotBefore(other, start));
                        if (!narrow(BoundFact.NotBefore(other, FirstFitting(other, end, room)), _because)) return false;
                        isNarrowed = true;
                    }
                }
                // The order in which windows are gone through no longer holds: this is looked at again.
                if (isNarrowed) return true;
            }
        }
        return Back(narrow);
    }

    // The same from the other end: what could end within a window and does not fit must start before it.
    private bool Back(Func<BoundFact, List<BoundFact>, bool> narrow)
    {
        int before = int.MaxValue;
        foreach (int first in _byStart)
        {
            int start = _earliest[first];
            if (start == before) continue;
            before = start;
            _inside.Clear();
            long energy = 0;
            foreach (int last in _byEnd)
            {
                if (_earliest[last] < start) continue;
                _inside.Add(last);
                energy += _energy[last];
                int end = _latestEnd[last];
                long room = _room[end] - _room[start] - energy;
                bool isNarrowed = false;
                foreach (int other in _users)
                {
                    int latestEnd = _latestEnd[other];
                    if (_earliest[other] < start && latestEnd <= end && latestEnd > start && Within(other, start, latestEnd) > room)
                    {
                        Gather(start, end, 0, _because);
                        _because.Add(BoundFact.NotAfter(other, _model.LastEndingBy(other, end)));
                        if (!narrow(BoundFact.NotAfter(other, _model.LastEndingBy(other, LastFitting(other, start, room))), _because)) return false;
                        isNarrowed = true;
                    }
                }
                if (isNarrowed) return true;
            }
        }
        return true;
    }

    private long[] Summed(Func<int, int> amount)
    {
        long[] before = new long[_model.Times + 1];
        for (int time = 0; time < _model.Times; time++) before[time + 1] = before[time] + amount(time);
        return before;
    }

    private long Least(int activity, long[] before)
    {
        long least = long.MaxValue;
        for (int start = _model.FirstFrom(activity, 0); start <= _model.Horizon && _model.EndOf(activity, start) is var end && end <= _model.Horizon; start = _model.FirstFrom(activity, start + 1))
            least = Math.Min(least, before[end] - before[start]);
        return least == long.MaxValue ? 0 : least;
    }

    // What an activity uses at the least between two times, when it is at it from the first or until the last.
    private long Within(int activity, int start, int end) =>
        Math.Min(_energy[activity], _needBefore[activity] is { } before ? before[end] - before[start] : (long)_need[activity] * (end - start));

    // The first start by which what is used up to an end finds room.
    private int FirstFitting(int activity, int end, long room)
    {
        if (_needBefore[activity] is not { } before) return (int)(end - (room / _need[activity]));
        int at = Array.BinarySearch(before, 0, end + 1, before[end] - room);
        if (at < 0) return ~at;
        while (at > 0 && before[at - 1] == before[at]) at--;
        return at;
    }

    // The last end by which what is used from a start on finds room.
    private int LastFitting(int activity, int start, long room)
    {
        if (_needBefore[activity] is not { } before) return (int)(start + (room / _need[activity]));
        int at = Array.BinarySearch(before, start, before.Length - start, before[start] + room);
        if (at < 0) return ~at - 1;
        while (at < before.Length - 1 && before[at + 1] == before[at]) at++;
        return at;
    }

    // The facts that keep activities inside a window; so much more than needed may be left out.
    private void Gather(int start, int end, long spare, List<BoundFact> because)
    {
        because.Clear();
        foreach (int activity in _inside)
        {
            if (_energy[activity] <= spare)
            {
                spare -= _energy[activity];
                continue;
            }
            because.Add(BoundFact.NotBefore(activity, start));
            because.Add(BoundFact.NotAfter(activity, _model.LastEndingBy(activity, end)));
        }
    }
}
