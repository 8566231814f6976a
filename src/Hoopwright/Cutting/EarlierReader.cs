using System.Collections.Immutable;
using System.Text.Json;
using Hoopwright.ModelFiles;

namespace Hoopwright.Cutting;

/// <summary>What was said of an earlier answer: its bars with what became of them, and pieces that must be made again.</summary>
internal sealed record EarlierAnswer(ImmutableArray<CutProgress> Bars, ImmutableDictionary<string, int> Again);

/// <summary>Reads an earlier answer with what has been done since.</summary>
internal sealed class EarlierReader(ModelProblems problems)
{
    private static readonly ImmutableArray<string> Fields =
        ["cost", "bars", "lowerBound", "proven", "method", "waiting", "keptBars", "fewestChanged", "patterns", "again", "seconds", "diagnostics"];

    private static readonly ImmutableArray<string> PatternFields = ["stock", "times", "pieces", "leftover", "leftoverM", "kept", "further", "done", "bad"];

    internal EarlierAnswer Read(ModelGroup file)
    {
        file.Only(Fields);
        _ = file.NeededValue("patterns", "[]");
        var bars = ImmutableArray.CreateBuilder<CutProgress>();
        foreach (var (json, path) in file.List("patterns"))
        {
            if (ModelGroup.Of(json, path, problems) is { } group && Bars(group) is { } read)
                bars.Add(read);
        }

        var again = ImmutableDictionary.CreateBuilder<string, int>(StringComparer.Ordinal);
        foreach (var entry in file.Group("again")?.Entries() ?? [])
        {
            if (CountOf(entry.Json, entry.Path) is { } count)
                again[entry.Id] = count;
        }

        return new EarlierAnswer(bars.ToImmutable(), again.ToImmutable());
    }

    private CutProgress? Bars(ModelGroup group)
    {
        group.Only(PatternFields);
        var stock = group.NeededText("stock", "\"a\"");
        var times = group.NeededValue("times", "1") is { } json ? CountOf(json, group.PathOf("times")) : null;
        _ = group.NeededValue("pieces", "[\"p1\"]");
        var pieces = ImmutableArray.CreateBuilder<string>();
        foreach (var (piece, path) in group.List("pieces"))
        {
            if (piece.ValueKind == JsonValueKind.String)
                pieces.Add(piece.GetString()!);
            else
                ModelGroup.Wrong(problems, path, piece, "the name of a piece in double quotes");
        }

        int? done = group.Value("done") is { } cut ? CountOf(cut, group.PathOf("done")) : 0, bad = group.Value("bad") is { } broken ? CountOf(broken, group.PathOf("bad")) : 0;
        return stock is null || times is null || done is null || bad is null ? null : new CutProgress(stock, times.Value, pieces.ToImmutable(), done.Value, bad.Value);
    }

    private int? CountOf(JsonElement json, string path)
    {
        if (ModelGroup.Whole(json, path, problems) is not { } count)
            return null;
        if (count >= 0)
            return count;
        problems.Error("model.count", path, "There cannot be fewer than none.", ModelGroup.Seen(json), "0 or more");
        return null;
    }
}
