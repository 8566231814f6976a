using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Hoopwright.Mutants;

/// <summary>The copy of the repository in which the faults lie, and its tests.</summary>
internal sealed partial class Garden(string copy)
{
    private const string NumberVariable = "HOOPWRIGHT_PLANTED", ReachedVariable = "HOOPWRIGHT_PLANTED_REACHED";

    /// <summary>Switches a fault on, and notes which places were come by.</summary>
    private const string Switch = $$"""
        namespace Hoopwright;

        internal static class Planted
        {
            private static readonly int Number = int.TryParse(System.Environment.GetEnvironmentVariable("{{NumberVariable}}"), out int given) ? given : -1;
            private static readonly bool[]? Reached = Noting();

            public static bool On(int number)
            {
                if (Reached is not null) Reached[number] = true;
                return number == Number;
            }

            private static bool[]? Noting()
            {
                if (System.Environment.GetEnvironmentVariable("{{ReachedVariable}}") is not { Length: > 0 } file) return null;
                bool[] reached = new bool[100_000];
                System.AppDomain.CurrentDomain.ProcessExit += (_, _) => System.IO.File.WriteAllLines(file,
                    System.Linq.Enumerable.Select(System.Linq.Enumerable.Where(System.Linq.Enumerable.Range(0, reached.Length), number => reached[number]), number => number.ToString()));
                return reached;
            }
        }
        """;

    private readonly string _copy = Path.GetFullPath(copy);
    private readonly HashSet<int> _refused = [];

    private string Domain => Path.Combine(_copy, "src", "Hoopwright");

    /// <summary>Plants all faults of the areas and builds the tests; what the compiler does not take is left out.</summary>
    public Fault[] Plant(IReadOnlyList<Area> areas)
    {
        File.WriteAllText(Path.Combine(Domain, "Planted.cs"), Switch);
        (Area Area, string File, string Source)[] files = [.. areas.SelectMany(area => area.Folders
            .SelectMany(folder => Directory.GetFiles(Path.Combine(Domain, folder), "*.cs", SearchOption.AllDirectories)).Order(StringComparer.Ordinal)
            .Select(file => (area, file, File.ReadAllText(file))))];
        while (true)
        {
            List<Fault> planted = [];
            int number = 0;
            foreach ((Area area, string file, string source) in files)
            {
                Planter planter = new(area, file, () => number++, each => !_refused.Contains(each));
                File.WriteAllText(file, planter.Planted(source));
                planted.AddRange(planter.Faults);
            }
            string said = Build();
            (string File, int Line)[] errors = [.. ErrorLine().Matches(said).Select(match => (match.Groups[1].Value, int.Parse(match.Groups[2].ValueSpan, CultureInfo.InvariantCulture))).Distinct()];
            if (errors.Length == 0)
            {
                if (!File.Exists(Tests)) throw new InvalidOperationException("The copy does not build:\n" + said);
                return [.. planted];
            }
            int before = _refused.Count;
            HashSet<(string, int)> at = [.. errors];
            _refused.UnionWith(planted.Where(fault => at.Contains((fault.File, fault.Line))).Select(fault => fault.Number));
            if (_refused.Count == before) throw new InvalidOperationException("The copy does not build, and not for a planted fault:\n" + said);
            Console.Error.WriteLine($"{_refused.Count} faults are none that the compiler takes; building again.");
        }
    }

    /// <summary>Runs the tests of an area without a fault: they pass, and say which places they come by.</summary>
    public (HashSet<int> Reached, TimeSpan Took) Look(Area area)
    {
        string file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        Stopwatch clock = Stopwatch.StartNew();
        if (!Passes(area, TimeSpan.FromMinutes(30), (ReachedVariable, file))) throw new InvalidOperationException($"The tests of {area.Name} fail without any fault.");
        HashSet<int> reached = [.. File.ReadAllLines(file).Select(line => int.Parse(line, CultureInfo.InvariantCulture))];
        File.Delete(file);
        return (reached, clock.Elapsed);
    }

    /// <summary>Whether the tests of its area notice a fault: one fails, or they do not come to an end.</summary>
    public bool Notices(Fault fault, TimeSpan longest) => !Passes(fault.Area, longest, (NumberVariable, fault.Number.ToString(CultureInfo.InvariantCulture)));

    private string Tests => Path.Combine(_copy, "tests", "Hoopwright.Tests", "bin", "Release", "net10.0", OperatingSystem.IsWindows() ? "Hoopwright.Tests.exe" : "Hoopwright.Tests");

    private string Build()
    {
        ProcessStartInfo start = new("dotnet", ["build", Path.Combine(_copy, "tests", "Hoopwright.Tests"), "-c", "Release", "-v", "q", "-p:RunAnalyzers=false", "-p:TreatWarningsAsErrors=false", "-p:WarningLevel=0", "-p:EnforceCodeStyleInBuild=false"])
        { RedirectStandardOutput = true };
        using Process building = Process.Start(start)!;
        string said = building.StandardOutput.ReadToEnd();
        building.WaitForExit();
        return said;
    }

    private bool Passes(Area area, TimeSpan longest, (string Name, string Value) set)
    {
        ProcessStartInfo start = new(Tests, ["-noColor", "-stopOnFail", .. area.Filter]) { RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment[set.Name] = set.Value;
        using Process running = Process.Start(start)!;
        running.OutputDataReceived += (_, _) => { };
        running.ErrorDataReceived += (_, _) => { };
        running.BeginOutputReadLine();
        running.BeginErrorReadLine();
        if (!running.WaitForExit(longest))
        {
            running.Kill(entireProcessTree: true);
            running.WaitForExit();
            return false;
        }
        return running.ExitCode == 0;
    }

    [GeneratedRegex(@"^\s*(\S[^\n(]*)\((\d+),\d+\): error ", RegexOptions.Multiline)]
    private static partial Regex ErrorLine();
}
