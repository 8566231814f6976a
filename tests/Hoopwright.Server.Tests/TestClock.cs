namespace Hoopwright.Server.Tests;

/// <summary>A clock that stands still until it is moved; timers run by the real one.</summary>
internal sealed class TestClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 4, 18, 12, 0, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;
}
