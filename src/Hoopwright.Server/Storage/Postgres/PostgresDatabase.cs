using System.Data;
using Npgsql;

namespace Hoopwright.Server.Storage.Postgres;

/// <summary>A PostgreSQL database, for a host with many users.</summary>
internal sealed class PostgresDatabase(string connectionString) : IDatabase
{
    private readonly NpgsqlDataSource source = NpgsqlDataSource.Create(connectionString);

    public string Kind => "PostgreSQL";

    public string LockRows => " FOR NO KEY UPDATE";

    public Task MigrateAsync(TimeProvider clock) => WriteAsync(async session =>
    {
        // Two servers that start at once do not both make the tables; the number is any that nothing else in this database uses.
        await session.ExecuteAsync("SELECT pg_advisory_xact_lock(540186911)");
        await Migrations.RunAsync(session, "Postgres", clock);
        return true;
    });

    public Task<T> ReadAsync<T>(Func<Session, Task<T>> work) => RunAsync(work, IsolationLevel.RepeatableRead);

    public Task<T> WriteAsync<T>(Func<Session, Task<T>> work) => RunAsync(work, IsolationLevel.ReadCommitted);

    public Task ForgetDeletedAsync() => Task.CompletedTask;

    public ValueTask DisposeAsync() => source.DisposeAsync();

    private async Task<T> RunAsync<T>(Func<Session, Task<T>> work, IsolationLevel isolation)
    {
        try
        {
            await using NpgsqlConnection connection = await source.OpenConnectionAsync();
            await using NpgsqlTransaction transaction = await connection.BeginTransactionAsync(isolation);
            T result = await work(new Session(connection, transaction));
            await transaction.CommitAsync();
            return result;
        }
        catch (NpgsqlException fault)
        {
            throw Explain(fault);
        }
    }

    private static StorageException Explain(NpgsqlException fault) => fault switch
    {
        PostgresException { SqlState: PostgresErrorCodes.DiskFull } => new(StorageFault.Full, "The disk of the server's database is full.", fault),
        PostgresException { SqlState: PostgresErrorCodes.ReadOnlySqlTransaction } => new(StorageFault.ReadOnly, "The server's database may only be read.", fault),
        _ => new(StorageFault.Unreachable, $"The server's database cannot be used: {fault.Message}", fault),
    };
}
