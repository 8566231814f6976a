namespace Hoopwright.Server.Tests;

public enum StoredIn
{
    Sqlite,
    Postgres,
}
