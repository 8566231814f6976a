using Hoopwright.Server.Storage.Sqlite;

namespace Hoopwright.Server.Commands;

/// <summary>Puts a backup in the place of the database, also while the server goes on.</summary>
internal static class RestoreCommand
{
    public static Task<int> RunAsync(string file, string[] args) => DatabaseCommand.RunAsync(args, async options =>
    {
        long plans = await SqliteCopy.RestoreAsync(file, options.Data, TimeProvider.System);
        return $"{DatabaseCommand.Plans(plans)} restored into {Path.GetFullPath(options.Data)}. Devices will send again what the backup did not have.";
    });
}
