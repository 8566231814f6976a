namespace Hoopwright.Server.Api;

/// <summary>How much one address and one link may ask for.</summary>
internal sealed record RateOptions
{
    /// <summary>Requests a second from one address, in the long run; ten times as many at once. A whole crew may be behind one address.</summary>
    public int AddressPerSecond { get; init; } = 100;

    /// <summary>Requests a second with one link, in the long run; ten times as many at once. A whole crew may use one link.</summary>
    public int LinkPerSecond { get; init; } = 50;

    /// <summary>Plans that one address may share in an hour.</summary>
    public int SharesPerHour { get; init; } = 60;

    /// <summary>Pages that may wait for changes with one link at the same time.</summary>
    public int WaitingPerLink { get; init; } = 100;
}
