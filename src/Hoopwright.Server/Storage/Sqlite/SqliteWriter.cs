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
    private readonly string file;
    private readonly Channel<IWrite> waiting = Channel.CreateBounded<IWrite>(new BoundedChannelOptions(4_096) { SingleReader = true });
    private readonly Task loop;

    public SqliteWriter(SqliteConnection connection, string file)
    {
        this.connection = connection;
        this.file = file;
        loop = Task.Run(LoopAsync);
    }

    public async Task<T> WriteAsync<T>(Func<Session, Task<T>> work)
    {
        Write<T> write = new(work, file);
        await waiting.Writer.WriteAsync(write);
        return await write.Done;
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
            while (batch.Count < Together && waiting.Reader.TryRead(out IWrite? next)) batch.Add(next);
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
            foreach (IWrite write in batch) write.Fail(SqliteFaults.Explain(fault, file));
        }
    }

    private interface IWrite
    {
        /// <returns>False when the work threw and is to be undone.</returns>
        Task<bool> RunAsync(Session session);

        void Confirm();

        void Fail(StorageException fault);
    }

    private sealed class Write<T>(Func<Session, Task<T>> work, string file) : IWrite
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
            else told.SetException(thrown is SqliteException ? SqliteFaults.Explain(thrown, file) : thrown);
        }

        public void Fail(StorageException fault) => told.TrySetException(fault);
    }
}
