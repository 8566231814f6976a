using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Hoopwright.Plans;

/// <summary>
/// The JSON Schema of the plan document (draft 2020-12), made from the same list of fields that the reader and the writer go
/// by, with the sentences of the records' own properties.
/// </summary>
public static class PlanSchema
{
    /// <summary>The schema as a file.</summary>
    public static byte[] Write()
    {
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "Hoopwright plan",
        };
        PlanFormats.Plan.Describe(schema);
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, PlanWriter.Indented))
        {
            schema.WriteTo(writer);
        }

        stream.Write(Encoding.UTF8.GetBytes("\n"));
        return stream.ToArray();
    }
}
