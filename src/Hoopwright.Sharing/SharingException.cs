namespace Hoopwright.Sharing;

/// <summary>The server answered that it did not do what was asked. Without a network, or a server, <see cref="HttpRequestException"/> is thrown instead.</summary>
/// <param name="problem">What the server said.</param>
/// <param name="retryAfter">How long the server asks to wait; none where it does not say.</param>
public sealed class SharingException(SharingProblem problem, TimeSpan? retryAfter = null) : Exception(problem.Detail)
{
    /// <summary>What the server said.</summary>
    public SharingProblem Problem { get; } = problem;

    /// <summary>How long the server asks to wait before the next try; none where it does not say.</summary>
    public TimeSpan? RetryAfter { get; } = retryAfter;
}
