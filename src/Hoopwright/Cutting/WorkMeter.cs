namespace Hoopwright.Cutting;

/// <summary>Counts elementary steps against a budget, and asks the caller now and then whether to stop.</summary>
internal sealed class WorkMeter(long budget, Func<bool>? stopAsked)
{
    private const long StepsBetweenQuestions = 4_000_000;
    private long _untilQuestion = StepsBetweenQuestions;
    private bool _stopped;

    /// <summary>Steps spent so far.</summary>
    public long Spent { get; private set; }

    /// <summary>True when no more work may be done.</summary>
    public bool IsOver => _stopped || Spent >= budget;

    /// <summary>Steps that may still be spent.</summary>
    public long Left => _stopped ? 0 : Math.Max(0, budget - Spent);

    /// <summary>Counts work done.</summary>
    public void Spend(long steps)
    {
        Spent += steps;
        _untilQuestion -= steps;
        if (_untilQuestion > 0)
            return;
        _untilQuestion = StepsBetweenQuestions;
        _stopped |= stopAsked?.Invoke() ?? false;
    }
}
