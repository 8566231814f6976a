using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Hoopwright.Diagnostics;
using Hoopwright.Sharing;
using Hoopwright.SiteBooks;

namespace Hoopwright.Server.Api;

/// <summary>Puts what a device sent together with the plan that is kept, as the domain merges copies of a plan. Whether the tunnel can be built is for the app to say.</summary>
internal static class DocumentMerge
{
    /// <summary>How the text of a plan is read: comments and trailing commas are part of it.</summary>
    public static readonly JsonDocumentOptions PlanJson = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true, MaxDepth = SharingLimits.Depth };

    /// <summary>A plan as merging writes it, or what is wrong with it.</summary>
    public static (string? Document, SharingProblem? Wrong) Look(string document)
    {
        if (Encoding.UTF8.GetByteCount(document) > SharingLimits.DocumentBytes) return (null, TooLarge);
        try
        {
            using JsonDocument parsed = JsonDocument.Parse(document, PlanJson);
            if (parsed.RootElement is { ValueKind: JsonValueKind.Object } plan && plan.TryGetProperty("siteBook", out _)) return (null, Problems.Malformed("The plan still has its site book. Send its entries by themselves."));
        }
        catch (JsonException fault)
        {
            return (null, Problems.Malformed($"The plan does not follow the rules of JSON, or is nested deeper than {SharingLimits.Depth} (line {fault.LineNumber + 1})."));
        }
        catch (ArgumentException)
        {
            return (null, Problems.Malformed("The plan holds half a character."));
        }
        byte[] bytes = Encoding.UTF8.GetBytes(document);
        MergedPlan alone = PlanMerge.Merge(bytes, bytes);
        return alone.IsMerged ? (Text(alone), null) : (null, Problems.Malformed("The plan cannot be read. " + string.Join(' ', alone.FirstDiagnostics.Where(each => each.Severity == Severity.Error).Select(each => each.Message).Take(3))));
    }

    /// <summary>Both together, and the paths of fields that wait for a decision; what is wrong where they do not make one plan.</summary>
    /// <param name="kept">The plan that is kept.</param>
    /// <param name="pushed">What a device sent, looked at before.</param>
    public static (string Document, ImmutableArray<string> Undecided, SharingProblem? Wrong) Join(string kept, string pushed)
    {
        MergedPlan both = PlanMerge.Merge(Encoding.UTF8.GetBytes(kept), Encoding.UTF8.GetBytes(pushed));
        if (!both.IsMerged) return (kept, [], Problems.Malformed("The plan cannot be put together with the one that is shared."));
        return both.Document.Length > SharingLimits.DocumentBytes ? (kept, [], TooLarge) : (Text(both), [.. both.Undecided.Select(field => field.Path)], null);
    }

    private static SharingProblem TooLarge => Problems.TooLarge($"A plan without its site book has at most {SharingLimits.DocumentBytes >> 20} MiB.");

    private static string Text(MergedPlan plan) => Encoding.UTF8.GetString(plan.Document.Span);
}
