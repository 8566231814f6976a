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
    private readonly int[] _need;
    private readonly int _capacity;
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
    /// <param name="need">What each activity needs.</param>
    /// <param name="capacity">How much there is.</param>
    internal UseWindows(ScheduleModel model, BoundTrail trail, int[] users, int[] need, int capacity)
    {
        (_model, _trail, _users, _need, _capacity) = (model, trail, users, need, capacity);
        (_byStart, _byEnd) = ([.. users], [.. users]);
        (_earliest, _latestEnd, _isUser) = (new int[need.Length], new int[need.Length], new bool[need.Length]);
        foreach (int activity in users) _isUser[activity] = true;
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
            _latestEnd[activity] = _trail.Latest(activity) + _model.Duration[activity];
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
                energy += Energy(first);
                int start = _earliest[first];
                long room = ((long)_capacity * (end - start)) - energy;
                if (room < 0)
                {
                    Gather(start, end, -room - 1, overfull);
                    return false;
                }
                bool isNarrowed = false;
                foreach (int other in _users)
                {
                    int earliest = _earliest[other], need = _need[other];
                    if (_latestEnd[other] > end && earliest >= start && (long)need * Math.Min(_model.Duration[other], end - earliest) > room)
                    {
                        Gather(start, end, 0, _because);
                        _because.Add(BoundFact.NotBefore(other, start));
                        if (!narrow(BoundFact.NotBefore(other, (int)(end - (room / need))), _because)) return false;
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
                energy += Energy(last);
                int end = _latestEnd[last];
                long room = ((long)_capacity * (end - start)) - energy;
                bool isNarrowed = false;
                foreach (int other in _users)
                {
                    int need = _need[other], length = _model.Duration[other], latestEnd = _latestEnd[other];
                    if (_earliest[other] < start && latestEnd <= end && (long)need * Math.Min(length, latestEnd - start) > room)
                    {
                        Gather(start, end, 0, _because);
                        _because.Add(BoundFact.NotAfter(other, end - length));
                        if (!narrow(BoundFact.NotAfter(other, (int)(start + (room / need)) - length), _because)) return false;
                        isNarrowed = true;
                    }
                }
                if (isNarrowed) return true;
            }
        }
        return true;
    }

    private long Energy(int activity) => (long)_need[activity] * _model.Duration[activity];

    // The facts that keep activities inside a window; so much more than needed may be left out.
    private void Gather(int start, int end, long spare, List<BoundFact> because)
    {
        because.Clear();
        foreach (int activity in _inside)
        {
            if (Energy(activity) <= spare)
            {
                spare -= Energy(activity);
                continue;
            }
            because.Add(BoundFact.NotBefore(activity, start));
            because.Add(BoundFact.NotAfter(activity, end - _model.Duration[activity]));
        }
    }
}
