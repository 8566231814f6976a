namespace Hoopwright.Scheduling;

/// <summary>A fact about when an activity starts: not before a time, or not after it.</summary>
/// <param name="Side">Twice the activity's number for "not before", one more for "not after".</param>
/// <param name="Time">The time.</param>
internal readonly record struct BoundFact(int Side, int Time)
{
    /// <summary>The activity.</summary>
    internal int Activity => Side >> 1;

    /// <summary>True for "not after".</summary>
    internal bool IsLatest => (Side & 1) == 1;

    /// <summary>What holds when this does not.</summary>
    internal BoundFact Opposite => IsLatest ? NotBefore(Activity, Time + 1) : NotAfter(Activity, Time - 1);

    /// <summary>The activity starts at this time or later.</summary>
    internal static BoundFact NotBefore(int activity, int time) => new(2 * activity, time);

    /// <summary>The activity starts at this time or earlier.</summary>
    internal static BoundFact NotAfter(int activity, int time) => new((2 * activity) + 1, time);
}
