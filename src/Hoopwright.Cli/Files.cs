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

    /// <summary>Takes files of one kind out of a folder, but for those named; none when there is no such folder.</summary>
    /// <returns>How many.</returns>
    public static int Clear(string folder, string ending, IReadOnlySet<string> keep)
    {
        if (!Directory.Exists(folder)) return 0;
        try
        {
            string[] old = [.. Directory.EnumerateFiles(folder, "*" + ending).Where(file => !keep.Contains(Path.GetFileName(file)))];
            foreach (string file in old) File.Delete(file);
            return old.Length;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new FileFault($"What an earlier packet left in {folder} cannot be taken away: {fault.Message}");
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
