using Hoopwright.Sharing;

namespace Hoopwright.Server.Tests.Programs;

#pragma warning disable CA1416 // Each test is skipped where it cannot be.
/// <summary>Disks that are full or may only be read, as a real server meets them.</summary>
public sealed class DiskTests
{
    [Fact]
    public async Task A_file_that_may_not_grow_is_told_and_loses_nothing_that_was_confirmed()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "The limit on file sizes is set as on Linux.");
        using TestFolder folder = new();
        string key;
        List<string> confirmed = [];
        // The system refuses to let any file grow beyond 400 KB (RLIMIT_FSIZE; the shell counts blocks of 512 bytes).
        await using (ServerProcess server = await ServerProcess.StartAsync(folder, "trap '' XFSZ; ulimit -f 800; "))
        {
            key = (await SharedPlanClient.ShareAsync(server.Http, new NewShare(Host.Plan))).KeeperKey;
            SharedPlanClient client = new(server.Http, key);
            SharingException? refused = null;
            for (int number = 0; refused is null && number < 500; number++)
            {
                try
                {
                    confirmed.Add((await client.PushAsync(Entries.Push(Entries.Measured(number, new string('x', 5_000))))).Receipts.Single().Id!);
                }
                catch (SharingException full)
                {
                    refused = full;
                }
            }
            Assert.Equal(("storage-full", 507), (refused?.Problem.Code, refused?.Problem.Status));
            // What is there can still be read.
            Assert.Equal(confirmed, (await client.GetAsync()).Entries.Select(Entries.IdOf));
            await server.KillAsync();
        }
        Assert.NotEmpty(confirmed);
        await using ServerProcess again = await ServerProcess.StartAsync(folder);
        Assert.Equal(confirmed, (await new SharedPlanClient(again.Http, key).GetAsync()).Entries.Select(Entries.IdOf));
    }

    [Fact]
    public async Task A_database_that_may_only_be_read_stops_the_start_in_words_and_stays_as_it_is()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Files are protected as on Linux.");
        using TestFolder folder = new();
        string key;
        await using (ServerProcess server = await ServerProcess.StartAsync(folder))
        {
            key = (await SharedPlanClient.ShareAsync(server.Http, new NewShare(Host.Plan))).KeeperKey;
            await new SharedPlanClient(server.Http, key).PushAsync(Entries.Push(Entries.Measured(1)));
            await server.KillAsync();
        }
        string[] files = [folder.Name, .. Directory.GetFiles(folder.Name)];
        foreach (string file in files) File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserExecute | UnixFileMode.OtherRead | UnixFileMode.OtherExecute);

        // To the administrator no file is read-only, so it runs as somebody else.
        string somebody = Environment.UserName == "root" ? "set -- setpriv --reuid=65534 --regid=65534 --clear-groups \"$@\"; " : "";
        (int code, string said) = await ServerProcess.RunToEndAsync(somebody, ServerProcess.Arguments(folder));

        Assert.Equal(1, code);
        Assert.Contains("may only be read", said, StringComparison.Ordinal);
        Assert.Contains("--data FILE", said, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", said, StringComparison.Ordinal);
        foreach (string file in files) File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        await using ServerProcess again = await ServerProcess.StartAsync(folder);
        Assert.Single((await new SharedPlanClient(again.Http, key).GetAsync()).Entries);
    }
}
