namespace Hoopwright.Reference.Tests;

/// <summary>
/// Data of others that are kept outside the repository. Looked for in HOOPWRIGHT_SHARED, or in a folder "shared" beside one of
/// the folders above the tests.
/// </summary>
internal static class OutsideData
{
    /// <summary>A folder of data; where it is not there, an exception that skips a test.</summary>
    public static string Folder(params string[] path)
    {
        string? given = Environment.GetEnvironmentVariable("HOOPWRIGHT_SHARED");
        IEnumerable<string> candidates = given is not null ? [given] : Above(AppContext.BaseDirectory).Select(folder => Path.Combine(folder, "shared"));
        string? found = candidates.Select(folder => Path.Combine([folder, "data", .. path])).FirstOrDefault(Directory.Exists);
        return found ?? throw new DirectoryNotFoundException($"The data {string.Join('/', path)} are not on this machine; set HOOPWRIGHT_SHARED to the folder that holds data/{path[0]}.");
    }

    private static IEnumerable<string> Above(string folder)
    {
        for (DirectoryInfo? at = new(folder); at is not null; at = at.Parent) yield return at.FullName;
    }
}
