using System.Diagnostics;
using Npgsql;

[assembly: AssemblyFixture(typeof(Hoopwright.Server.Tests.PostgresServer))]

namespace Hoopwright.Server.Tests;

/// <summary>
/// A PostgreSQL of the tests' own: data in a temporary folder, reached by a socket in it and not by the network, run by a user without rights, gone
/// afterwards. Where it is not installed the tests that need it are skipped with the reason, except where HOOPWRIGHT_NEEDS_POSTGRES is set, as
/// continuous integration does.
/// </summary>
public sealed class PostgresServer : IAsyncLifetime
{
    private readonly string folder = Path.Combine(Path.GetTempPath(), "hoopwright-postgres-" + Guid.NewGuid().ToString("N")[..8]);
    private string why = "";
    private string? programs;
    private bool running;
    private int schemas;

    public async ValueTask InitializeAsync()
    {
        programs = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .Concat(Directory.Exists("/usr/lib/postgresql") ? Directory.GetDirectories("/usr/lib/postgresql").OrderDescending(StringComparer.Ordinal).Select(version => Path.Combine(version, "bin")) : [])
            .FirstOrDefault(path => File.Exists(Path.Combine(path, "initdb")) && File.Exists(Path.Combine(path, "pg_ctl")));
        if (programs is null)
        {
            why = "PostgreSQL is not installed (Debian: apt-get install postgresql).";
            return;
        }
        Directory.CreateDirectory(folder);
        // PostgreSQL refuses to run as the administrator.
        if (Environment.UserName == "root") await RunAsync("chown", "postgres", folder);
        await AsUserAsync("initdb", "-D", Path.Combine(folder, "data"), "-U", "hoopwright", "--auth=trust", "--encoding=UTF8", "--locale=C", "--no-sync");
        await AsUserAsync("pg_ctl", "-D", Path.Combine(folder, "data"), "-l", Path.Combine(folder, "log"), "-w", "-o", $"-c listen_addresses='' -c unix_socket_directories='{folder}' -c fsync=off", "start");
        running = true;
    }

    /// <summary>An empty schema, as a connection string.</summary>
    public async Task<string> NewSchemaAsync()
    {
        if (!running && Environment.GetEnvironmentVariable("HOOPWRIGHT_NEEDS_POSTGRES") is not { Length: > 0 }) Assert.Skip(why);
        Assert.True(running, why);
        string schema = $"test{Interlocked.Increment(ref schemas)}";
        string common = $"Host={folder};Username=hoopwright;Database=postgres";
        await using NpgsqlDataSource source = NpgsqlDataSource.Create(common);
        await using NpgsqlCommand command = source.CreateCommand($"CREATE SCHEMA {schema}");
        await command.ExecuteNonQueryAsync();
        return $"{common};Search Path={schema};Maximum Pool Size=10";
    }

    public async ValueTask DisposeAsync()
    {
        if (running) await AsUserAsync("pg_ctl", "-D", Path.Combine(folder, "data"), "-m", "immediate", "stop");
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
    }

    private Task AsUserAsync(string program, params string[] arguments)
    {
        string path = Path.Combine(programs!, program);
        return Environment.UserName == "root" ? RunAsync("setpriv", ["--reuid=postgres", "--regid=postgres", "--clear-groups", path, .. arguments]) : RunAsync(path, arguments);
    }

    // Output is not read: the server would hold the pipe open for as long as it runs.
    private async Task RunAsync(string program, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo("/bin/sh", ["-c", "exec \"$@\" >>/dev/null 2>&1 </dev/null", "sh", program, .. arguments]) { WorkingDirectory = folder })!;
        await process.WaitForExitAsync();
        if (process.ExitCode != 0) throw new InvalidOperationException($"{program} ended with {process.ExitCode}; its log, if any, is in {folder}.");
    }
}
