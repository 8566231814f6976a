using System.Text.Json;
using Hoopwright.Cli.Verbs;
using Hoopwright.Testing;

namespace Hoopwright.Cli.Tests;

public sealed class VerbTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("hoopwright").FullName;

    public static TheoryData<string> Examples { get; } = [.. SamplePlans.GoodExamples];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Results_are_one_json_document_and_nothing_else(string name)
    {
        (int code, string output, _) = Run("results", Example(name), "--json");
        Assert.Equal(ExitCode.Done, code);
        using JsonDocument document = JsonDocument.Parse(output);
        foreach (string section in (string[])["site", "frame", "ground", "ends", "cover", "takeoff", "orders", "cuts", "assumptions", "diagnostics"])
            Assert.True(document.RootElement.TryGetProperty(section, out _), section);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_packet_is_written_and_says_where(string name)
    {
        (int code, string output, _) = Run("packet", Example(name), "--out", folder, "--date", "2026-03-01");
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("packet.pdf", output, StringComparison.Ordinal);
        Assert.Equal("%PDF"u8.ToArray(), File.ReadAllBytes(Path.Combine(folder, "packet.pdf"))[..4]);
        Assert.NotEmpty(Directory.GetFiles(Path.Combine(folder, "drawings"), "*.svg"));
        Assert.Empty(Directory.GetFiles(folder, "*.part", SearchOption.AllDirectories));
    }

    [Fact]
    public void A_packet_takes_the_sheets_of_another_tunnel_away_and_leaves_what_is_not_its_own()
    {
        Assert.Equal(ExitCode.Done, Run("packet", Example("gothic-26ft"), "--out", folder, "--date", "2026-03-01").Code);
        string own = Path.Combine(folder, "drawings", "sketch.png");
        File.WriteAllText(own, "mine");
        (int code, string output, _) = Run("packet", Example("round-14ft"), "--out", folder, "--date", "2026-03-01");
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("of an earlier packet", output, StringComparison.Ordinal);
        string alone = Directory.CreateTempSubdirectory("hoopwright").FullName;
        try
        {
            Run("packet", Example("round-14ft"), "--out", alone, "--date", "2026-03-01");
            Assert.Equal(Names(alone), Names(folder).Where(name => name != Path.GetFileName(own)));
            Assert.True(File.Exists(own));
        }
        finally
        {
            Directory.Delete(alone, recursive: true);
        }

        static IEnumerable<string> Names(string root) => Directory.EnumerateFiles(root, "*", SearchOption.AllDirectories).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal);
    }

    [Fact]
    public void A_result_may_be_named_without_its_unit_and_near_names_are_told()
    {
        (int code, string output, _) = Run("results", Example("round-14ft"), "--only", "site.diagonal");
        Assert.Equal(ExitCode.Done, code);
        using JsonDocument json = JsonDocument.Parse(output);
        Assert.Equal(["diagonalM", "diagonalText"], json.RootElement.EnumerateObject().Select(field => field.Name));
        (code, _, string messages) = Run("results", Example("round-14ft"), "--only", "frame.bow.filmLin");
        Assert.Equal(ExitCode.WrongUsage, code);
        Assert.Contains("frame.bow.filmLine", messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_the_kinds_that_are_asked_for_are_written_and_listed()
    {
        Assert.Equal(ExitCode.Done, Run("packet", Example("round-14ft"), "--out", folder, "--only", "dxf", "gltf", "--only", "xlsx").Code);
        string[] files = [.. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)];
        Assert.Equal([".dxf", ".glb", ".html", ".xlsx"], files.Select(Path.GetExtension).Distinct().Order(StringComparer.Ordinal));
        string list = File.ReadAllText(Path.Combine(folder, "index.html"));
        Assert.All(files.Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/')).Where(file => file != "index.html"), file => Assert.Contains($"href=\"{file}\"", list, StringComparison.Ordinal));
        string whole = File.ReadAllText(files.First(file => file.EndsWith("-set-out.dxf", StringComparison.Ordinal)));
        Assert.Contains("\nDIMENSION\n", whole, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, Run("packet", Example("round-14ft"), "--out", folder, "--only", "dxf", "--exploded").Code);
        string exploded = File.ReadAllText(files.First(file => file.EndsWith("-set-out.dxf", StringComparison.Ordinal)));
        Assert.DoesNotContain("\nDIMENSION\n", exploded, StringComparison.Ordinal);
    }

    [Fact]
    public void Kinds_that_are_left_out_stay_from_an_earlier_packet_and_it_is_said_and_listed()
    {
        Assert.Equal(ExitCode.Done, Run("packet", Example("gothic-26ft"), "--out", folder, "--crew", "es").Code);
        int before = Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Length;
        (int code, string output, string messages) = Run("packet", Example("round-14ft"), "--out", folder, "--only", "dxf");
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("packet.earlier-files", messages, StringComparison.Ordinal);
        Assert.Contains("cards-es.pdf", messages, StringComparison.Ordinal);
        // Drawings of the other tunnel are gone where the kind was written, the rest is there and told as what it is.
        string[] drawings = [.. Directory.GetFiles(Path.Combine(folder, "drawings"), "*.dxf").Select(file => Path.GetFileName(file))];
        Assert.DoesNotContain("07-back-door-1-leaf.dxf", drawings);
        string list = File.ReadAllText(Path.Combine(folder, "index.html")), stays = list[list.IndexOf("From an earlier packet", StringComparison.Ordinal)..];
        string[] left = [.. Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/')).Where(file => !file.EndsWith(".dxf", StringComparison.Ordinal) && file != "index.html")];
        Assert.All(left, file => Assert.Contains($"href=\"{file}\"", stays, StringComparison.Ordinal));
        Assert.True(left.Length > before / 2 && output.Contains("Took away", StringComparison.Ordinal));
        using JsonDocument told = JsonDocument.Parse(Run("packet", Example("round-14ft"), "--out", folder, "--only", "svg", "--json").Output);
        Assert.Contains(told.RootElement.EnumerateArray(), each => each.GetProperty("code").GetString() == "packet.earlier-files");
        // A whole packet takes them all away, the crew's sheets too, and has nothing to say of earlier ones.
        (_, _, messages) = Run("packet", Example("round-14ft"), "--out", folder);
        Assert.DoesNotContain("packet.earlier-files", messages, StringComparison.Ordinal);
        Assert.DoesNotContain("From an earlier packet", File.ReadAllText(Path.Combine(folder, "index.html")), StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(folder, "crew-es.pdf")));
    }

    [Fact]
    public void Files_that_no_packet_wrote_are_not_taken_for_an_earlier_one()
    {
        File.WriteAllText(Path.Combine(folder, "index.html"), "<p>My own page</p>");
        File.WriteAllText(Path.Combine(folder, "crew-es.pdf"), "mine");
        (_, _, string messages) = Run("packet", Example("round-14ft"), "--out", folder, "--only", "pdf");
        Assert.DoesNotContain("packet.earlier-files", messages, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(Path.Combine(folder, "crew-es.pdf")));
    }

    [Fact]
    public void A_zip_holds_the_packet_in_one_file()
    {
        Assert.Equal(ExitCode.Done, Run("packet", Example("round-14ft"), "--out", folder, "--zip", "--paper", "a4").Code);
        Assert.Equal([Path.Combine(folder, "packet.zip")], Directory.GetFiles(folder));
    }

    [Fact]
    public void A_wrong_plan_ends_with_one_and_its_diagnostics()
    {
        (int code, string output, _) = Run("check", Example("wrong"), "--json");
        Assert.Equal(ExitCode.InputErrors, code);
        using JsonDocument document = JsonDocument.Parse(output);
        Assert.Contains(document.RootElement.EnumerateArray(), found => found.GetProperty("severity").GetString() == "error");
        Assert.Equal(ExitCode.InputErrors, Run("packet", Example("wrong"), "--out", folder).Code);
        Assert.Empty(Directory.GetFileSystemEntries(folder));
    }

    [Theory]
    [InlineData("paket")]
    [InlineData("check")]
    [InlineData("packet", "plan.json", "--only", "dwg")]
    [InlineData("packet", "plan.json", "--paper", "legal")]
    [InlineData("packet", "plan.json", "--date", "yesterday")]
    public void Wrong_usage_ends_with_two(params string[] args)
    {
        (int code, _, string messages) = Run(args);
        Assert.Equal(ExitCode.WrongUsage, code);
        Assert.Contains("--help", messages, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_not_there_is_named()
    {
        (int code, _, string messages) = Run("check", Path.Combine(folder, "none.json"));
        Assert.Equal(ExitCode.InputErrors, code);
        Assert.Contains("none.json", messages, StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_plan_is_written_once_and_makes_a_packet()
    {
        string plan = Path.Combine(folder, "mine.json");
        Assert.Equal(ExitCode.Done, Run("new", "--shape", "round", plan).Code);
        Assert.Equal(ExitCode.InputErrors, Run("new", plan).Code);
        Assert.Equal(ExitCode.Done, Run("packet", plan, "--out", Path.Combine(folder, "packet")).Code);
    }

    [Fact]
    public void Explain_tells_value_formula_source_and_assumptions()
    {
        (int code, string output, _) = Run("explain", Example("gothic-26ft"), "ground.holes[0].volume");
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("ft³", output, StringComparison.Ordinal);
        Assert.Contains("geometry", output, StringComparison.Ordinal);
        (int missing, _, string messages) = Run("explain", Example("gothic-26ft"), "ground.hole");
        Assert.Equal(ExitCode.WrongUsage, missing);
        Assert.Contains("ground.holes[0].", messages, StringComparison.Ordinal);
    }

    [Fact]
    public void The_schema_is_json()
    {
        (int code, string output, _) = Run("schema");
        Assert.Equal(ExitCode.Done, code);
        using JsonDocument document = JsonDocument.Parse(output);
        Assert.Equal("object", document.RootElement.GetProperty("type").GetString());
    }

    [Fact]
    public void Help_shows_examples()
    {
        (int code, string output, _) = Run("packet", "--help");
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("hoopwright packet my-tunnel.json", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_dash_reads_standard_input()
    {
        (int code, string output, _) = Run(SamplePlans.ExampleBytes("round-14ft"), "results", "-", "--only", "frame.bow.pieces");
        Assert.Equal((ExitCode.Done, "2"), (code, output.Trim()));
    }

    [Fact]
    public void A_frame_is_solved_as_json_or_as_tables()
    {
        (int code, string output, _) = Run("frame", Example("frame-portal"), "--json");
        Assert.Equal(ExitCode.Done, code);
        using JsonDocument document = JsonDocument.Parse(output);
        Assert.True(document.RootElement.GetProperty("combinations").GetProperty("snow").GetProperty("members").TryGetProperty("brace", out _));
        Assert.True(document.RootElement.GetProperty("seconds").GetDouble() > 0);
        (code, output, _) = Run("frame", Example("frame-portal"));
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("Combination wind: second order, solved", output, StringComparison.Ordinal);
        Assert.Contains("leftFoot", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_frame_with_errors_ends_with_one_and_its_diagnostics()
    {
        (int code, string output, _) = Run("{ \"nodes\": {} }"u8.ToArray(), "frame", "-", "--json");
        Assert.Equal(ExitCode.InputErrors, code);
        using JsonDocument document = JsonDocument.Parse(output);
        Assert.NotEmpty(document.RootElement.GetProperty("diagnostics").EnumerateArray());
        Assert.Equal(ExitCode.InputErrors, Run([], "frame", "-").Code);
    }

    [Fact]
    public void A_list_is_cut_as_json_or_as_a_sheet()
    {
        (int code, string output, _) = Run(File.ReadAllBytes(Example("cut-job")), "cut", "-", "--json", "--limit", "60");
        Assert.Equal(ExitCode.Done, code);
        using JsonDocument document = JsonDocument.Parse(output);
        Assert.True(document.RootElement.GetProperty("proven").GetBoolean());
        Assert.True(document.RootElement.GetProperty("seconds").GetDouble() > 0);
        (code, output, string messages) = Run("cut", Example("cut-job"));
        Assert.Equal((ExitCode.Done, ""), (code, messages));
        Assert.Contains("Saw stop", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_schedule_is_planned_as_json_or_as_a_table()
    {
        (int code, string output, _) = Run(File.ReadAllBytes(Example("schedule-job")), "schedule", "-", "--json", "--limit", "60");
        Assert.Equal(ExitCode.Done, code);
        using JsonDocument document = JsonDocument.Parse(output);
        Assert.True(document.RootElement.GetProperty("proven").GetBoolean());
        Assert.Equal(document.RootElement.GetProperty("makespan").GetInt32(), document.RootElement.GetProperty("lowerBound").GetInt32());
        (code, output, string messages) = Run("schedule", Example("schedule-job"));
        Assert.Equal((ExitCode.Done, ""), (code, messages));
        Assert.Contains("roof film", output, StringComparison.Ordinal);
        (code, _, messages) = Run("""{ "resources": { "crew": 1 }, "activities": [{ "id": "pull the film", "duration": 3, "needs": { "crew": 4 } }] }"""u8.ToArray(), "schedule", "-");
        Assert.Equal(ExitCode.InputErrors, code);
        Assert.Contains("4 needed, 1 there", messages, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_that_cannot_be_cut_ends_with_one_and_says_what_would_do()
    {
        byte[] job = "{ \"kerf\": 3, \"stock\": [{ \"id\": \"a\", \"length\": 1000, \"price\": 5, \"limit\": 1 }], \"pieces\": [{ \"id\": \"p\", \"length\": 600, \"count\": 3 }] }"u8.ToArray();
        (int code, string output, string messages) = Run(job, "cut", "-");
        Assert.Equal((ExitCode.InputErrors, ""), (code, output));
        Assert.Contains("p × 2", messages, StringComparison.Ordinal);
        Assert.Contains("a × 2", messages, StringComparison.Ordinal);
        Assert.Equal(ExitCode.InputErrors, Run(job, "cut", "-", "--json").Code);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("-1")]
    [InlineData("soon")]
    [InlineData("NaN")]
    public void A_limit_that_is_no_time_is_wrong_usage(string limit) =>
        Assert.Equal(ExitCode.WrongUsage, Run("cut", Example("cut-job"), "--limit", limit).Code);

    [Fact]
    public void A_sweep_gives_the_same_bytes_on_one_core_on_two_and_when_it_goes_on_after_a_stop()
    {
        string kept = Path.Combine(folder, "kept.json");
        string[] asked = ["sweep", Example("round-14ft"), "--vary", "frame.bowSpacing=5 ft,4 ft", "--vary", "frame.bowTube.wall=0.083 in,0.065 in", "--json"];
        (int code, string one, string messages) = Run([.. asked, "--cores", "1"]);
        Assert.Equal((ExitCode.Done, ""), (code, messages));
        Assert.Equal(one, Run([.. asked, "--cores", "2"]).Output);

        using var stopped = new StringWriter();
        var terminal = new Terminal { Out = TextWriter.Null, Messages = stopped, Input = () => Stream.Null, Colour = false, Interactive = false, Stop = new CancellationToken(canceled: true) };
        Assert.Equal(ExitCode.Done, CommandTree.Run([.. asked, "--resume", kept], terminal));
        Assert.Contains("Stopped after 0 of 4 designs", stopped.ToString(), StringComparison.Ordinal);
        Assert.Equal(one, Run([.. asked, "--resume", kept]).Output);
        Assert.Equal(one, Run([.. asked, "--resume", kept]).Output);
        (code, _, messages) = Run("sweep", Example("round-14ft"), "--vary", "frame.bowSpacing=3 ft", "--resume", kept);
        Assert.Equal(ExitCode.InputErrors, code);
        Assert.Contains("sweep.resume.other-sweep", messages, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sweep_is_a_table_or_csv_and_names_what_cannot_be_varied()
    {
        (int code, string table, _) = Run("sweep", Example("round-14ft"), "--vary", "frame.bowSpacing=5 ft,4 ft", "--keep", "1");
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("storm snow", table, StringComparison.Ordinal);
        string csv = Run("sweep", Example("round-14ft"), "--vary", "frame.bowSpacing=5 ft,4 ft", "--csv").Output;
        Assert.Equal(3, csv.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        (code, _, string messages) = Run("sweep", Example("round-14ft"), "--vary", "frame.bowSpacing=4");
        Assert.Equal(ExitCode.InputErrors, code);
        Assert.Contains("frame.bowSpacing", messages, StringComparison.Ordinal);
        Assert.Equal(ExitCode.WrongUsage, Run("sweep", Example("round-14ft"), "--vary", "frame.bowSpacing").Code);
        Assert.Equal(ExitCode.WrongUsage, Run("sweep", Example("round-14ft")).Code);
    }

    [Fact]
    public void Who_is_told_that_a_tunnel_does_not_stand_is_told_how_to_look_for_what_would()
    {
        string file = Path.Combine(folder, "weak.json");
        File.WriteAllText(file, File.ReadAllText(Example("gothic-26ft")).Replace("\"groundSnow\": \"", "\"groundSnow\": \"2", StringComparison.Ordinal));
        Assert.Contains($"hoopwright sweep {file} --changes", Run("check", file).Output, StringComparison.Ordinal);
        Assert.DoesNotContain("--changes", Run("check", Example("wrong")).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Messages_carry_no_colour_unless_asked() => Assert.DoesNotContain('\u001b', Run("check", Example("wrong")).Output);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static string Example(string name) => Path.Combine(SamplePlans.Root, "examples", name + ".json");

    private static (int Code, string Output, string Messages) Run(params string[] args) => CommandLine.Run(args);

    private static (int Code, string Output, string Messages) Run(byte[] input, params string[] args) => CommandLine.Run(input, args);
}
