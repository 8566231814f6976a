namespace Hoopwright.Server.Storage;

/// <summary>Where shared plans are kept. What differs between SQLite and PostgreSQL stands behind it; the statements are the same for both.</summary>
internal interface IDatabase : IAsyncDisposable
{
    /// <summary>SQLite or PostgreSQL.</summary>
    string Kind { get; }

    /// <summary>Ends a SELECT so that its rows stay as they are until the transaction ends; empty where there is one writer at a time anyway.</summary>
    string LockRows { get; }

    /// <summary>Brings the tables up to this program's version.</summary>
    Task MigrateAsync(TimeProvider clock);

    /// <summary>Reads in one transaction, so that all statements see the same state.</summary>
    /// <exception cref="StorageException">The database cannot be read.</exception>
    Task<T> ReadAsync<T>(Func<Session, Task<T>> work);

    /// <summary>Writes in one transaction: all of it or, when the work throws, nothing. Once this returns, it is on disk.</summary>
    /// <exception cref="StorageException">The database cannot be written; nothing of the work was kept.</exception>
    Task<T> WriteAsync<T>(Func<Session, Task<T>> work);

    /// <summary>Removes what deleted rows may have left in files beside the tables.</summary>
    Task ForgetDeletedAsync();
}
