using System.Threading.Channels;
using Microsoft.Data.Sqlite;

namespace Hoopwright.Server.Storage.Sqlite;

/// <summary>
/// SQLite has one writer at a time, and flushing to the disk is what a write costs (some milliseconds). So one connection does all writing, and what is
/// waiting when it comes to its turn shares one transaction and one flush. Each piece of work has its own savepoint: one that throws takes nothing with it.
/// No one is told that anything was written before the flush is done.
/// </summary>
internal sealed class SqliteWriter : IAsyncDisposable
{
    private const int Together = 64;
    private readonly SqliteConnection connection;
    private readonly Channel<IWrite> waiting = Channel.CreateBounded<IWrite>(new BoundedChannelOptions(4_096) { SingleReader = true });
    private readonly Task loop;

    public SqliteWriter(SqliteConnection connection)
    {
        this.connection = connection;
        loop = Task.Run(LoopAsync);
    }

    public async Task<T> WriteAsync<T>(Func<Session, Task<T>> work)
    {
        Write<T> write = new(work);
        await waiting.Writer.WriteAsync(write);
        return await write.Done;
    }

    /// <summary>Moves the write-ahead log into the file and empties it, as far as no reader still needs it.</summary>
    public async Task CheckpointAsync()
    {
        Checkpoint checkpoint = new();
        await waiting.Writer.WriteAsync(checkpoint);
        await checkpoint.Done;
    }

    public async ValueTask DisposeAsync()
    {
        waiting.Writer.TryComplete();
        await loop;
        await connection.DisposeAsync();
    }

    private async Task LoopAsync()
    {
        List<IWrite> batch = [];
        while (await waiting.Reader.WaitToReadAsync())
        {
            batch.Clear();
            while (batch.Count < Together && waiting.Reader.TryRead(out IWrite? next))
            {
                if (next is Checkpoint checkpoint) checkpoint.Run(connection);
                else batch.Add(next);
            }
            if (batch.Count > 0) await RunAsync(batch);
        }
    }

    private async Task RunAsync(List<IWrite> batch)
    {
        try
        {
            await using SqliteTransaction transaction = connection.BeginTransaction();
            Session session = new(connection, transaction);
            foreach (IWrite write in batch)
            {
                transaction.Save("one");
                if (!await write.RunAsync(session)) transaction.Rollback("one");
                transaction.Release("one");
            }
            transaction.Commit();
            foreach (IWrite write in batch) write.Confirm();
        }
        catch (Exception fault)
        {
            // The disk is full or worse: the transaction was rolled back, so none of it is there, and everyone is told.
            foreach (IWrite write in batch) write.Fail(fault);
        }
    }

    private interface IWrite
    {
        /// <returns>False when the work threw and is to be undone.</returns>
        Task<bool> RunAsync(Session session);

        void Confirm();

        void Fail(Exception fault);
    }

    private sealed class Write<T>(Func<Session, Task<T>> work) : IWrite
    {
        // Whoever waits goes on elsewhere: the writer does not do their work for them.
        private readonly TaskCompletionSource<T> told = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private T? result;
        private Exception? thrown;

        public Task<T> Done => told.Task;

        public async Task<bool> RunAsync(Session session)
        {
            try
            {
                result = await work(session);
                return true;
            }
            catch (Exception fault) when (!SqliteFaults.EndsTransaction(fault))
            {
                thrown = fault;
                return false;
            }
        }

        public void Confirm()
        {
            if (thrown is null) told.SetResult(result!);
            else told.SetException(thrown is SqliteException ? SqliteFaults.Explain(thrown) : thrown);
        }

        public void Fail(Exception fault) => told.TrySetException(SqliteFaults.Explain(fault));
    }

    private sealed class Checkpoint : IWrite
    {
        private readonly TaskCompletionSource done = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public Task Done => done.Task;

        public void Run(SqliteConnection connection)
        {
            try
            {
                SqliteDatabase.Execute(connection, "PRAGMA wal_checkpoint(TRUNCATE)");
                done.SetResult();
            }
            catch (SqliteException fault)
            {
                done.SetException(SqliteFaults.Explain(fault));
            }
        }

        public Task<bool> RunAsync(Session session) => Task.FromResult(true);

        public void Confirm() { }

        public void Fail(Exception fault) { }
    }
}
