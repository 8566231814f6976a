using Hoopwright.Sharing;

namespace Hoopwright.Server.Tests.Programs;

/// <summary>The commands as typed.</summary>
public sealed class CommandTests
{
    [Fact]
    public async Task Backup_and_restore_work_while_the_server_runs()
    {
        using TestFolder folder = new();
        await using ServerProcess server = await ServerProcess.StartAsync(folder);
        string key = (await SharedPlanClient.ShareAsync(server.Http, new NewShare(Host.Plan))).KeeperKey;
        SharedPlanClient client = new(server.Http, key);
        await client.PushAsync(Entries.Push(Entries.Measured(1)));

        (int code, string said) = await ServerProcess.RunToEndAsync("", "backup", folder.At("backup.db"), "--data", folder.Database);
        Assert.True(code == 0, said);
        Assert.StartsWith("1 shared plan is in ", said, StringComparison.Ordinal);

        await client.DeleteEverythingAsync();
        (code, said) = await ServerProcess.RunToEndAsync("", "restore", folder.At("backup.db"), "--data", folder.Database);
        Assert.True(code == 0, said);
        Assert.Single((await client.GetAsync()).Entries);
    }

    [Fact]
    public async Task A_command_that_cannot_be_done_says_why()
    {
        using TestFolder folder = new();
        (int code, string said) = await ServerProcess.RunToEndAsync("", "restore", folder.At("none.db"), "--data", folder.Database);
        Assert.Equal((1, $"There is no file {folder.At("none.db")}.\n"), (code, said));

        (code, said) = await ServerProcess.RunToEndAsync("", "backup");
        Assert.Equal(2, code);
        Assert.Contains("needs the name of a file", said, StringComparison.Ordinal);

        (code, said) = await ServerProcess.RunToEndAsync("", "--help");
        Assert.Equal(0, code);
        Assert.Contains("restore FILE", said, StringComparison.Ordinal);

        (code, said) = await ServerProcess.RunToEndAsync("export HOOPWRIGHT_POSTGRES=Host=nowhere; ", "backup", folder.At("backup.db"));
        Assert.Equal(1, code);
        Assert.Contains("pg_dump", said, StringComparison.Ordinal);

        (code, said) = await ServerProcess.RunToEndAsync("export HOOPWRIGHT_POSTGRES=Host=/nowhere; ", ServerProcess.Arguments(folder));
        Assert.Equal(1, code);
        Assert.Contains("HOOPWRIGHT_POSTGRES", said, StringComparison.Ordinal);
    }
}
