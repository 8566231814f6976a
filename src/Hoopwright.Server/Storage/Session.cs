using System.Data.Common;
using Dapper;

namespace Hoopwright.Server.Storage;

/// <summary>A connection within a transaction.</summary>
internal sealed class Session(DbConnection connection, DbTransaction? transaction)
{
    public async Task<IReadOnlyList<T>> ListAsync<T>(string sql, object? values = null) => (await connection.QueryAsync<T>(sql, values, transaction)).AsList();

    /// <summary>The one row, or null where there is none.</summary>
    public Task<T?> FindAsync<T>(string sql, object? values = null) => connection.QuerySingleOrDefaultAsync<T>(sql, values, transaction);

    /// <summary>The one row that must be there.</summary>
    public Task<T> GetAsync<T>(string sql, object? values = null) => connection.QuerySingleAsync<T>(sql, values, transaction);

    /// <returns>How many rows it touched.</returns>
    public Task<int> ExecuteAsync(string sql, object? values = null) => connection.ExecuteAsync(sql, values, transaction);
}
