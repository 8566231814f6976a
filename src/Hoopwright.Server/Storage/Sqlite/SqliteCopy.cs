using Microsoft.Data.Sqlite;

namespace Hoopwright.Server.Storage.Sqlite;

/// <summary>Backup and restore by SQLite's online backup: others may go on reading and writing meanwhile.</summary>
internal static class SqliteCopy
{
    /// <summary>Copies a database to a file that does not exist yet. The file appears only once the copy is whole and was checked.</summary>
    /// <returns>How many plans it holds.</returns>
    /// <exception cref="StorageException">There is no such database, the file exists, or it cannot be written.</exception>
    public static long Backup(string database, string file)
    {
        if (!File.Exists(database)) throw new StorageException(StorageFault.Unreachable, $"There is no database {database}. Say which with --data FILE.");
        if (File.Exists(file)) throw new StorageException(StorageFault.Unreachable, $"{file} exists already. A backup never writes over another: choose another name.");
        string part = file + ".part";
        return Explained(file, () =>
        {
            File.Delete(part);
            long plans;
            using (SqliteConnection source = Open(database, SqliteOpenMode.ReadWrite))
            using (SqliteConnection copy = Open(part, SqliteOpenMode.ReadWriteCreate))
            {
                source.BackupDatabase(copy);
                // One file that needs no log beside it.
                SqliteDatabase.Execute(copy, "PRAGMA journal_mode = DELETE");
                plans = Check(copy, part);
            }
            File.Move(part, file);
            return plans;
        });
    }

    /// <summary>Puts a backup in the place of a database, in one transaction: whoever reads sees all of it or what was before.</summary>
    /// <returns>How many plans it holds.</returns>
    /// <exception cref="StorageException">The backup is none, or the database cannot be written; then it is as before.</exception>
    public static async Task<long> RestoreAsync(string file, string database, TimeProvider clock)
    {
        if (!File.Exists(file)) throw new StorageException(StorageFault.Unreachable, $"There is no file {file}.");
        // A copy of the backup is brought up to date first and told that it was restored; the backup itself is not touched.
        string ready = database + ".restoring";
        long plans = Explained(file, () =>
        {
            if (Path.GetDirectoryName(Path.GetFullPath(database)) is { } folder) Directory.CreateDirectory(folder);
            File.Delete(ready);
            using SqliteConnection source = Open(file, SqliteOpenMode.ReadOnly);
            long found = Check(source, file);
            using SqliteConnection copy = Open(ready, SqliteOpenMode.ReadWriteCreate);
            source.BackupDatabase(copy);
            return found;
        });
        await using (SqliteDatabase copy = new(ready))
        {
            await copy.MigrateAsync(clock);
            await copy.WriteAsync(session => session.ExecuteAsync("UPDATE store SET value = @epoch WHERE name = 'epoch'", new { epoch = Token.NewId() }));
        }
        return Explained(database, () =>
        {
            using (SqliteConnection source = Open(ready, SqliteOpenMode.ReadWrite))
            using (SqliteConnection target = Open(database, SqliteOpenMode.ReadWriteCreate))
                source.BackupDatabase(target);
            File.Delete(ready);
            return plans;
        });
    }

    private static SqliteConnection Open(string file, SqliteOpenMode mode)
    {
        SqliteConnection connection = new(new SqliteConnectionStringBuilder { DataSource = file, Mode = mode, Pooling = false, DefaultTimeout = 30 }.ToString());
        connection.Open();
        SqliteDatabase.Execute(connection, "PRAGMA busy_timeout = 30000; PRAGMA synchronous = FULL");
        return connection;
    }

    private static long Check(SqliteConnection connection, string file)
    {
        if (Scalar(connection, "PRAGMA integrity_check") is not "ok") throw new StorageException(StorageFault.Unusable, $"{file} is damaged.");
        if (Scalar(connection, "SELECT count(*) FROM sqlite_master WHERE name IN ('migration', 'share', 'store')") is not 3L) throw new StorageException(StorageFault.Unusable, $"{file} is no backup of shared plans.");
        long known = Migrations.Of("Sqlite")[^1].Number;
        if (Scalar(connection, "SELECT max(number) FROM migration") is long number && number > known) throw new StorageException(StorageFault.Unusable, $"{file} was made by a newer version of this program. Use the newer program.");
        return (long)Scalar(connection, "SELECT count(*) FROM share")!;
    }

    private static object? Scalar(SqliteConnection connection, string sql)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }

    private static long Explained(string file, Func<long> work)
    {
        try
        {
            return work();
        }
        catch (Exception fault) when (fault is SqliteException or IOException or UnauthorizedAccessException)
        {
            throw SqliteFaults.Explain(fault, file);
        }
    }
}
