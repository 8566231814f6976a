using System.Diagnostics;
using System.Text.Json;
using Hoopwright.Testing;

namespace Hoopwright.Readers.Tests;

/// <summary>
/// Programs that others wrote, run on our files. Where one is not installed the tests that need it are skipped with the reason, except
/// where HOOPWRIGHT_NEEDS_READERS is set, as continuous integration does.
/// </summary>
internal static class Outside
{
    private static readonly string Scripts = Path.Combine(SamplePlans.Root, "tests", "Hoopwright.Readers.Tests", "Scripts");

    /// <summary>Debian's Python, which sees Debian's packages.</summary>
    public const string Python = "/usr/bin/python3";

    /// <summary>What a script prints on a folder, as JSON.</summary>
    /// <param name="script">The file of the script.</param>
    /// <param name="needs">What must be installed.</param>
    /// <param name="arguments">What it is given.</param>
    public static JsonElement Read(string script, string needs, params string[] arguments)
    {
        string program = script.EndsWith(".py", StringComparison.Ordinal) ? Python : "node";
        (int code, string printed, string said) = Run(program, [Path.Combine(Scripts, script), .. arguments]);
        if (code != 0 && (said.Contains("ModuleNotFoundError", StringComparison.Ordinal) || said.Contains("MODULE_NOT_FOUND", StringComparison.Ordinal) || code == NotThere)) Missing(needs);
        Assert.True(code == 0, $"{script}: {said}");
        return JsonDocument.Parse(printed).RootElement;
    }

    /// <summary>Runs a program to its end.</summary>
    /// <returns>Its exit code, or <see cref="NotThere"/>; what it printed; what it said of faults.</returns>
    public static (int Code, string Printed, string Said) Run(string program, IEnumerable<string> arguments, IReadOnlyDictionary<string, string>? environment = null)
    {
        ProcessStartInfo start = new(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach ((string name, string value) in environment ?? new Dictionary<string, string>()) start.Environment[name] = value;
        try
        {
            using Process process = Process.Start(start)!;
            Task<string> said = process.StandardError.ReadToEndAsync();
            string printed = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return (process.ExitCode, printed, said.Result);
        }
        catch (System.ComponentModel.Win32Exception gone)
        {
            return (NotThere, "", gone.Message);
        }
    }

    /// <summary>The exit code of a program that is not installed.</summary>
    public const int NotThere = 127;

    /// <summary>Skips, or fails where everything must be there.</summary>
    public static void Missing(string needs)
    {
        if (Environment.GetEnvironmentVariable("HOOPWRIGHT_NEEDS_READERS") is not { Length: > 0 }) Assert.Skip($"{needs} is not installed.");
        Assert.Fail($"{needs} is not installed.");
    }
}
