namespace Hoopwright.Server.Tests;

/// <summary>A temporary folder that is gone afterwards.</summary>
internal sealed class TestFolder : IDisposable
{
    public TestFolder()
    {
        Name = Path.Combine(Path.GetTempPath(), "hoopwright-server-" + Guid.NewGuid().ToString("N")[..12]);
        // What the server takes for the published app.
        Directory.CreateDirectory(Path.Combine(App, "_framework"));
        File.WriteAllText(Path.Combine(App, "index.html"), "<!doctype html><title>App</title>");
    }

    public string Name { get; }

    public string App => Path.Combine(Name, "app");

    public string Database => Path.Combine(Name, "shared.db");

    public string At(string name) => Path.Combine(Name, name);

    public void Dispose() => Directory.Delete(Name, recursive: true);
}
