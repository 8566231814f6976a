using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>Gathers parts of quantities; parts of the same stage, item and size make one line.</summary>
internal class TakeoffDraft
{
    private readonly Dictionary<(BuildStage Stage, string Item, string Size), Gathered> lines = [];

    /// <summary>Adds so many, or so much.</summary>
    public virtual void Add(BuildStage stage, MaterialUnit unit, string item, string size, decimal quantity, string rule, Citation source,
        IEnumerable<string> trace, params ReadOnlySpan<string> rulePaths)
    {
        if (quantity <= 0) return;
        Gathered line = Line(stage, unit, item, size);
        line.Parts.Add(new QuantityPart(quantity, rule, source, [.. trace.Distinct()]));
        foreach (string path in rulePaths) line.Paths.Add(path);
    }

    /// <summary>Adds a count by a rule of so many for each.</summary>
    public void Count(BuildStage stage, string item, string size, int each, int times, Usual<int> rule, IEnumerable<string> trace, params ReadOnlySpan<string> rulePaths) =>
        Add(stage, MaterialUnit.Each, item, size, each * times, rule.Says, rule.Source, trace, rulePaths);

    /// <summary>Adds a count by a rule of so many for each, as the plan has it or as usual.</summary>
    public void Count(BuildStage stage, string item, string size, RuleAsked<int> rule, int times, IEnumerable<string> trace) =>
        Add(stage, MaterialUnit.Each, item, size, rule.Value * times, rule.Says, rule.Source, trace, rule.Path);

    /// <summary>Adds lengths to cut.</summary>
    public virtual void Cut(BuildStage stage, string item, string size, MemberSection? section, PieceNeed piece, ImmutableArray<Length> stock, string rule, Citation source)
    {
        Gathered line = Line(stage, MaterialUnit.CutLengths, item, size);
        line.Section ??= section;
        line.Pieces.Add(piece);
        foreach (Length length in stock) line.Stock.Add(length);
        line.Parts.Add(new QuantityPart(1, rule, source, [piece.MemberId]));
    }

    /// <summary>The lines by stage, then item, then size.</summary>
    public TakeoffList List() => new(
    [
        .. lines.OrderBy(line => line.Key.Stage)
            .ThenBy(line => line.Key.Item, StringComparer.Ordinal)
            .ThenBy(line => line.Key.Size, StringComparer.Ordinal)
            .Select(line => Made(line.Key.Stage, line.Key.Item, line.Key.Size, line.Value)),
    ]);

    private static MaterialLine Made(BuildStage stage, string item, string size, Gathered gathered)
    {
        ImmutableArray<QuantityPart> parts = Merged(gathered.Parts);
        string name = size.Length == 0 ? item : $"{item} {size}";
        return new MaterialLine
        {
            Id = $"{stage.ToString().ToLowerInvariant()}: {name}",
            Item = item,
            Size = size,
            Stage = stage,
            Unit = gathered.Unit,
            Quantity = parts.Sum(part => part.Quantity),
            Parts = parts,
            Pieces = [.. gathered.Pieces],
            Section = gathered.Section,
            StockLengths = [.. gathered.Stock],
            TraceIds = [.. parts.SelectMany(part => part.TraceIds).Distinct()],
            Rule = string.Join(" ", parts.Select(part => part.Rule).Distinct()),
            Source = parts.Select(part => part.Source).Aggregate((one, other) => SurenessOf(other) > SurenessOf(one) ? other : one),
            RulePaths = [.. gathered.Paths],
        };
    }

    /// <summary>Parts by the same rule are one part.</summary>
    private static ImmutableArray<QuantityPart> Merged(List<QuantityPart> parts) =>
    [
        .. parts.GroupBy(part => (part.Rule, part.Source)).Select(group => new QuantityPart(
            group.Sum(part => part.Quantity), group.Key.Rule, group.Key.Source, [.. group.SelectMany(part => part.TraceIds).Distinct()])),
    ];

    private static int SurenessOf(Citation source) => source.Standing switch
    {
        Standing.Derived => 0,
        Standing.Published => 1,
        Standing.CommonPractice => 2,
        Standing.FromMemory => 3,
    };

    private Gathered Line(BuildStage stage, MaterialUnit unit, string item, string size)
    {
        if (!lines.TryGetValue((stage, item, size), out Gathered? line)) lines.Add((stage, item, size), line = new Gathered(unit));
        return line.Unit == unit ? line : throw new InvalidOperationException($"{item} is counted in two units.");
    }

    private sealed class Gathered(MaterialUnit unit)
    {
        public MaterialUnit Unit { get; } = unit;

        public List<QuantityPart> Parts { get; } = [];

        public List<PieceNeed> Pieces { get; } = [];

        public SortedSet<Length> Stock { get; } = [];

        public SortedSet<string> Paths { get; } = new(StringComparer.Ordinal);

        public MemberSection? Section { get; set; }
    }
}
