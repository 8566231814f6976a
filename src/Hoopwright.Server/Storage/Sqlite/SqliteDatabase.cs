using System.Data;
using Microsoft.Data.Sqlite;

namespace Hoopwright.Server.Storage.Sqlite;

/// <summary>
/// One file. Readers read beside the writer (write-ahead log); what is confirmed has been flushed to the disk (synchronous FULL), so that it outlives
/// a killed server and a dead battery.
/// </summary>
internal sealed class SqliteDatabase : IDatabase
{
    private readonly string file, reading;
    private readonly SqliteWriter writer;

    /// <exception cref="StorageException">The file cannot be opened or made.</exception>
    public SqliteDatabase(string file)
    {
        this.file = file;
        reading = ConnectionString(file);
        try
        {
            if (Path.GetDirectoryName(Path.GetFullPath(file)) is { } folder) Directory.CreateDirectory(folder);
            SqliteConnection connection = Open(reading);
            Execute(connection, "PRAGMA journal_mode = WAL");
            writer = new SqliteWriter(connection, file);
        }
        catch (Exception fault) when (fault is SqliteException or IOException or UnauthorizedAccessException)
        {
            throw SqliteFaults.Explain(fault, file);
        }
    }

    public string Kind => "SQLite";

    public string LockRows => "";

    /// <summary>How a file is opened by whoever reads or writes it.</summary>
    public static string ConnectionString(string file) => new SqliteConnectionStringBuilder { DataSource = file, ForeignKeys = true, DefaultTimeout = 30 }.ToString();

    /// <summary>Opens a connection that flushes what it writes, waits for others, and overwrites what it deletes.</summary>
    public static SqliteConnection Open(string connectionString)
    {
        SqliteConnection connection = new(connectionString);
        try
        {
            connection.Open();
            Execute(connection, "PRAGMA busy_timeout = 5000; PRAGMA synchronous = FULL; PRAGMA secure_delete = ON");
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    public static void Execute(SqliteConnection connection, string sql)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    public Task MigrateAsync(TimeProvider clock) => WriteAsync(async session =>
    {
        await Migrations.RunAsync(session, "Sqlite", clock);
        return true;
    });

    public async Task<T> ReadAsync<T>(Func<Session, Task<T>> work)
    {
        try
        {
            using SqliteConnection connection = Open(reading);
            using SqliteTransaction transaction = connection.BeginTransaction(IsolationLevel.Serializable, deferred: true);
            return await work(new Session(connection, transaction));
        }
        catch (SqliteException fault)
        {
            throw SqliteFaults.Explain(fault, file);
        }
    }

    public Task<T> WriteAsync<T>(Func<Session, Task<T>> work) => writer.WriteAsync(work);

    public Task ForgetDeletedAsync()
    {
        // Deleted rows are overwritten in the file itself (secure_delete), but the log still has them as they were: it is moved into the file and emptied.
        using SqliteConnection connection = Open(reading);
        Execute(connection, "PRAGMA wal_checkpoint(TRUNCATE)");
        return Task.CompletedTask;
    }

    public async ValueTask DisposeAsync()
    {
        await writer.DisposeAsync();
        using SqliteConnection pool = new(reading);
        SqliteConnection.ClearPool(pool);
    }
}
