using System.Text;
using System.Text.Json;
using CsCheck;
using Hoopwright.Diagnostics;
using Hoopwright.Frames;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Frames;

public sealed class FrameFileTests
{
    private const string Sound = """
        { "nodes": { "1": [0, 0, 0], "2": [3, 0, 0] },
          "sections": { "bow": { "tube": { "outsideDiameterM": 0.0483, "wallM": 0.0021 } } },
          "materials": { "steel": { "youngPa": 2.0e11, "shearPa": 7.7e10, "expansionPerK": 1.2e-5, "densityKgM3": 7850 } },
          "members": { "a": { "from": "1", "to": "2", "section": "bow", "material": "steel" } },
          "supports": { "1": ["ux", "uy", "uz", "rx", "ry", "rz"] },
          "loadCases": { "D": { "nodes": { "2": { "fz": -500 } }, "members": { "a": { "uniform": { "z": -100 } } }, "temperature": { "a": 20 } } },
          "combinations": { "C1": { "D": 1.0 } },
          "analysis": { "kind": "linear" } }
        """;

    [Fact]
    public void A_sound_model_is_read_without_a_word()
    {
        var reading = Read(Sound);
        Assert.Empty(reading.Diagnostics);
        Assert.NotNull(reading.Model);
        Assert.Empty(FrameSolver.Solve(reading.Model).Diagnostics);
    }

    [Theory]
    [InlineData("\"2\": [3, 0, 0]", "\"2\": [3, 0]", "model.wrong-kind", "nodes.2")]
    [InlineData("\"2\": [3, 0, 0]", "\"2\": [3, 0, \"0\"]", "model.wrong-kind", "nodes.2[2]")]
    [InlineData("\"2\": [3, 0, 0]", "\"2\": [3, 0, 1e999]", "model.number", "nodes.2[2]")]
    [InlineData("\"2\": [3, 0, 0]", "\"2\": [3, 0, NaN]", "model.not-json", "")]
    [InlineData("\"2\": [3, 0, 0]", "\"2\": [3, 0, 0], \"2\": [4, 0, 0]", "model.duplicate", "nodes.2")]
    [InlineData("\"2\": [3, 0, 0]", "\"2\": [0, 0, 0]", "model.member.no-length", "members.a")]
    [InlineData("\"2\": [3, 0, 0]", "\"2\": [3, 0, 0], \"\": [4, 0, 0]", "model.name", "nodes.")]
    [InlineData("\"2\": [3, 0, 0]", "\"2\": [3, 0, 0], \"3\": [4, 0, 0]", "model.part.not-held", "nodes.3")]
    [InlineData("\"2\": [3, 0, 0]", "\"\\ud800\": [3, 0, 0]", "model.bad-character", "")]
    [InlineData("\"to\": \"2\"", "\"to\": \"7\"", "model.unknown-name", "members.a.to")]
    [InlineData("\"to\": \"2\"", "\"to\": \"1\"", "model.member.no-length", "members.a")]
    [InlineData("\"to\": \"2\"", "\"to\": 2", "model.wrong-kind", "members.a.to")]
    [InlineData("\"to\": \"2\", ", "", "model.missing-field", "members.a.to")]
    [InlineData("\"section\": \"bow\"", "\"section\": \"bwo\"", "model.unknown-name", "members.a.section")]
    [InlineData("\"material\": \"steel\"", "\"material\": \"steel\", \"roll\": 3", "model.unknown-field", "members.a.roll")]
    [InlineData("\"material\": \"steel\"", "\"material\": \"steel\", \"releaseTo\": [\"rt\"]", "model.unknown-word", "members.a.releaseTo[0]")]
    [InlineData("\"material\": \"steel\"", "\"material\": \"steel\", \"tensionOnly\": 1", "model.wrong-kind", "members.a.tensionOnly")]
    [InlineData("\"wallM\": 0.0021", "\"wallM\": 0.0421", "model.section", "sections.bow.tube")]
    [InlineData("\"wallM\": 0.0021 } }", "\"wallM\": 0.0021 }, \"areaM2\": 1 }", "model.section", "sections.bow")]
    [InlineData("\"youngPa\": 2.0e11", "\"youngPa\": 0", "model.material", "materials.steel")]
    [InlineData("[\"ux\", \"uy\"", "[\"uw\", \"uy\"", "model.unknown-word", "supports.1[0]")]
    [InlineData("\"supports\": { \"1\"", "\"supports\": { \"3\"", "model.unknown-name", "supports.3")]
    [InlineData("\"supports\"", "\"springs\": { \"2\": { \"uz\": -1 } }, \"supports\"", "model.number", "springs.2")]
    [InlineData("{ \"z\": -100 }", "{ \"z\": -100, \"from\": 0.5, \"to\": 0.2 }", "model.load.part", "loadCases.D.members.a.uniform")]
    [InlineData("{ \"z\": -100 }", "{ \"x\": -100, \"frame\": \"member\", \"per\": \"projection\" }", "model.load.projection", "loadCases.D.members.a.uniform")]
    [InlineData("{ \"z\": -100 }", "{ \"w\": -100 }", "model.unknown-field", "loadCases.D.members.a.uniform.w")]
    [InlineData("\"fz\": -500", "\"fz\": null", "model.wrong-kind", "loadCases.D.nodes.2.fz")]
    [InlineData("\"temperature\": { \"a\"", "\"movements\": { \"2\": { \"uz\": 1 } }, \"temperature\": { \"a\"", "model.movement.not-held", "loadCases.D")]
    [InlineData("{ \"D\": 1.0 }", "{ \"C1\": 1.0 }", "model.unknown-name", "combinations.C1.C1")]
    [InlineData("\"C1\": { \"D\": 1.0 }", "", "model.no-combination", "combinations")]
    [InlineData("\"kind\": \"linear\"", "\"kind\": \"liner\"", "model.unknown-word", "analysis.kind")]
    [InlineData("\"kind\": \"linear\"", "\"kind\": \"buckling\", \"modes\": 2.5", "model.count", "analysis.modes")]
    [InlineData("\"kind\": \"linear\"", "\"kind\": \"secondOrder\", \"tolerance\": 0", "model.analysis.tolerance", "analysis.tolerance")]
    [InlineData("\"kind\": \"linear\"", "\"kind\": \"largeDisplacement\", \"control\": { \"kind\": \"arc\" }", "model.missing-field", "analysis.control.reach")]
    [InlineData("\"kind\": \"linear\"", "\"kind\": \"largeDisplacement\", \"control\": { \"steps\": 0 }", "model.count", "analysis.control.steps")]
    [InlineData("\"kind\": \"linear\"", "\"kind\": \"largeDisplacement\", \"control\": { \"kind\": \"displacement\", \"node\": \"3\", \"freedom\": \"uz\", \"reach\": 1 }", "model.unknown-name", "analysis.control.node")]
    [InlineData("\"kind\": \"linear\"", "", "model.analysis", "analysis.kind")]
    [InlineData(", \"expansionPerK\": 1.2e-5", "", "model.no-expansion", "loadCases.D.temperature")]
    [InlineData(", \"densityKgM3\": 7850 } },\n", " } }, \"members\": [],", "model.duplicate", "members")]
    public void What_is_wrong_is_told_where_it_stands(string sound, string wrong, string code, string path)
    {
        string text = Sound.Replace(sound, wrong, StringComparison.Ordinal);
        Assert.NotEqual(Sound, text);
        var answer = FrameFile.Solve(Encoding.UTF8.GetBytes(text));
        Assert.Contains(answer.Diagnostics, found => found.Code == code && found.Path == path);
    }

