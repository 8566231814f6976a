namespace Hoopwright.Scheduling;

/// <summary>
/// What is surely used of one resource at each time, by activities whose earliest end is later than their latest start. Where there is too
/// little left beside that, activities are pushed on or back, each push with the facts that it rests on (time-table propagation with
/// pointwise explanations: Schutt, Feydy, Stuckey, Wallace, Explaining the cumulative propagator, Constraints 16 (2011), from memory).
/// </summary>
internal sealed class UseProfile
{
    private readonly ScheduleModel _model;
    private readonly BoundTrail _trail;
    private readonly int _resource;
    private readonly int[] _capacity;
    private readonly int[] _users;
    private readonly int[] _use;
    private readonly List<(bool IsFree, int Need, int Activity)> _over = [];

    internal UseProfile(ScheduleModel model, BoundTrail trail, int resource)
    {
        (_model, _trail, _resource, _capacity) = (model, trail, resource, model.Capacity[resource]);
        _users = [.. Enumerable.Range(0, model.End).Where(IsUsedBy)];
        _use = new int[model.Times];
    }

    /// <summary>How much there is at a time.</summary>
    internal int CapacityAt(int time) => _capacity[time];

    /// <summary>True when an activity takes some of it.</summary>
    internal bool IsUsedBy(int activity) => _model.MostNeed(_resource, activity) > 0 && _model.Duration[activity] > 0;

    /// <summary>Adds up what is surely used.</summary>
    /// <returns>A time at which that is more than there is; -1 when there is none.</returns>
    internal int Sum()
    {
        Array.Clear(_use);
        foreach (int activity in _users)
        {
            int end = _model.EndOf(activity, _trail.Earliest(activity));
            for (int time = _trail.Latest(activity); time < end; time++) _use[time] += Need(activity, time);
        }
        for (int time = 0; time < _use.Length; time++)
        {
            if (_use[time] > _capacity[time]) return time;
        }
        return -1;
    }

    /// <summary>Pushes activities out of times at which too little is left for them.</summary>
    /// <param name="narrow">Takes a fact with what it rests on; false when that is a dead end.</param>
    /// <returns>False at a dead end.</returns>
    internal bool Push(Func<BoundFact, List<BoundFact>, bool> narrow)
    {
        List<BoundFact> because = [];
        foreach (int activity in _users)
        {
            while (!_trail.IsFixed(activity) && Blocked(activity, _trail.Earliest(activity), isFromEnd: true) is >= 0 and var time)
            {
                Gather(time, activity, _capacity[time] - Need(activity, time), because);
                because.Add(BoundFact.NotBefore(activity, _model.FirstEndingAfter(activity, time)));
                if (!narrow(BoundFact.NotBefore(activity, time + 1), because)) return false;
            }
            while (!_trail.IsFixed(activity) && Blocked(activity, _trail.Latest(activity), isFromEnd: false) is >= 0 and var time)
            {
                Gather(time, activity, _capacity[time] - Need(activity, time), because);
                because.Add(BoundFact.NotAfter(activity, time));
                if (!narrow(BoundFact.NotAfter(activity, _model.LastEndingBy(activity, time)), because)) return false;
            }
        }
        return true;
    }

    /// <summary>The facts by which more than so much is surely used at a time; those that hold for good first, then the largest users.</summary>
    internal void Gather(int time, int without, int most, List<BoundFact> because)
    {
        because.Clear();
        _over.Clear();
        foreach (int activity in _users)
        {
            if (activity == without || _trail.Latest(activity) > time || _model.EndOf(activity, _trail.Earliest(activity)) <= time || Need(activity, time) is 0) continue;
            bool isFree = ForGood(BoundFact.NotAfter(activity, time)) && ForGood(BoundFact.NotBefore(activity, _model.FirstEndingAfter(activity, time)));
            _over.Add((isFree, Need(activity, time), activity));
        }
        _over.Sort((one, other) => one.IsFree != other.IsFree ? (one.IsFree ? -1 : 1) : one.Need != other.Need ? other.Need - one.Need : one.Activity - other.Activity);
        int sum = 0;
        foreach ((_, int need, int activity) in _over)
        {
            if (sum > most) break;
            sum += need;
            because.Add(BoundFact.NotAfter(activity, time));
            because.Add(BoundFact.NotBefore(activity, _model.FirstEndingAfter(activity, time)));
        }
    }

    private int Need(int activity, int time) => _model.NeedAt(_resource, activity, time);

    private bool ForGood(BoundFact fact) => _trail.StepOf(fact) is var step && (step < 0 || _trail.LevelOf(step) == 0);

    // A time within an activity, started at a bound, at which the others leave too little; -1 when there is none.
    private int Blocked(int activity, int start, bool isFromEnd)
    {
        int length = _model.EndOf(activity, start) - start;
        int ownFrom = _trail.Latest(activity), ownTo = _model.EndOf(activity, _trail.Earliest(activity));
        for (int step = 0; step < length; step++)
        {
            int time = isFromEnd ? start + length - 1 - step : start + step, need = Need(activity, time);
            int own = time >= ownFrom && time < ownTo ? need : 0;
            if (need > 0 && _use[time] - own + need > _capacity[time]) return time;
        }
        return -1;
    }
}
