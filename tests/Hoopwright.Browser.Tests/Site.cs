using System.Diagnostics;
using System.Reflection;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Hoopwright.Browser.Tests.Site))]
[assembly: Xunit.v3.Parallelization(Mode = Xunit.Sdk.ParallelMode.None)]

namespace Hoopwright.Browser.Tests;

/// <summary>
/// The server as a user starts it, and a real Chromium. Without one the tests are skipped with the reason, except where
/// HOOPWRIGHT_NEEDS_CHROMIUM is set, as continuous integration does.
/// </summary>
public sealed class Site : IAsyncLifetime
{
    private Process? server;
    private static readonly string[] Switches = ["--no-sandbox", "--enable-unsafe-swiftshader"];
    private IPlaywright? playwright;
    private string? chromium;
    private readonly string plans = Path.Combine(Path.GetTempPath(), "hoopwright-browser-" + Guid.NewGuid().ToString("N")[..8]);
    private string why = "";

    /// <summary>The address of the app, without a slash at its end.</summary>
    public string Address { get; private set; } = "";

    public IBrowser? Browser { get; private set; }

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
        playwright = await Playwright.CreateAsync();
        Browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = chromium, Args = Switches });
    }

    public async ValueTask DisposeAsync()
    {
        if (Browser is not null) await Browser.DisposeAsync();
        playwright?.Dispose();
        if (server is { HasExited: false }) server.Kill(entireProcessTree: true);
        server?.Dispose();
        if (Directory.Exists(plans)) Directory.Delete(plans, recursive: true);
    }

    /// <summary>A browser of its own, as of someone who has never been here.</summary>
    public Task<IBrowserContext> NewVisitorAsync(BrowserNewContextOptions? options = null)
    {
        if (Browser is null && Environment.GetEnvironmentVariable("HOOPWRIGHT_NEEDS_CHROMIUM") is not { Length: > 0 }) Assert.Skip(why);
        Assert.True(Browser is not null, why);
        BrowserNewContextOptions chosen = options ?? new BrowserNewContextOptions { ViewportSize = new ViewportSize { Width = 1280, Height = 900 } };
        chosen.BaseURL = Address;
        chosen.AcceptDownloads = true;
        return Browser.NewContextAsync(chosen);
    }

    /// <summary>A browser that keeps what it keeps in a folder, to be killed and started again.</summary>
    /// <param name="folder">The folder.</param>
    public Task<IBrowserContext> StartAgainAsync(string folder)
    {
        if (playwright is null && Environment.GetEnvironmentVariable("HOOPWRIGHT_NEEDS_CHROMIUM") is not { Length: > 0 }) Assert.Skip(why);
        Assert.True(playwright is not null, why);
        return playwright.Chromium.LaunchPersistentContextAsync(folder, new() { ExecutablePath = chromium, Args = Switches, BaseURL = Address, ViewportSize = new() { Width = 1280, Height = 900 } });
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
}
