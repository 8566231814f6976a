using System.Diagnostics;
using System.Globalization;

namespace Hoopwright.Testing.Frames;

/// <summary>Runs CalculiX (Debian package calculix-ccx), where it is installed.</summary>
public static class Calculix
{
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(5);

    /// <summary>The program's path; null where it is not installed.</summary>
    public static string? Program { get; } = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(folder => Path.Combine(folder, OperatingSystem.IsWindows() ? "ccx.exe" : "ccx")).FirstOrDefault(File.Exists);

    /// <summary>Runs a deck.</summary>
    /// <param name="deck">Text of the deck.</param>
    /// <returns>Last displacements in mm by node from 0, and buckling factors.</returns>
    public static (double[][] MovedMm, double[] Factors) Run(string deck)
    {
        string folder = Directory.CreateTempSubdirectory("ccx").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "frame.inp"), deck);
            string said = Start(folder);
            string file = Path.Combine(folder, "frame.dat");
            if (!File.Exists(file))
                throw new InvalidOperationException("CalculiX gave no answer:\n" + said);
            return Read(File.ReadAllLines(file));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string Start(string folder)
    {
        var start = new ProcessStartInfo(Program ?? throw new InvalidOperationException("CalculiX is not installed."), ["-i", "frame"])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["OMP_NUM_THREADS"] = Environment.ProcessorCount.ToString(CultureInfo.InvariantCulture);
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        if (!process.WaitForExit(Longest))
        {
            process.Kill();
            throw new InvalidOperationException("CalculiX did not end.");
        }
        return output.Result + error.Result;
    }

    private static (double[][] MovedMm, double[] Factors) Read(string[] lines)
    {
        var moved = new SortedDictionary<int, double[]>();
        var factors = new List<double>();
        bool inFactors = false, inMoves = false, full = false;
        foreach (string line in lines)
        {
            string[] cells = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (line.Contains("F A C T O R", StringComparison.Ordinal))
                (inFactors, inMoves) = (true, false);
            else if (line.Contains("displacements", StringComparison.Ordinal))
                (inMoves, inFactors, full) = (!full || factors.Count == 0, false, true);
            else if (inFactors && cells.Length == 2 && int.TryParse(cells[0], CultureInfo.InvariantCulture, out _))
                factors.Add(double.Parse(cells[1], CultureInfo.InvariantCulture));
            else if (inMoves && cells.Length == 4 && int.TryParse(cells[0], CultureInfo.InvariantCulture, out int node))
                moved[node] = [.. cells.Skip(1).Select(cell => double.Parse(cell, CultureInfo.InvariantCulture))];
        }
        return ([.. moved.Values], [.. factors]);
    }
}
