namespace Hoopwright.Sharing;

/// <summary>How often the stream of changes says something, so that a silent network is told from a quiet plan.</summary>
public static class SignsOfLife
{
    /// <summary>The server says at least this often that it is there.</summary>
    public static readonly TimeSpan Alive = TimeSpan.FromSeconds(20);

    /// <summary>After so much silence a device takes the connection for lost: two signs missed, and a slow network.</summary>
    public static readonly TimeSpan Silence = TimeSpan.FromSeconds(50);
}
