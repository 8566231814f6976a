using System.Collections.Immutable;
using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using Hoopwright.SiteBooks;

namespace Hoopwright.Tests.SiteBooks;

/// <summary>A made-up story of a plan on three devices: who wrote what where, and who took over whose copy.</summary>
internal sealed class ThreeDevices
{
    internal const int Devices = 3;

    private static readonly (string Path, string?[] Values)[] Fields =
    [
        ("name", ["\"North field\"", "\"South field\"", null]),
        ("frame.span", ["\"26 ft\"", "\"30 ft\"", "\"8 m\""]),
        ("frame.tie", ["{}", null]),
        ("frame.tie.height", ["\"8 ft\"", "\"9 ft\"", null]),
        ("site.soil", ["\"sand\"", "\"clay\"", null]),
        ("stock", ["[{\"item\":\"lumber\"}]", "[]", null]),
    ];

    private readonly byte[][] copies = [.. Enumerable.Repeat(Encoding.UTF8.GetBytes("""{ "hoopwright": "1.0", "frame": { "span": "24 ft" } }"""), Devices)];
    private int clock;

    /// <summary>One step: what kind, on which device, with which other number.</summary>
    internal static Gen<(int Kind, int Device, int Number)[]> Stories { get; } = Gen.Select(Gen.Int[0, 5], Gen.Int[0, Devices - 1], Gen.Int[0, 999]).Array[0, 30];

    /// <summary>The entries that a device said it had kept.</summary>
    internal List<string> Acknowledged { get; } = [];

    internal ImmutableArray<byte[]> Copies => [.. copies];

    internal static ThreeDevices Live((int Kind, int Device, int Number)[] story)
    {
        ThreeDevices devices = new();
        foreach ((int kind, int device, int number) in story) devices.Step(kind, device, number);
        return devices;
    }

    private void Step(int kind, int device, int number)
    {
        (string path, string?[] values) = Fields[number % Fields.Length];
        string? value = values[number / 7 % values.Length];
        // Clocks of two devices may say the same time; what they draw differs.
        EditAuthor author = new(SiteBookIds.Next(DateTimeOffset.UnixEpoch.AddSeconds(++clock / 2), (clock * 7) + device), $"person {device}", $"device {device}");
        switch (kind)
        {
            case 0 or 1:
                copies[device] = PlanEdits.Record(copies[device], With(copies[device], path, value), author)!;
                break;
            case 2:
                // Typed into the file by hand, so that nobody knows who and when.
                copies[device] = With(copies[device], path, value);
                break;
            case 3:
                Acknowledged.Add(author.Id);
                copies[device] = WithEntry(copies[device], author.Id, number);
                break;
            case 4 when PlanMerge.Undecided(copies[device]) is [var field, ..]:
                copies[device] = PlanEdits.Decide(copies[device], field.Path, field.Said[number % field.Said.Length].Json, author)!;
                break;
            default:
                copies[device] = PlanMerge.Merge(copies[device], copies[number % Devices]).Document.ToArray();
                break;
        }
    }

    private static byte[] With(byte[] document, string path, string? json)
    {
        JsonObject root = JsonNode.Parse(document)!.AsObject(), group = root;
        string[] steps = path.Split('.');
        foreach (string step in steps[..^1])
        {
            if (group[step] is not JsonObject) group[step] = new JsonObject();
            group = group[step]!.AsObject();
        }
        if (json is null) group.Remove(steps[^1]);
        else group[steps[^1]] = JsonNode.Parse(json);
        return Encoding.UTF8.GetBytes(root.ToJsonString());
    }

    private static byte[] WithEntry(byte[] document, string id, int number)
    {
        JsonObject root = JsonNode.Parse(document)!.AsObject();
        if (root["siteBook"] is not JsonArray) root["siteBook"] = new JsonArray();
        root["siteBook"]!.AsArray().Add(new JsonObject { ["id"] = id, ["kind"] = "note", ["note"] = $"note {number}" });
        return Encoding.UTF8.GetBytes(root.ToJsonString());
    }
}
