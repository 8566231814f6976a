using Microsoft.Data.Sqlite;
using static SQLitePCL.raw;

namespace Hoopwright.Server.Storage.Sqlite;

/// <summary>What SQLite's result codes mean to the person who runs the server.</summary>
internal static class SqliteFaults
{
    /// <summary>The fault of storage behind an exception.</summary>
    public static StorageException Explain(Exception fault, string file) => fault switch
    {
        StorageException told => told,
        SqliteException { SqliteErrorCode: SQLITE_FULL } => new(StorageFault.Full, $"The disk of the database {file} is full.", fault),
        SqliteException { SqliteErrorCode: SQLITE_READONLY or SQLITE_PERM } => new(StorageFault.ReadOnly, $"The database {file} may only be read.", fault),
        SqliteException { SqliteErrorCode: SQLITE_NOTADB or SQLITE_CORRUPT } => new(StorageFault.Unusable, $"The database {file} is no database, or is damaged. Restore a backup.", fault),
        // A write that the system cuts short (a full disk or a limit on file sizes, mostly) comes as an input/output error.
        SqliteException { SqliteErrorCode: SQLITE_IOERR } => new(StorageFault.Full, $"The database {file} cannot be written: its disk is full or faulty.", fault),
        SqliteException sqlite => new(StorageFault.Unreachable, $"The database {file} cannot be used: {sqlite.Message}", fault),
        UnauthorizedAccessException => new(StorageFault.ReadOnly, $"The folder of {file} may not be written.", fault),
        _ => new(StorageFault.Unreachable, $"The database {file} cannot be used: {fault.Message}", fault),
    };

    /// <summary>True where the fault is the disk's, or the database's, and not that of one statement: the whole transaction is lost then.</summary>
    public static bool EndsTransaction(Exception fault) => fault is SqliteException
    {
        SqliteErrorCode: SQLITE_FULL or SQLITE_IOERR or SQLITE_READONLY or SQLITE_NOMEM or SQLITE_BUSY or SQLITE_INTERRUPT or SQLITE_CORRUPT or SQLITE_NOTADB or SQLITE_CANTOPEN,
    };
}
