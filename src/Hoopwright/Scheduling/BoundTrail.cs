namespace Hoopwright.Scheduling;

/// <summary>
/// Earliest and latest starts while they are being narrowed, with the reason for every step, so that steps can be taken back and a dead
/// end can be traced to what caused it.
/// </summary>
internal sealed class BoundTrail
{
    /// <summary>Reasons that are not facts written down: a choice, a wait for an earlier or a later activity, a time that may be no start.</summary>
    internal const int Choice = -1, Wait = -2, NoStart = -3;

    private const int Written = -4;

    private readonly ScheduleModel _model;
    private readonly int[] _bound;
    private readonly int[] _head;
    private readonly List<Step> _steps = [];
    private readonly List<int> _levels = [];
    private readonly List<BoundFact> _facts = [];

    internal BoundTrail(ScheduleModel model)
    {
        _model = model;
        int count = model.End + 1;
        _bound = new int[2 * count];
        _head = new int[2 * count];
        Array.Fill(_head, -1);
        for (int activity = 0; activity < count; activity++) _bound[(2 * activity) + 1] = model.Horizon;
    }

    /// <summary>How many steps were taken.</summary>
    internal int Count => _steps.Count;

    /// <summary>How many choices were made.</summary>
    internal int Level => _levels.Count;

    /// <summary>Earliest start.</summary>
    internal int Earliest(int activity) => _bound[2 * activity];

    /// <summary>Latest start.</summary>
    internal int Latest(int activity) => _bound[(2 * activity) + 1];

    /// <summary>True when the start is known.</summary>
    internal bool IsFixed(int activity) => _bound[2 * activity] == _bound[(2 * activity) + 1];

    /// <summary>True when a fact holds.</summary>
    internal bool Holds(BoundFact fact) => fact.IsLatest ? _bound[fact.Side] <= fact.Time : _bound[fact.Side] >= fact.Time;

    /// <summary>True when a fact cannot hold any more.</summary>
    internal bool Fails(BoundFact fact) => fact.IsLatest ? Earliest(fact.Activity) > fact.Time : Latest(fact.Activity) < fact.Time;

    /// <summary>The side that a step narrowed, from where, to where.</summary>
    internal (int Side, int From, int To) StepAt(int index) => (_steps[index].Side, _steps[index].From, _steps[index].To);

    /// <summary>Begins a new level.</summary>
    internal void Open() => _levels.Add(_steps.Count);

    /// <summary>Narrows a side; the fact must be new and possible.</summary>
    /// <param name="fact">What holds from now on.</param>
    /// <param name="reason">One of the named reasons, or the number of a nogood.</param>
    /// <param name="cause">For a wait, its place among the arcs of the job.</param>
    internal void Narrow(BoundFact fact, int reason, int cause = 0) => Take(fact, reason, cause, 0);

    /// <summary>Narrows a side for facts that are written down.</summary>
    internal void Narrow(BoundFact fact, ReadOnlySpan<BoundFact> because)
    {
        int start = _facts.Count;
        _facts.AddRange(because);
        Take(fact, Written, start, because.Length);
    }

    /// <summary>Takes back all steps after a level.</summary>
    /// <param name="level">The level to go back to.</param>
    internal void BackTo(int level)
    {
        if (level >= _levels.Count) return;
        int first = _levels[level];
        for (int at = _steps.Count - 1; at >= first; at--)
        {
            Step step = _steps[at];
            _bound[step.Side] = step.From;
            _head[step.Side] = step.Before;
            if (step.Reason == Written) _facts.RemoveRange(step.Cause, _facts.Count - step.Cause);
        }
        _steps.RemoveRange(first, _steps.Count - first);
        _levels.RemoveRange(level, _levels.Count - level);
    }

    /// <summary>The step with which a fact began to hold; -1 when it held from the start.</summary>
    internal int StepOf(BoundFact fact)
    {
        int at = _head[fact.Side];
        while (at >= 0 && (fact.IsLatest ? _steps[at].From <= fact.Time : _steps[at].From >= fact.Time)) at = _steps[at].Before;
        return at;
    }

    /// <summary>The level of a step.</summary>
    internal int LevelOf(int step)
    {
        int low = 0, high = _levels.Count;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (_levels[middle] <= step) low = middle + 1;
            else high = middle;
        }
        return low;
    }

    /// <summary>The number of the nogood that a step rests on; negative for other reasons.</summary>
    internal int NogoodOf(int step) => _steps[step].Reason >= 0 ? _steps[step].Reason : -1;

    /// <summary>The facts that made a fact hold at a step, as weak as they may be; none for a choice, and for a nogood, which has its own.</summary>
    internal void Explain(BoundFact fact, int step, List<BoundFact> because)
    {
        Step taken = _steps[step];
        if (taken.Reason != Written) Explain(fact, taken.Reason, taken.Cause, because);
        else
        {
            for (int at = 0; at < taken.Facts; at++) because.Add(_facts[taken.Cause + at]);
        }
    }

    /// <summary>The facts by which a fact follows from a wait or from a time that may be no start.</summary>
    internal void Explain(BoundFact fact, int reason, int cause, List<BoundFact> because)
    {
        switch (reason)
        {
            case Wait:
                ScheduleArc arc = _model.Arcs[cause];
                because.Add(fact.IsLatest ? BoundFact.NotAfter(arc.Later, _model.ReadyAfter(arc, fact.Time + 1) - 1) : BoundFact.NotBefore(arc.Earlier, _model.LastReadyBy(arc, fact.Time - 1) + 1));
                break;
            case NoStart:
                because.Add(fact.IsLatest ? BoundFact.NotAfter(fact.Activity, _model.FirstFrom(fact.Activity, fact.Time + 1) - 1) : BoundFact.NotBefore(fact.Activity, _model.LastUpTo(fact.Activity, fact.Time - 1) + 1));
                break;
        }
    }

    private void Take(BoundFact fact, int reason, int cause, int facts)
    {
        _steps.Add(new Step(fact.Side, _bound[fact.Side], fact.Time, _head[fact.Side], reason, cause, facts));
        _head[fact.Side] = _steps.Count - 1;
        _bound[fact.Side] = fact.Time;
    }

    private readonly record struct Step(int Side, int From, int To, int Before, int Reason, int Cause, int Facts);
}
