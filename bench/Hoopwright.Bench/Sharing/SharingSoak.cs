using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Net.Sockets;
using System.Text;
using Hoopwright.Server.Tests;
using Hoopwright.Server.Tests.Programs;
using Hoopwright.Sharing;
using Microsoft.Data.Sqlite;

namespace Hoopwright.Bench.Sharing;

/// <summary>
/// A server that works for an hour while things go wrong: killed, stopped for seconds, its database held by another program, copied, half
/// requests, nonsense. Devices push one entry a second each and try again until it is confirmed. In the end everything confirmed must be there,
/// the database sound, and the memory of a server that ran undisturbed for a while no larger than soon after its start.
/// </summary>
internal static class SharingSoak
{
    private const int Devices = 60, Plans = 12;
    private static readonly TimeSpan Between = TimeSpan.FromSeconds(20);

    /// <summary>Runs it and prints what happened.</summary>
    /// <param name="args">Minutes that it takes; 60 without.</param>
    /// <param name="to">Where it is printed.</param>
    /// <returns>0 when nothing was lost.</returns>
    public static async Task<int> PrintAsync(string[] args, TextWriter to)
    {
        TimeSpan lasts = TimeSpan.FromMinutes(args is [var given, ..] ? double.Parse(given, CultureInfo.InvariantCulture) : 60);
        using TestFolder folder = new();
        ServerProcess server = await ServerProcess.StartAsync(folder);
        string[] keys = new string[Plans];
        for (int plan = 0; plan < Plans; plan++) keys[plan] = (await SharedPlanClient.ShareAsync(server.Http, new NewShare("{ \"hoopwright\": \"1.0\" }"))).KeeperKey;

        ConcurrentBag<string>[] confirmed = [.. keys.Select(_ => new ConcurrentBag<string>())];
        ConcurrentDictionary<string, int> errors = new(), faults = new();
        List<(double Minutes, double AgeMinutes, double Megabytes)> memory = [];
        Stopwatch clock = Stopwatch.StartNew(), age = Stopwatch.StartNew();
        Task[] devices = [.. Enumerable.Range(0, Devices).Select(RunAsync)];
        // A death in every seventh place, so that each server lives for some minutes.
        Func<Task<string>>[] wrong = [StalledAsync, HeldAsync, HalfAsync, CopiedAsync, NonsenseAsync, StalledAsync, KilledAsync];
        for (int turn = 0; clock.Elapsed < lasts; turn++)
        {
            await Task.Delay(Between);
            memory.Add((clock.Elapsed.TotalMinutes, age.Elapsed.TotalMinutes, server.WorkingSetBytes / 1e6));
            string what = await wrong[turn % wrong.Length]();
            faults.AddOrUpdate(what, 1, (_, count) => count + 1);
        }
        await Task.WhenAll(devices);

        int lost = 0, kept = 0;
        for (int plan = 0; plan < Plans; plan++)
        {
            HashSet<string> there = await AllAsync(new SharedPlanClient(server.Http, keys[plan]));
            kept += there.Count;
            lost += confirmed[plan].Count(id => !there.Contains(id));
        }
        await server.DisposeAsync();
        string sound = Sound(folder.Database);
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{lasts.TotalMinutes:0} min, {Devices} devices on {Plans} plans: {confirmed.Sum(each => each.Count):#,0} entries confirmed, {kept:#,0} kept, {lost} of the confirmed lost; database {sound}, {new FileInfo(folder.Database).Length / 1e6:0} MB."));
        to.WriteLine($"What went wrong on purpose: {Told(faults)}.");
        to.WriteLine($"What devices were told meanwhile, and tried again: {Told(errors)}.");
        to.WriteLine($"Working set of the server, minutes since the start of the run (since its own start): {string.Join(", ", memory.Where((_, at) => at % 6 == 5).Select(each => string.Create(CultureInfo.InvariantCulture, $"{each.Minutes:0} ({each.AgeMinutes:0.0}): {each.Megabytes:0} MB")))}.");
        return lost == 0 && sound == "ok" ? 0 : 1;

        async Task RunAsync(int device)
        {
            int plan = device % Plans;
            long cursor = 0, version = 0;
            for (int time = 0; clock.Elapsed < lasts; time++)
            {
                double due = time + (device / (double)Devices), wait = due - clock.Elapsed.TotalSeconds;
                if (wait > 0) await Task.Delay(TimeSpan.FromSeconds(wait));
                EntryPush push = Entries.Push(Entries.Measured((device * 100_000) + time));
                while (true)
                {
                    try
                    {
                        SharedPlanClient client = new(server.Http, keys[plan]);
                        foreach (EntryReceipt receipt in (await client.PushAsync(push)).Receipts) confirmed[plan].Add(receipt.Id!);
                        PlanState state = await client.GetAsync(cursor, version);
                        (cursor, version) = (state.Cursor, state.Version);
                        break;
                    }
                    catch (Exception fault) when (fault is HttpRequestException or SharingException or ObjectDisposedException)
                    {
                        errors.AddOrUpdate(fault is SharingException { Problem.Code: { } code } ? code : fault.GetType().Name, 1, (_, count) => count + 1);
                        await Task.Delay(250);
                    }
                }
            }
        }

        async Task<string> KilledAsync()
        {
            await server.KillAsync();
            await server.DisposeAsync();
            string sound = Sound(folder.Database);
            server = await ServerProcess.StartAsync(folder);
            age.Restart();
            return sound == "ok" ? "killed and started again" : $"killed, and the database was {sound}";
        }

        async Task<string> StalledAsync()
        {
            server.Signal("STOP");
            await Task.Delay(3_000);
            server.Signal("CONT");
            return "stopped for 3 s";
        }

        async Task<string> HeldAsync()
        {
            using SqliteConnection other = new($"Data Source={folder.Database};Pooling=False");
            other.Open();
            using SqliteTransaction held = other.BeginTransaction();
            await Task.Delay(4_000);
            return "database held by another program for 4 s";
        }

        async Task<string> CopiedAsync()
        {
            string copy = Path.Combine(Path.GetDirectoryName(folder.Database)!, "copy.db");
            File.Delete(copy);
            (int code, string said) = await ServerProcess.RunToEndAsync("", "backup", copy, "--data", folder.Database);
            return code == 0 && Sound(copy) == "ok" ? "copied while it ran" : "a copy failed: " + said;
        }

        async Task<string> HalfAsync()
        {
            byte[] half = Encoding.ASCII.GetBytes($"POST /api/v1/plan/entries HTTP/1.1\r\nHost: x\r\nAuthorization: Bearer {keys[0]}\r\nContent-Type: application/json\r\nContent-Length: 4000\r\n\r\n{{\"entries\":[");
            for (int each = 0; each < 20; each++)
            {
                using TcpClient line = new();
                await line.ConnectAsync(server.Http.BaseAddress!.Host, server.Http.BaseAddress.Port);
                await line.GetStream().WriteAsync(half);
            }
            return "20 requests that broke off in the middle";
        }

        async Task<string> NonsenseAsync()
        {
            for (int each = 0; each < 20; each++)
            {
                using HttpRequestMessage request = new(HttpMethod.Post, "api/v1/plan/entries") { Content = new StringContent(new string('[', each * 5_000), Encoding.UTF8, "application/json") };
                request.Headers.Authorization = new("Bearer", keys[0]);
                using HttpResponseMessage answer = await server.Http.SendAsync(request);
                if ((int)answer.StatusCode is < 400 or >= 500) return $"nonsense answered with {(int)answer.StatusCode}";
            }
            return "20 bodies of nonsense, refused";
        }
    }

    private static async Task<HashSet<string>> AllAsync(SharedPlanClient client)
    {
        HashSet<string> all = [];
        PlanState state;
        long cursor = 0;
        do
        {
            state = await client.GetAsync(cursor, 1);
            cursor = state.Cursor;
            all.UnionWith(state.Entries.Select(Entries.IdOf));
        }
        while (state.More);
        return all;
    }

    private static string Sound(string file)
    {
        using SqliteConnection connection = new($"Data Source={file};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "PRAGMA integrity_check";
        return (string)command.ExecuteScalar()!;
    }

    private static string Told(ConcurrentDictionary<string, int> all) =>
        all.IsEmpty ? "nothing" : string.Join("; ", all.OrderBy(each => each.Key, StringComparer.Ordinal).Select(each => string.Create(CultureInfo.InvariantCulture, $"{each.Value:#,0} times {each.Key}")));
}
