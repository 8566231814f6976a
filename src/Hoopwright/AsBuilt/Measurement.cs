using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.AsBuilt;

/// <summary>What was measured of one thing, against what is planned.</summary>
/// <param name="Of">The thing.</param>
/// <param name="Readings">The readings in order of time.</param>
public sealed record Measurement(Measurable Of, ImmutableArray<MeasuredReading> Readings)
{
    /// <summary>The reading that is used; null when none counts.</summary>
    public MeasuredReading? Used => Readings.LastOrDefault(reading => reading.Standing == ReadingStanding.Used);

    /// <summary>What was measured; null when nothing that counts was.</summary>
    public Length? Value => Used?.Value;

    /// <summary>Measured less planned; null when nothing that counts was measured.</summary>
    public Length? Off => Value is { } value ? value - Of.Planned : null;

    /// <summary>True when it is further from the plan than the tolerance.</summary>
    public bool IsOut => Off is { } off && off.Abs().Metres > Of.Tolerance.Metres + 1e-9;

    /// <summary>True when the last reading waits for a second one that agrees with it.</summary>
    public bool IsInDoubt => Readings.LastOrDefault(reading => reading.Standing != ReadingStanding.TakenBack)?.Standing is ReadingStanding.Waiting or ReadingStanding.Unreadable;

    /// <summary>Longest less shortest of the readings that count.</summary>
    public Length Spread => Counted is { Length: > 1 } counted ? counted.Max() - counted.Min() : Length.Zero;

    /// <summary>The readings that count, in order of time.</summary>
    public ImmutableArray<Length> Counted =>
        [.. Readings.Where(reading => reading.Standing is ReadingStanding.Used or ReadingStanding.Earlier).Select(reading => reading.Value).OfType<Length>()];
}
