using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>Gathers needs into lines: one line an item, size and stage.</summary>
internal sealed class TakeoffBuilder
{
    private readonly Dictionary<(BuildStage Stage, string Item, string Size, MaterialUnit Unit), Draft> drafts = [];

    /// <summary>So many of something.</summary>
    public void Add(BuildStage stage, string item, string size, MaterialUnit unit, decimal quantity, string rule, Citation source,
        IEnumerable<string> traceIds, params ReadOnlySpan<string> rulePaths)
    {
        if (quantity <= 0) return;
        Draft draft = At(stage, item, size, unit);
        draft.Parts.Add(new QuantityPart(quantity, rule, source, [.. traceIds.Distinct()]));
        draft.RulePaths.AddRange(rulePaths);
    }

    /// <summary>A length to cut, or a run to join.</summary>
    public void Cut(BuildStage stage, string item, string size, PieceNeed piece, string rule, Citation source, MemberSection? section,
        ImmutableArray<Length> stock, params ReadOnlySpan<string> rulePaths)
    {
        Draft draft = At(stage, item, size, MaterialUnit.CutLengths);
        draft.Parts.Add(new QuantityPart(1, rule, source, [piece.MemberId]));
        draft.Pieces.Add(piece);
        draft.Section ??= section;
        draft.Stock.AddRange(stock);
        draft.RulePaths.AddRange(rulePaths);
    }

    /// <summary>The lines by stage, item and size.</summary>
    public TakeoffList ToList() => new(
    [
        .. drafts.OrderBy(each => each.Key.Stage).ThenBy(each => each.Key.Item, StringComparer.Ordinal).ThenBy(each => each.Key.Size, StringComparer.Ordinal)
            .Select(each => Line(each.Key.Stage, each.Key.Item, each.Key.Size, each.Key.Unit, each.Value)),
    ]);

    private static MaterialLine Line(BuildStage stage, string item, string size, MaterialUnit unit, Draft draft) => new()
    {
        Id = string.Create(CultureInfo.InvariantCulture, $"{stage.ToString().ToLowerInvariant()}/{item}{(size.Length > 0 ? "/" + size : "")}"),
        Item = item,
        Size = size,
        Stage = stage,
        Unit = unit,
        Quantity = draft.Parts.Sum(part => part.Quantity),
        Parts = [.. Merged(draft.Parts)],
        Pieces = [.. draft.Pieces],
        Section = draft.Section,
        StockLengths = [.. draft.Stock.Distinct().Order()],
        TraceIds = [.. draft.Parts.SelectMany(part => part.TraceIds).Distinct()],
        Rule = string.Join("; ", draft.Parts.Select(part => part.Rule).Distinct()),
        Source = draft.Parts.Select(part => part.Source).MinBy(LeastSure)!,
        RulePaths = [.. draft.RulePaths.Distinct()],
    };

    /// <summary>Parts of one rule become one.</summary>
    private static IEnumerable<QuantityPart> Merged(List<QuantityPart> parts) => parts.GroupBy(part => (part.Rule, part.Source))
        .Select(group => new QuantityPart(group.Sum(part => part.Quantity), group.Key.Rule, group.Key.Source, [.. group.SelectMany(part => part.TraceIds).Distinct()]));

    private static int LeastSure(Citation source) => source.Standing switch
    {
        Standing.FromMemory => 0,
        Standing.CommonPractice => 1,
        Standing.Derived => 2,
        Standing.Published => 3,
    };

    private Draft At(BuildStage stage, string item, string size, MaterialUnit unit)
    {
        if (!drafts.TryGetValue((stage, item, size, unit), out Draft? draft)) drafts[(stage, item, size, unit)] = draft = new Draft();
        return draft;
    }

    private sealed class Draft
    {
        public List<QuantityPart> Parts { get; } = [];

        public List<PieceNeed> Pieces { get; } = [];

        public MemberSection? Section { get; set; }

        public List<Length> Stock { get; } = [];

        public List<string> RulePaths { get; } = [];
    }
}
