namespace Hoopwright.Scheduling;

/// <summary>Questions of the form "does the activity start by this time?", those that took part in recent dead ends first.</summary>
internal sealed class QuestionHeap
{
    private const double TooGreat = 1e100, Growth = 1 / 0.95;

    private readonly int _times;
    private readonly double[] _weight;
    private readonly int[] _place;
    private readonly List<int> _heap = [];
    private double _step = 1;

    internal QuestionHeap(int activities, int horizon)
    {
        _times = horizon + 1;
        _weight = new double[activities * _times];
        _place = new int[_weight.Length];
        Array.Fill(_place, -1);
    }

    /// <summary>A fact took part in a dead end.</summary>
    internal void Bump(BoundFact fact)
    {
        int time = fact.IsLatest ? fact.Time : fact.Time - 1;
        if (time < 0 || time >= _times) return;
        int question = (fact.Activity * _times) + time;
        _weight[question] += _step;
        if (_weight[question] > TooGreat)
        {
            for (int at = 0; at < _weight.Length; at++) _weight[at] /= TooGreat;
            _step /= TooGreat;
        }
        if (_place[question] < 0) Put(question);
        else Up(_place[question]);
    }

    /// <summary>A dead end was dealt with: older ones count for less.</summary>
    internal void Age() => _step *= Growth;

    /// <summary>Puts a question back that may be open again.</summary>
    internal void Reopen(int question)
    {
        if (_place[question] < 0) Put(question);
    }

    /// <summary>Takes the question out that matters most; -1 when there is none.</summary>
    internal int Take()
    {
        if (_heap.Count == 0) return -1;
        int top = _heap[0], last = _heap[^1];
        _heap.RemoveAt(_heap.Count - 1);
        _place[top] = -1;
        if (_heap.Count > 0)
        {
            _heap[0] = last;
            _place[last] = 0;
            Down(0);
        }
        return top;
    }

    /// <summary>The activity and the time of a question.</summary>
    internal (int Activity, int Time) At(int question) => (question / _times, question % _times);

    private void Put(int question)
    {
        _heap.Add(question);
        _place[question] = _heap.Count - 1;
        Up(_heap.Count - 1);
    }

    private bool IsBefore(int one, int other) => _weight[one] != _weight[other] ? _weight[one] > _weight[other] : one < other;

    private void Up(int at)
    {
        int question = _heap[at];
        while (at > 0 && IsBefore(question, _heap[(at - 1) / 2]))
        {
            Set(at, _heap[(at - 1) / 2]);
            at = (at - 1) / 2;
        }
        Set(at, question);
    }

    private void Down(int at)
    {
        int question = _heap[at];
        while ((2 * at) + 1 < _heap.Count)
        {
            int child = (2 * at) + 1;
            if (child + 1 < _heap.Count && IsBefore(_heap[child + 1], _heap[child])) child++;
            if (!IsBefore(_heap[child], question)) break;
            Set(at, _heap[child]);
            at = child;
        }
        Set(at, question);
    }

    private void Set(int at, int question)
    {
        _heap[at] = question;
        _place[question] = at;
    }
}