    [Fact]
    public void Own_weight_of_a_material_without_density_is_an_assumption()
    {
        string text = Sound.Replace(", \"densityKgM3\": 7850", "", StringComparison.Ordinal).Replace("\"temperature\"", "\"selfWeight\": [0, 0, -1], \"temperature\"", StringComparison.Ordinal);
        var found = Assert.Single(Read(text).Diagnostics);
        Assert.Equal(("model.no-density", Severity.Assumption), (found.Code, found.Severity));
    }

    [Fact]
    public void All_problems_are_told_in_one_pass_with_the_nearest_names()
    {
        string text = Sound
            .Replace("\"kind\": \"linear\"", "\"kind\": \"liner\"", StringComparison.Ordinal)
            .Replace("\"members\": { \"a\"", "\"members\": { \"b\": { \"from\": \"1\", \"to\": \"2\", \"section\": \"bw\", \"material\": \"steel\" }, \"a\"", StringComparison.Ordinal)
            .Replace("\"2\": [3, 0, 0]", "\"2\": [3, 0, 0], \"3\": {}", StringComparison.Ordinal)
            .Replace("\"supports\"", "\"springs\": { \"2\": { \"uz\": -1 } }, \"supports\"", StringComparison.Ordinal);
        var found = Read(text).Diagnostics;
        Assert.Equal(["model.wrong-kind", "model.unknown-name", "model.unknown-word", "model.number"], found.Select(each => each.Code));
        Assert.Equal("bow", found[1].Accepted);
        Assert.StartsWith("linear;", found[2].Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void A_million_nodes_of_nonsense_end_in_one_line()
    {
        var text = new StringBuilder("{ \"nodes\": {");
        for (int node = 0; node < 1_000_000; node++)
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"\"{node}\":[\"x\",{node}],");
        text.Append("} }");
        var found = Assert.Single(Read(text.ToString()).Diagnostics);
        Assert.Equal("model.too-large", found.Code);
    }

    [Fact]
    public void A_hundred_thousand_faulty_members_end_in_a_short_list()
    {
        var text = new StringBuilder("{ \"nodes\": { \"1\": [0, 0, 0] }, \"sections\": {}, \"materials\": {}, \"members\": {");
        for (int member = 0; member < 100_000; member++)
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"\"{member}\":{{ \"from\": \"1\", \"to\": \"n{member}\", \"section\": \"s\", \"material\": \"m\" }},");
        text.Append("} }");
        var found = Read(text.ToString()).Diagnostics;
        Assert.Equal(51, found.Length);
        Assert.Equal(("model.more", "299951 more"), (found[^1].Code, found[^1].Seen));
    }

