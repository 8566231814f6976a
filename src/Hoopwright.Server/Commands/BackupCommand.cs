using Hoopwright.Server.Storage.Sqlite;

namespace Hoopwright.Server.Commands;

/// <summary>Copies the database to a file while the server goes on.</summary>
internal static class BackupCommand
{
    public static Task<int> RunAsync(string file, string[] args) => DatabaseCommand.RunAsync(args, options =>
    {
        long plans = SqliteCopy.Backup(options.Data, file);
        return Task.FromResult($"{DatabaseCommand.Plans(plans)} in {Path.GetFullPath(file)}, and the copy is whole. Keep it as you would keep the plans: their text is readable in it.");
    });
}
