using System.Threading.Channels;

namespace Hoopwright.Server.Api;

/// <summary>Wakes those who wait for changes of a plan. It says only that something changed: whoever wakes up looks how far the plan is.</summary>
internal sealed class ChangeFeed
{
    private readonly Lock gate = new();
    private readonly Dictionary<string, List<Channel<bool>>> waiting = new(StringComparer.Ordinal);

    /// <summary>Wakes all who wait for this plan.</summary>
    public void Tell(string share)
    {
        lock (gate)
        {
            if (!waiting.TryGetValue(share, out List<Channel<bool>>? channels)) return;
            // Each holds one call at most: who has not yet looked will see this change, too.
            foreach (Channel<bool> channel in channels) channel.Writer.TryWrite(true);
        }
    }

    /// <summary>Waits for changes of a plan from now on, until disposed.</summary>
    public Waiter Wait(string share)
    {
        Channel<bool> channel = Channel.CreateBounded<bool>(1);
        lock (gate)
        {
            if (!waiting.TryGetValue(share, out List<Channel<bool>>? channels)) waiting[share] = channels = [];
            channels.Add(channel);
        }
        return new Waiter(this, share, channel);
    }

    private void Leave(string share, Channel<bool> channel)
    {
        lock (gate)
        {
            waiting[share].Remove(channel);
            if (waiting[share].Count == 0) waiting.Remove(share);
        }
    }

    /// <summary>One who waits.</summary>
    internal sealed class Waiter(ChangeFeed feed, string share, Channel<bool> channel) : IDisposable
    {
        /// <summary>Returns once something changed, or after a while.</summary>
        /// <returns>False when it is time to stop.</returns>
        public async Task<bool> NextAsync(TimeSpan longest, TimeProvider clock, CancellationToken stop)
        {
            using CancellationTokenSource late = new(longest, clock);
            using CancellationTokenSource either = CancellationTokenSource.CreateLinkedTokenSource(stop, late.Token);
            try
            {
                await channel.Reader.ReadAsync(either.Token);
            }
            catch (OperationCanceledException)
            {
                // Long enough, or time to stop.
            }
            return !stop.IsCancellationRequested;
        }

        public void Dispose() => feed.Leave(share, channel);
    }
}
