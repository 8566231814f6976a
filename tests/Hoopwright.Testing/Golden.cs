using System.Text;

namespace Hoopwright.Testing;

/// <summary>
/// Compares what was written, byte by byte, with a file kept beside the tests. Set HOOPWRIGHT_ACCEPT=1 to write the files
/// anew, look at each in a viewer, and say in the commit why it changed.
/// </summary>
public static class Golden
{
    /// <summary>Fails unless the bytes are those of the kept file.</summary>
    /// <param name="actual">What was written.</param>
    /// <param name="path">The kept file, from the tests folder on, with forward slashes.</param>
    public static void Match(ReadOnlySpan<byte> actual, string path)
    {
        string file = Path.Combine(SamplePlans.Root, "tests", Path.Combine(path.Split('/')));
        if (Environment.GetEnvironmentVariable("HOOPWRIGHT_ACCEPT") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllBytes(file, actual);
            return;
        }

        if (!File.Exists(file))
            throw new InvalidOperationException($"There is no kept file {path}. Set HOOPWRIGHT_ACCEPT=1 to write it.");
        byte[] kept = File.ReadAllBytes(file);
        int same = actual.CommonPrefixLength(kept);
        if (same == kept.Length && same == actual.Length) return;
        throw new InvalidOperationException(
            $"{path} differs from byte {same} on:\n  kept    {Around(kept, same)}\n  written {Around(actual, same)}");
    }

    /// <summary>Fails unless the text, as UTF-8, is that of the kept file.</summary>
    public static void Match(string actual, string path) => Match(Encoding.UTF8.GetBytes(actual), path);

    private static string Around(ReadOnlySpan<byte> bytes, int at)
    {
        int from = Math.Max(0, at - 40);
        return Encoding.UTF8.GetString(bytes[from..Math.Min(bytes.Length, at + 40)]).Replace('\n', '¶');
    }
}
