using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;
using Hoopwright.Strength;

namespace Hoopwright.Sweeps;

/// <summary>Keeps the designs that are worked out in a file, so that a sweep that was stopped goes on where it was.</summary>
public static class SweepRecord
{
    /// <summary>The file.</summary>
    /// <param name="sweep">The sweep.</param>
    /// <param name="done">The designs worked out, in any order.</param>
    public static byte[] Write(Sweep sweep, IEnumerable<SweptDesign> done) => JsonSerializer.SerializeToUtf8Bytes(
        new Kept(sweep.Fingerprint, [.. done.OrderBy(design => design.Number).Select(Row)]), RecordContext.Default.Kept);

    /// <summary>Reads the file.</summary>
    /// <param name="sweep">The sweep that goes on.</param>
    /// <param name="file">The file's bytes.</param>
    /// <returns>The designs of that sweep; or what is wrong with the file.</returns>
    public static (ImmutableArray<SweptDesign> Done, ImmutableArray<Diagnostic> Diagnostics) Read(Sweep sweep, ReadOnlyMemory<byte> file)
    {
        Kept? kept;
        try
        {
            kept = JsonSerializer.Deserialize(file.Span, RecordContext.Default.Kept);
        }
        catch (JsonException)
        {
            kept = null;
        }
        if (kept is not { Fingerprint: { } fingerprint, Designs: { } designs })
            return ([], [new Diagnostic("sweep.resume.unreadable", Severity.Error, "resume file", "The file to go on from is not one that a sweep left.", null, "the file of an earlier run, or a name that is not taken")]);
        if (fingerprint != sweep.Fingerprint || designs.Any(row => row is null || row.Number < 0 || row.Number >= sweep.Designs))
            return ([], [new Diagnostic("sweep.resume.other-sweep", Severity.Error, "resume file", "The file to go on from belongs to another plan, other values, other prices or another build of the program.", null, "another file name, for a sweep from the start")]);
        return ([.. designs.OfType<KeptDesign>().DistinctBy(row => row.Number).Select(row => Design(sweep, row))], []);
    }

    private static KeptDesign Row(SweptDesign design) => new(
        design.Number, design.Cost?.Amount, design.Unpriced, design.Verdict, design.StormSnow?.Pascals, design.StormGust?.MetresPerSecond,
        design.CodeSnow?.Pascals, design.CodeGust?.MetresPerSecond, design.Governs, design.Problem);

    private static SweptDesign Design(Sweep sweep, KeptDesign row) => new()
    {
        Number = row.Number,
        Values = sweep.ValuesOf(row.Number),
        Cost = row.Cost is { } cost ? new Money(cost) : null,
        Unpriced = row.Unpriced,
        Verdict = row.Verdict,
        StormSnow = row.StormSnowPa is { } stormSnow ? Pressure.FromPascals(stormSnow) : null,
        StormGust = row.StormGustMps is { } stormGust ? Speed.FromMetresPerSecond(stormGust) : null,
        CodeSnow = row.CodeSnowPa is { } codeSnow ? Pressure.FromPascals(codeSnow) : null,
        CodeGust = row.CodeGustMps is { } codeGust ? Speed.FromMetresPerSecond(codeGust) : null,
        Governs = row.Governs ?? "",
        Problem = row.Problem ?? "",
    };
}

/// <summary>The file of a sweep that goes on later.</summary>
internal sealed record Kept(string? Fingerprint, KeptDesign?[]? Designs);

/// <summary>One design of the file, SI.</summary>
internal sealed record KeptDesign(
    int Number, decimal? Cost, int Unpriced, StrengthVerdict? Verdict, double? StormSnowPa, double? StormGustMps, double? CodeSnowPa, double? CodeGustMps, string? Governs, string? Problem);

/// <summary>Reads and writes the file without reflection, so that the program can be trimmed.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, UseStringEnumConverter = true)]
[JsonSerializable(typeof(Kept))]
internal sealed partial class RecordContext : JsonSerializerContext;
