using System.Collections.Concurrent;
using System.Diagnostics;
using System.Reflection;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Hoopwright.Browser.Tests.Site))]
[assembly: Xunit.v3.Parallelization(Mode = Xunit.Sdk.ParallelMode.All, MaxThreads = 2)]

namespace Hoopwright.Browser.Tests;

/// <summary>
/// The server as a user starts it, and a real Chromium. Without one the tests are skipped with the reason, except where
/// HOOPWRIGHT_NEEDS_CHROMIUM is set, as continuous integration does.
/// </summary>
public sealed class Site : IAsyncLifetime
{
    private Process? server;
    private static readonly string[] Switches = ["--no-sandbox", "--enable-unsafe-swiftshader"];
    private readonly ConcurrentBag<Driven> free = [], all = [];
    private string? chromium;
    private readonly string plans = Path.Combine(Path.GetTempPath(), "hoopwright-browser-" + Guid.NewGuid().ToString("N")[..8]);
    private string why = "";

    /// <summary>The address of the app, without a slash at its end.</summary>
    public string Address { get; private set; } = "";

    /// <summary>The folder of the repository.</summary>
    public static string Root { get; } = Metadata("RepositoryRoot");

    public async ValueTask InitializeAsync()
    {
        chromium = new[] { "chromium", "chromium-browser", "google-chrome" }
            .SelectMany(name => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Select(folder => Path.Combine(folder, name))).FirstOrDefault(File.Exists);
        if (chromium is null)
        {
            why = "There is no Chromium on the path.";
            return;
        }
        await Start();
        // Not a measure of speed: a busy machine is waited for.
        Assertions.SetDefaultExpectTimeout(60_000);
    }

    public async ValueTask DisposeAsync()
    {
        foreach (Driven driven in all)
        {
            await driven.Browser.DisposeAsync();
            driven.Playwright.Dispose();
        }
        if (server is { HasExited: false }) server.Kill(entireProcessTree: true);
        server?.Dispose();
        if (Directory.Exists(plans)) Directory.Delete(plans, recursive: true);
    }

    /// <summary>A browser of its own, as of someone who has never been here.</summary>
    public async Task<IBrowserContext> NewVisitorAsync(BrowserNewContextOptions? options = null)
    {
        IsThere();
        BrowserNewContextOptions chosen = options ?? Visit.Desktop();
        chosen.BaseURL = Address;
        chosen.AcceptDownloads = true;
        Driven driven = await DrivenAsync();
        return Leased(await driven.Browser.NewContextAsync(chosen), driven);
    }

    /// <summary>A browser that keeps what it keeps in a folder, to be killed and started again.</summary>
    /// <param name="folder">The folder.</param>
    public async Task<IBrowserContext> StartAgainAsync(string folder)
    {
        IsThere();
        Driven driven = await DrivenAsync();
        return Leased(await driven.Playwright.Chromium.LaunchPersistentContextAsync(folder, new() { ExecutablePath = chromium, Args = Switches, BaseURL = Address, ViewportSize = Visit.Desktop().ViewportSize }), driven);
    }

    private void IsThere()
    {
        if (chromium is null && Environment.GetEnvironmentVariable("HOOPWRIGHT_NEEDS_CHROMIUM") is not { Length: > 0 }) Assert.Skip(why);
        Assert.True(chromium is not null, why);
    }

    // Each is driven by one visitor at a time: what drives a browser is not made for several tests at once.
    private async Task<Driven> DrivenAsync()
    {
        if (free.TryTake(out Driven? driven)) return driven;
        IPlaywright playwright = await Playwright.CreateAsync();
        driven = new Driven(playwright, await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = chromium, Args = Switches }));
        all.Add(driven);
        return driven;
    }

    private IBrowserContext Leased(IBrowserContext visitor, Driven driven)
    {
        int given = 0;
        visitor.Close += (_, _) =>
        {
            if (Interlocked.Exchange(ref given, 1) == 0) free.Add(driven);
        };
        return visitor;
    }

    private async Task Start()
    {
        string program = Path.Combine(Root, "src", "Hoopwright.Server", "bin", Metadata("Configuration"), "net10.0", "Hoopwright.Server.dll");
        server = Process.Start(new ProcessStartInfo("dotnet", [program, "--urls", "http://127.0.0.1:0", "--data", Path.Combine(plans, "shared-plans.db")]) { RedirectStandardOutput = true, RedirectStandardError = true })
            ?? throw new InvalidOperationException("The server did not start.");
        while (await server.StandardOutput.ReadLineAsync() is { } line)
        {
            int at = line.IndexOf("http://", StringComparison.Ordinal);
            if (at < 0) continue;
            Address = line[at..].Split(' ')[0];
            return;
        }
        throw new InvalidOperationException("The server stopped: " + await server.StandardError.ReadToEndAsync());
    }

    private static string Metadata(string key) => typeof(Site).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().First(each => each.Key == key).Value ?? "";

    private sealed record Driven(IPlaywright Playwright, IBrowser Browser);
}

/// <summary>Tests that a busy machine would make fail: they run while no other does.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class Alone
{
    public const string Name = "alone";
}
