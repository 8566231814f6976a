using System.Collections.Immutable;

namespace Hoopwright.Cli;

/// <summary>Reads and writes files, with faults in plain words.</summary>
internal static class Files
{
    /// <summary>The largest file read, so that a wrong file name cannot fill the memory.</summary>
    private const long LargestBytes = 64 * 1024 * 1024;

    /// <summary>A file's bytes; - reads standard input.</summary>
    public static byte[] Read(string path, Terminal terminal)
    {
        try
        {
            if (path == "-")
            {
                using var memory = new MemoryStream();
                using Stream input = terminal.Input();
                input.CopyTo(memory);
                return memory.ToArray();
            }
            if (!File.Exists(path)) throw new FileFault(Directory.Exists(path) ? $"{path} is a folder, not a file." : $"There is no file {path}.");
            if (new FileInfo(path).Length > LargestBytes) throw new FileFault($"{path} is larger than any plan.");
            return File.ReadAllBytes(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new FileFault($"{path} cannot be read: {fault.Message}");
        }
    }

    /// <summary>A file's text, as far as a file may be large.</summary>
    public static string ReadText(string path)
    {
        try
        {
            return new FileInfo(path).Length > LargestBytes ? "" : File.ReadAllText(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new FileFault($"{path} cannot be read: {fault.Message}");
        }
    }

    /// <summary>The files of some folders below another, sorted, by their paths in it with forward slashes; folders that are not there hold none.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="below">Names of folders in it; empty for itself.</param>
    public static ImmutableArray<string> Below(string folder, ImmutableArray<string> below)
    {
        try
        {
            return
            [
                .. below.Where(name => Directory.Exists(Path.Combine(folder, name)))
                    .SelectMany(name => Directory.EnumerateFiles(Path.Combine(folder, name)).Select(file => (name.Length > 0 ? name + "/" : "") + Path.GetFileName(file))).Order(StringComparer.Ordinal),
            ];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new FileFault($"{folder} cannot be read: {fault.Message}");
        }
    }

    /// <summary>Takes a file away.</summary>
    public static void Delete(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new FileFault($"{path}, which an earlier packet left, cannot be taken away: {fault.Message}");
        }
    }

    /// <summary>A file as a stream, however large it is; - is standard input. Faults while it is read are told as well.</summary>
    public static T Read<T>(string path, Terminal terminal, Func<Stream, T> read)
    {
        try
        {
            if (path != "-" && !File.Exists(path)) throw new FileFault(Directory.Exists(path) ? $"{path} is a folder, not a file." : $"There is no file {path}.");
            using Stream stream = path == "-" ? terminal.Input() : File.OpenRead(path);
            return read(stream);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new FileFault($"{path} cannot be read: {fault.Message}");
        }
    }

    /// <summary>Writes a file whole or not at all, making its folder when needed.</summary>
    public static void Write(string path, ReadOnlySpan<byte> bytes)
    {
        try
        {
            string full = Path.GetFullPath(path);
            Directory.CreateDirectory(Path.GetDirectoryName(full) ?? ".");
            string beside = full + ".part";
            File.WriteAllBytes(beside, bytes);
            File.Move(beside, full, overwrite: true);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new FileFault($"{path} cannot be written: {fault.Message}");
        }
    }
}