    [Fact]
    public void A_tangle_of_members_is_refused_before_its_matrix_is_made()
    {
        const int Nodes = 6_000;
        var text = new StringBuilder("{ \"sections\": { \"s\": { \"areaM2\": 1e-3, \"iyM4\": 1e-6, \"izM4\": 1e-6, \"jM4\": 1e-6 } }, \"materials\": { \"m\": { \"youngPa\": 2e11, \"shearPa\": 8e10 } }, \"nodes\": {");
        for (int node = 0; node < Nodes; node++)
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"\"{node}\":[{node % 17},{node % 101},{node / 100}],");
        text.Append("}, \"members\": {");
        for (int member = 0; member < 4 * Nodes; member++)
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"\"{member}\":{{ \"from\": \"{member % Nodes}\", \"to\": \"{((member % Nodes) + 1 + (member * 7919L % (Nodes - 1))) % Nodes}\", \"section\": \"s\", \"material\": \"m\" }},");
        text.Append("}, \"supports\": { \"0\": [\"ux\"] }, \"combinations\": { \"C\": {} } }");
        var answer = FrameFile.Solve(Encoding.UTF8.GetBytes(text.ToString()));
        Assert.Empty(answer.States);
        Assert.Contains(answer.Diagnostics, found => found.Code is "model.too-large");
    }

    [Fact]
    public void A_file_that_breaks_off_or_is_damaged_never_throws()
    {
        byte[] example = File.ReadAllBytes(Path.Combine(SamplePlans.Root, "examples", "frame-portal.json"));
        Gen.Select(Gen.Int[0, example.Length], Gen.Byte, Gen.Int[1, 40], Gen.Bool).Sample(
            damage =>
            {
                var (at, value, length, cut) = damage;
                byte[] file = [.. example];
                if (cut)
                    file = [.. example.AsSpan(0, at), .. example.AsSpan(Math.Min(example.Length, at + length))];
                else if (at < file.Length)
                    file[at] = value;
                var answer = FrameFile.Solve(file);
                Assert.True(answer.States.Length > 0 || answer.Diagnostics.Any(found => found.Severity == Severity.Error));
                Assert.All(answer.States, state => Assert.All(state.Displacements, each => Assert.True(double.IsFinite(each))));
                FrameAnswerText.Json(answer, TimeSpan.Zero);
                FrameAnswerText.Table(answer);
            },
            iter: 2_000, threads: 1);
    }

    [Fact]
    public void The_same_model_gives_the_same_bytes()
    {
        byte[] example = File.ReadAllBytes(Path.Combine(SamplePlans.Root, "examples", "frame-portal.json"));
        Assert.Equal(FrameAnswerText.Json(FrameFile.Solve(example), TimeSpan.Zero), FrameAnswerText.Json(FrameFile.Solve(example), TimeSpan.Zero));
    }

    [Fact]
    public void A_path_is_written_point_by_point()
    {
        byte[] text = Encoding.UTF8.GetBytes(Sound.Replace("\"kind\": \"linear\"", "\"kind\": \"largeDisplacement\", \"control\": { \"steps\": 4 }", StringComparison.Ordinal));
        using var answer = JsonDocument.Parse(FrameAnswerText.Json(FrameFile.Solve(text), TimeSpan.Zero));
        var path = answer.RootElement.GetProperty("paths").GetProperty("C1").EnumerateArray().ToArray();
        Assert.Equal(1, path[^1].GetProperty("loadFactor").GetDouble(), 9);
        Assert.Equal(
            answer.RootElement.GetProperty("combinations").GetProperty("C1").GetProperty("displacements").GetRawText().Where(c => !char.IsWhiteSpace(c)),
            path[^1].GetProperty("displacements").GetRawText().Where(c => !char.IsWhiteSpace(c)));
    }

    [Fact]
    public void An_answer_with_errors_is_still_one_json_document()
    {
        using var answer = JsonDocument.Parse(FrameAnswerText.Json(FrameFile.Solve("{"u8.ToArray()), TimeSpan.FromSeconds(0.25)));
        Assert.Equal(["combinations", "buckling", "seconds", "diagnostics"], answer.RootElement.EnumerateObject().Select(field => field.Name));
        Assert.Equal(0.25, answer.RootElement.GetProperty("seconds").GetDouble());
    }

    private static FrameReading Read(string text) => FrameFile.Read(Encoding.UTF8.GetBytes(text));
}
