using System.Collections.Concurrent;
using Hoopwright.Sharing;
using Microsoft.Data.Sqlite;

namespace Hoopwright.Server.Tests.Programs;

/// <summary>A real server is killed without warning while devices push.</summary>
public sealed class CrashTests(ITestOutputHelper output)
{
    private const int Kills = 100, Devices = 4;

    [Fact]
    public async Task A_server_killed_a_hundred_times_while_it_writes_loses_nothing_that_it_confirmed()
    {
        using TestFolder folder = new();
        ConcurrentBag<string> confirmed = [];
        int next = 0, killedWhileWriting = 0;
        string? key = null;
        for (int kill = 0; kill < Kills; kill++)
        {
            await using ServerProcess server = await ServerProcess.StartAsync(folder);
            key ??= (await SharedPlanClient.ShareAsync(server.Http, new NewShare(Host.Plan))).KeeperKey;
            SharedPlanClient client = new(server.Http, key);
            int open = 0, told = 0;
            TaskCompletionSource warm = new();
            Task<bool>[] devices = [.. Enumerable.Range(0, Devices).Select(async _ =>
            {
                try
                {
                    while (true)
                    {
                        Interlocked.Increment(ref open);
                        EntryPushAnswer answer = await client.PushAsync(Entries.Push([.. Enumerable.Range(0, 3).Select(_ => Entries.Measured(Interlocked.Increment(ref next), new string('x', 2_000)))]));
                        foreach (EntryReceipt receipt in answer.Receipts) confirmed.Add(receipt.Id!);
                        Interlocked.Decrement(ref open);
                        if (Interlocked.Increment(ref told) > kill % 5) warm.TrySetResult();
                    }
                }
                catch (HttpRequestException)
                {
                    return true;
                }
            })];
            // Every third time in the very first pushes, which find the server cold; else somewhere in the stream.
            if (kill % 3 > 0) await warm.Task;
            await Task.Delay(kill * 37 % 60);
            if (Volatile.Read(ref open) > 0) killedWhileWriting++;
            await server.KillAsync();
            await Task.WhenAll(devices);
            Check(folder.Database, confirmed, kill);
        }
        output.WriteLine($"{Kills} kills, {killedWhileWriting} of them while a push was open; {confirmed.Count} entries confirmed of {next} sent.");
        Assert.True(killedWhileWriting > Kills / 2, $"Only {killedWhileWriting} kills came while a push was open, so little was shown.");
        Assert.True(confirmed.Count > Kills, $"Only {confirmed.Count} entries were confirmed.");
    }

    private static void Check(string file, IReadOnlyCollection<string> confirmed, int kill)
    {
        using SqliteConnection connection = new($"Data Source={file};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "PRAGMA integrity_check";
        Assert.Equal("ok", command.ExecuteScalar());
        command.CommandText = "SELECT id FROM entry";
        HashSet<string> kept = [];
        using SqliteDataReader reader = command.ExecuteReader();
        while (reader.Read()) kept.Add(reader.GetString(0));
        string[] lost = [.. confirmed.Where(id => !kept.Contains(id))];
        Assert.True(lost.Length == 0, $"After kill {kill + 1}, {lost.Length} confirmed entries are gone, such as {lost.FirstOrDefault()}.");
    }
}
