using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Hoopwright.Testing;

namespace Hoopwright.Cli.Tests;

/// <summary>Comparing two plans, changes that make a tunnel stronger, and a sweep that someone stops.</summary>
public sealed partial class CompareTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("hoopwright").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Two_plans_are_compared_in_words_in_json_and_as_a_drawing()
    {
        string closer = Changed("\"bowSpacing\": \"4 ft\"", "\"bowSpacing\": \"3 ft\"");
        (int code, string output, _) = Run("compare", Example, closer, "--out", folder, "--date", "2026-03-01");
        Assert.Equal(ExitCode.Done, code);
        Assert.Matches("frame.bowSpacing +4 ft +3 ft", output);
        Assert.Contains("storm: gust at the limit", output, StringComparison.Ordinal);
        Assert.Contains("never go into", output, StringComparison.OrdinalIgnoreCase);
        Assert.StartsWith("<", File.ReadAllText(Path.Combine(folder, "before-and-after.svg")), StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run("compare", Example, closer, "--json").Output);
        Assert.Equal(9, json.RootElement.GetProperty("after").GetProperty("bows").GetInt32());
    }

    [Fact]
    public void A_plan_with_errors_is_named_before_its_errors_and_two_from_standard_input_are_refused()
    {
        string wrong = Path.Combine(SamplePlans.Root, "examples", "wrong.json");
        (int code, _, string messages) = Run("compare", Example, wrong);
        Assert.Equal(ExitCode.InputErrors, code);
        Assert.StartsWith(wrong, messages, StringComparison.Ordinal);
        Assert.Equal(ExitCode.WrongUsage, Run("compare", "-", "-").Code);
        Assert.Equal(ExitCode.WrongUsage, Run("compare", Example).Code);
    }

    [Fact]
    public void Changes_are_ranked_the_same_on_one_core_and_on_two_and_are_drawn()
    {
        (int code, string one, _) = Run("sweep", Example, "--changes", "--cores", "1", "--json");
        Assert.Equal(ExitCode.Done, code);
        Assert.Equal(one, Run("sweep", Example, "--changes", "--cores", "2", "--json").Output);
        using JsonDocument json = JsonDocument.Parse(one);
        Assert.True(json.RootElement.GetProperty("ranked")[0].GetProperty("helps").GetBoolean());
        (code, string table, _) = Run("sweep", Example, "--changes", "--keep", "3", "--out", folder);
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("as it is", table, StringComparison.Ordinal);
        Assert.NotEmpty(Directory.GetFiles(folder, "*.svg"));
        Assert.StartsWith("list,place,code,", Run("sweep", Example, "--changes", "--csv").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--changes", "--vary", "frame.bowSpacing=4 ft")]
    [InlineData("--changes", "--resume", "kept")]
    [InlineData("--changes", "--steps", "50")]
    [InlineData("--vary", "frame.bowSpacing=4 ft", "--out", "drawings")]
    public void What_does_not_go_together_is_told(params string[] options) => Assert.Equal(ExitCode.WrongUsage, Run(["sweep", Example, .. options]).Code);

    [Fact]
    public void Changes_made_one_after_the_other_lead_towards_standing()
    {
        string loaded = Changed("\"site\": {", "\"site\": { \"groundSnow\": \"25 psf\", \"wind\": \"80 mph\", \"soilClass\": \"gravel\",");
        using JsonDocument json = JsonDocument.Parse(Run("sweep", loaded, "--changes", "--steps", "2", "--json").Output);
        JsonElement[] steps = [.. json.RootElement.GetProperty("oneAfterTheOther").EnumerateArray()];
        Assert.InRange(steps.Length, 1, 2);
        Assert.Equal(json.RootElement.GetProperty("ranked")[0].GetProperty("words").GetString(), steps[0].GetProperty("words").GetString());
        Assert.All(steps, step => Assert.True(step.GetProperty("helps").GetBoolean()));
    }

    // As a person does it: the program runs, Ctrl-C sends it an interrupt, and the same command goes on later.
    [Fact]
    public async Task A_sweep_stopped_by_ctrl_c_goes_on_where_it_was()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "An interrupt cannot be sent to one process alone there.");
        string kept = Path.Combine(folder, "kept");
        string walls = string.Join(',', Enumerable.Range(60, 40).Select(mil => string.Create(CultureInfo.InvariantCulture, $"0.0{mil} in")));
        string[] asked = ["sweep", Example, "--vary", "frame.bowSpacing=5 ft,4 ft,3 ft", "--vary", $"frame.bowTube.wall={walls}", "--json"];
        using (Process running = Start([.. asked, "--resume", kept, "--cores", "1"]))
        {
            Task<string> output = running.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken), messages = running.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
            // The file appears with the first designs in it.
            while (!File.Exists(kept) && !running.HasExited) await Task.Delay(20, TestContext.Current.CancellationToken);
            Assert.False(running.HasExited, "It was done before it could be stopped.");
            using (Process signal = Process.Start("kill", ["-INT", running.Id.ToString(CultureInfo.InvariantCulture)])) await signal.WaitForExitAsync(TestContext.Current.CancellationToken);
            await running.WaitForExitAsync(TestContext.Current.CancellationToken);
            Assert.Equal(ExitCode.Done, running.ExitCode);
            string said = await messages;
            Match stopped = Stopped().Match(said);
            Assert.True(stopped.Success, said);
            using JsonDocument part = JsonDocument.Parse(await output);
            int done = part.RootElement.GetProperty("workedOut").GetInt32();
            Assert.Equal(done.ToString(CultureInfo.InvariantCulture), stopped.Groups["done"].Value);
            Assert.InRange(done, 1, 119);
            using JsonDocument file = JsonDocument.Parse(await File.ReadAllBytesAsync(kept, TestContext.Current.CancellationToken));
            Assert.Equal(done, file.RootElement.GetProperty("designs").GetArrayLength());
            Assert.Empty(Directory.GetFiles(folder, "*.part"));
        }
        (int code, string whole, _) = Run([.. asked, "--resume", kept]);
        Assert.Equal(ExitCode.Done, code);
        Assert.Equal(Run(asked).Output, whole);
    }

    [GeneratedRegex("Stopped after (?<done>[0-9]+) of 120 designs")]
    private static partial Regex Stopped();

    private static string Example => Path.Combine(SamplePlans.Root, "examples", "round-14ft.json");

    private string Changed(string from, string to)
    {
        string file = Path.Combine(folder, "changed.json"), text = File.ReadAllText(Example);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(file, text.Replace(from, to, StringComparison.Ordinal));
        return file;
    }

    // In a process of its own, since the interrupt goes to the whole of it.
    // Tests that run in the background of a shell are started with interrupts ignored, which a child would take over.
    private static Process Start(string[] args) => Process.Start(new ProcessStartInfo(
        OperatingSystem.IsLinux() ? "env" : "dotnet",
        [.. OperatingSystem.IsLinux() ? (string[])["--default-signal=INT", "dotnet"] : [], "exec", Path.Combine(AppContext.BaseDirectory, "hoopwright.dll"), .. args])
    {
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    })!;

    private static (int Code, string Output, string Messages) Run(params string[] args) => CommandLine.Run(args);
}
