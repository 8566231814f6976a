using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using Hoopwright.Server.Tests;
using Hoopwright.Server.Tests.Programs;
using Hoopwright.Sharing;

namespace Hoopwright.Bench.Sharing;

/// <summary>
/// The table of docs/sharing.md: 500 devices on 50 plans, each of which pushes an entry and asks for what is new once a second, and a page a plan
/// that waits for changes. Server and devices share the machine. Times are by the clock and want an idle machine.
/// </summary>
internal static class SharingLoad
{
    private const int Devices = 500, Plans = 50;

    /// <summary>Prints the table.</summary>
    /// <param name="args">Seconds that it takes; 600 without.</param>
    /// <param name="to">Where it is printed.</param>
    public static async Task<int> PrintAsync(string[] args, TextWriter to)
    {
        int seconds = args is [var given, ..] ? int.Parse(given, CultureInfo.InvariantCulture) : 600;
        using TestFolder folder = new();
        await using ServerProcess server = await ServerProcess.StartAsync(folder);
        SharedPlanClient[] plans = new SharedPlanClient[Plans];
        for (int plan = 0; plan < Plans; plan++)
        {
            SharedPlanClient keeper = new(server.Http, (await SharedPlanClient.ShareAsync(server.Http, new NewShare("{ \"hoopwright\": \"1.0\" }"))).KeeperKey);
            plans[plan] = new SharedPlanClient(server.Http, (await keeper.MakeLinkAsync(new NewLink(LinkKind.Edit))).Token);
        }

        ConcurrentBag<double> pushes = [], pulls = [], syncs = [];
        ConcurrentDictionary<string, int> errors = new();
        using CancellationTokenSource enough = new();
        int told = 0;
        Task[] pages = [.. plans.Select(plan => WaitAsync(plan, () => Interlocked.Increment(ref told), enough.Token))];
        List<double> memoryMb = [];
        Stopwatch clock = Stopwatch.StartNew();
        Task sampling = Task.Run(async () =>
        {
            while (clock.Elapsed.TotalSeconds < seconds)
            {
                memoryMb.Add(server.WorkingSetBytes / 1e6);
                await Task.Delay(1_000);
            }
        });
        await Task.WhenAll(Enumerable.Range(0, Devices).Select(device => RunAsync(device, plans[device % Plans])));
        await sampling;
        await enough.CancelAsync();
        await Task.WhenAll(pages);

        to.WriteLine("| | number | p50 ms | p95 ms | p99 ms | longest ms |");
        to.WriteLine("|---|---|---|---|---|---|");
        to.WriteLine(Row("pushing an entry", pushes));
        to.WriteLine(Row("asking for what is new", pulls));
        to.WriteLine(Row("both, from the moment they were due", syncs));
        to.WriteLine();
        int tenth = memoryMb.Count / 10;
        to.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{seconds} s, {errors.Values.Sum()} errors{string.Concat(errors.Select(each => $"; {each.Value} times {each.Key}"))}, {told:#,0} changes told to waiting pages; working set of the server, mean of each tenth of the run, MB: {string.Join(", ", memoryMb.Chunk(Math.Max(1, tenth)).Take(10).Select(part => part.Average().ToString("0", CultureInfo.InvariantCulture)))}."));
        to.WriteLine(await TakeOverAsync(server));
        return errors.IsEmpty ? 0 : 1;

        async Task RunAsync(int device, SharedPlanClient plan)
        {
            long cursor = 0, version = 0;
            for (int time = 0; time < seconds; time++)
            {
                double due = time + (device / (double)Devices), wait = due - clock.Elapsed.TotalSeconds;
                if (wait > 0) await Task.Delay(TimeSpan.FromSeconds(wait));
                try
                {
                    double start = clock.Elapsed.TotalMilliseconds;
                    await plan.PushAsync(Entries.Push(Entries.Measured((device * 1_000) + time)));
                    double pushed = clock.Elapsed.TotalMilliseconds;
                    PlanState state = await plan.GetAsync(cursor, version);
                    (cursor, version) = (state.Cursor, state.Version);
                    double done = clock.Elapsed.TotalMilliseconds;
                    pushes.Add(pushed - start);
                    pulls.Add(done - pushed);
                    syncs.Add(done - (due * 1_000));
                }
                catch (Exception fault) when (fault is HttpRequestException or SharingException)
                {
                    errors.AddOrUpdate(fault.Message, 1, (_, count) => count + 1);
                }
            }
        }
    }

    private static async Task<string> TakeOverAsync(ServerProcess server)
    {
        const int Count = 100_000;
        SharedPlanClient keeper = new(server.Http, (await SharedPlanClient.ShareAsync(server.Http, new NewShare("{ \"hoopwright\": \"1.0\" }"))).KeeperKey);
        Stopwatch clock = Stopwatch.StartNew();
        for (int from = 0; from < Count; from += SharingLimits.EntriesPerPush)
            await keeper.PushAsync(Entries.Push([.. Enumerable.Range(from, SharingLimits.EntriesPerPush).Select(number => Entries.Measured(number))]));
        double pushed = clock.Elapsed.TotalSeconds;
        clock.Restart();
        int taken = 0, requests = 0;
        PlanState state;
        long cursor = 0;
        do
        {
            state = await keeper.GetAsync(cursor, 1);
            cursor = state.Cursor;
            taken += state.Entries.Length;
            requests++;
        }
        while (state.More);
        return string.Create(CultureInfo.InvariantCulture, $"A site book of {taken:#,0} entries: pushed in {pushed:0.0} s, {SharingLimits.EntriesPerPush} at a time; taken over by a new device in {clock.Elapsed.TotalSeconds:0.0} s with {requests} requests.");
    }

    private static async Task WaitAsync(SharedPlanClient plan, Action told, CancellationToken enough)
    {
        try
        {
            await foreach (PlanChange _ in plan.ChangesAsync(TimeProvider.System, enough)) told();
        }
        catch (OperationCanceledException)
        {
            // The run is over.
        }
    }

    private static string Row(string what, ConcurrentBag<double> all)
    {
        double[] sorted = [.. all.Order()];
        return string.Create(CultureInfo.InvariantCulture, $"| {what} | {sorted.Length:#,0} | {At(0.50):0.0} | {At(0.95):0.0} | {At(0.99):0.0} | {At(1):0.0} |");

        double At(double part) => sorted.Length == 0 ? double.NaN : sorted[(int)Math.Ceiling(part * (sorted.Length - 1))];
    }
}
