using System.Text;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Testing;

/// <summary>Plans for tests: the bundled examples, and short ones from JSON.</summary>
public static class SamplePlans
{
    /// <summary>The repository's folder, found by walking up from the test program.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>The names of the bundled examples that can be built.</summary>
    public static IEnumerable<string> GoodExamples => ["gothic-26ft", "round-14ft", "metric-9m"];

    /// <summary>The bundled example of which something was measured.</summary>
    public const string BuiltExample = "as-built-26ft";

    /// <summary>The bytes of a bundled example.</summary>
    public static byte[] ExampleBytes(string name) => File.ReadAllBytes(Path.Combine(Root, "examples", name + ".json"));

    /// <summary>A bundled example as read.</summary>
    public static Plan Example(string name) => Read(ExampleBytes(name));

    /// <summary>A plan from JSON text without the version, which is added.</summary>
    public static Plan FromJson(string fields) => Read(Encoding.UTF8.GetBytes("{ \"hoopwright\": \"1.0\", " + fields + " }"));

    /// <summary>A tunnel laid out, or a failure that lists the diagnostics.</summary>
    public static Tunnel LayOut(Plan plan)
    {
        LayoutOutcome outcome = TunnelPlanner.LayOut(plan, new Answers(plan.Units ?? UnitSystem.UsCustomary));
        return outcome.Tunnel ?? throw new InvalidOperationException(string.Join("\n", outcome.Diagnostics));
    }

    /// <summary>A plain tunnel: a shape, a span and a length, and what else is asked, as JSON fields of the sections.</summary>
    public static Plan Simple(string span = "20 ft", string length = "48 ft", string bow = "\"shape\": \"round\", \"sideHeight\": \"4 ft\", \"peakHeight\": \"11 ft\"", string frame = "", string rest = "") =>
        FromJson($"\"frame\": {{ \"span\": \"{span}\", \"length\": \"{length}\", \"bow\": {{ {bow} }}{(frame.Length > 0 ? ", " + frame : "")} }}{(rest.Length > 0 ? ", " + rest : "")}");

    private static Plan Read(byte[] bytes)
    {
        PlanReading reading = PlanReader.Read(bytes);
        return reading.IsUsable ? reading.Plan : throw new InvalidOperationException(string.Join("\n", reading.Diagnostics));
    }

    private static string FindRoot()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Hoopwright.slnx"))) return folder.FullName;
        }
        throw new InvalidOperationException("The repository was not found above the test program.");
    }
}
