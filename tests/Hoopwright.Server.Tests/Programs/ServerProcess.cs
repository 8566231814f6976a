using System.Diagnostics;
using System.Globalization;
using System.Reflection;

namespace Hoopwright.Server.Tests.Programs;

/// <summary>The server as a program of its own, as it is run by a person.</summary>
internal sealed class ServerProcess : IAsyncDisposable
{
    private readonly Process process;

    private ServerProcess(Process process, string address)
    {
        this.process = process;
        Http = new HttpClient { BaseAddress = new Uri(address) };
    }

    public static string Program { get; } = Path.Combine(Metadata("RepositoryRoot"), "src", "Hoopwright.Server", "bin", Metadata("Configuration"), "net10.0", "Hoopwright.Server.dll");

    public HttpClient Http { get; }

    /// <summary>Memory that it holds now.</summary>
    public long WorkingSetBytes
    {
        get
        {
            process.Refresh();
            return process.WorkingSet64;
        }
    }

    /// <summary>Starts it and waits until it listens.</summary>
    public static async Task<ServerProcess> StartAsync(TestFolder folder, string shell = "")
    {
        Process process = Run(shell, Arguments(folder));
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            int at = line.IndexOf("http://", StringComparison.Ordinal);
            if (at >= 0) return new ServerProcess(process, line[at..].Split(' ')[0]);
        }
        string said = await process.StandardError.ReadToEndAsync();
        process.Dispose();
        throw new InvalidOperationException("The server stopped: " + said);
    }

    /// <summary>Starts it, waits until it ends by itself, and tells how it ended and all that it said.</summary>
    public static async Task<(int Code, string Said)> RunToEndAsync(string shell, params string[] arguments)
    {
        using Process process = Run(shell, arguments);
        Task<string> output = process.StandardOutput.ReadToEndAsync(), error = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return (process.ExitCode, await output + await error);
    }

    public static string[] Arguments(TestFolder folder) => ["--urls", "http://127.0.0.1:0", "--app", folder.App, "--data", folder.Database, "--limits:addressPerSecond", "100000", "--limits:linkPerSecond", "100000"];

    /// <summary>Ends it as a power cut does: without a word (SIGKILL).</summary>
    public async Task KillAsync()
    {
        process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
    }

    /// <summary>Sends it a signal, such as STOP or CONT (POSIX).</summary>
    public void Signal(string name)
    {
        using Process kill = Process.Start("kill", [$"-{name}", process.Id.ToString(CultureInfo.InvariantCulture)]);
        kill.WaitForExit();
    }

    public async ValueTask DisposeAsync()
    {
        Http.Dispose();
        if (!process.HasExited) await KillAsync();
        process.Dispose();
    }

    // The shell first does what it is told, such as limiting the size of files, and then becomes the server.
    private static Process Run(string shell, string[] arguments)
    {
        ProcessStartInfo start = new("/bin/sh", ["-c", shell + "exec \"$@\"", "sh", "dotnet", Program, .. arguments]) { RedirectStandardOutput = true, RedirectStandardError = true };
        // The runtime maps its code through a file as large as its code may become, which a limit on file sizes would refuse.
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        start.Environment["DOTNET_EnableDiagnostics"] = "0";
        return Process.Start(start) ?? throw new InvalidOperationException("The server did not start.");
    }

    private static string Metadata(string key) => typeof(ServerProcess).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().First(each => each.Key == key).Value ?? "";
}
