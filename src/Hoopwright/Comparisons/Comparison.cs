using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Lists;
using Hoopwright.Orders;
using Hoopwright.Packets;
using Hoopwright.Plans;

namespace Hoopwright.Comparisons;

/// <summary>Two plans side by side: what differs between them, and what that changes.</summary>
public sealed record Comparison
{
    /// <summary>The first plan, worked out.</summary>
    public required PlannedTunnel Before { get; init; }

    /// <summary>The second plan, worked out.</summary>
    public required PlannedTunnel After { get; init; }

    /// <summary>Fields that differ, in the order of the plan format; then those that neither plan gives and that are taken otherwise.</summary>
    public ImmutableArray<ComparedField> Fields => LazyFields.Value;

    // A long site book has very many leaves, and who asks for orders and costs alone need not wait for them.
    internal Lazy<ImmutableArray<ComparedField>> LazyFields { get; init; } = new([]);

    /// <summary>The facts of the first plan; null when it has errors.</summary>
    public required TunnelFacts? FactsBefore { get; init; }

    /// <summary>The facts of the second plan; null when it has errors.</summary>
    public required TunnelFacts? FactsAfter { get; init; }

    /// <summary>Cost by stage, every stage that either plan has.</summary>
    public required ImmutableArray<ComparedStage> Stages { get; init; }

    /// <summary>Lines of the order that differ, by item, size and length.</summary>
    public required ImmutableArray<ComparedOrder> Orders { get; init; }

    /// <summary>What is told of one and not of the other, or of both otherwise; the worst first.</summary>
    public ImmutableArray<ComparedDiagnostic> Diagnostics => LazyDiagnostics.Value;

    internal Lazy<ImmutableArray<ComparedDiagnostic>> LazyDiagnostics { get; init; } = new([]);

    /// <summary>True when costs can be held against each other: both worked out, in one currency.</summary>
    public bool SameCurrency => FactsBefore is { } before && FactsAfter is { } after && before.Currency == after.Currency;

    /// <summary>Compares two plans that were worked out.</summary>
    /// <param name="before">The first.</param>
    /// <param name="after">The second.</param>
    public static Comparison Of(PlannedTunnel before, PlannedTunnel after)
    {
        OrderComparison orders = OrderComparison.Of(before.Orders, after.Orders);
        return new()
        {
            Before = before,
            After = after,
            LazyFields = new(() => FieldsOf(before, after)),
            FactsBefore = TunnelFacts.Of(before),
            FactsAfter = TunnelFacts.Of(after),
            Stages = orders.Stages,
            Orders = orders.Lines,
            LazyDiagnostics = new(() => DiagnosticsOf(before, after)),
        };
    }

    private static ImmutableArray<ComparedField> FieldsOf(PlannedTunnel before, PlannedTunnel after)
    {
        List<KeyValuePair<string, string>> first = PlanLeaves.Of(before.Plan), second = PlanLeaves.Of(after.Plan);
        Dictionary<string, string> was = new(first), now = new(second);
        Dictionary<string, RuleUsed> tookBefore = Taken(before), tookAfter = Taken(after);
        IEnumerable<string> written = JoinedList.Of<string>([.. first.Select(leaf => leaf.Key)], [.. second.Select(leaf => leaf.Key)]).Where(path => was.GetValueOrDefault(path) != now.GetValueOrDefault(path));
        IEnumerable<string> silent = JoinedList.Of<string>([.. before.Rules.Select(rule => rule.Path)], [.. after.Rules.Select(rule => rule.Path)])
            .Where(path => !was.ContainsKey(path) && !now.ContainsKey(path) && tookBefore.GetValueOrDefault(path)?.Text != tookAfter.GetValueOrDefault(path)?.Text);
        return [.. written.Concat(silent).Select(path => new ComparedField(
            path, was.GetValueOrDefault(path), now.GetValueOrDefault(path), tookBefore.GetValueOrDefault(path)?.Text, tookAfter.GetValueOrDefault(path)?.Text))];
    }

    private static Dictionary<string, RuleUsed> Taken(PlannedTunnel planned) => planned.Rules.Where(rule => !rule.Given).ToDictionary(rule => rule.Path);

    private static ImmutableArray<ComparedDiagnostic> DiagnosticsOf(PlannedTunnel before, PlannedTunnel after)
    {
        static Dictionary<(string, string, int), Diagnostic> Keyed(PlannedTunnel planned) => planned.Diagnostics.GroupBy(each => (each.Code, each.Path))
            .SelectMany(group => group.Select((told, index) => (Key: (group.Key.Code, group.Key.Path, index), told)))
            .ToDictionary(each => each.Key, each => each.told);
        var first = Keyed(before);
        var second = Keyed(after);
        return
        [
            .. JoinedList.Of([.. first.Keys], [.. second.Keys]).Select(key => new ComparedDiagnostic(first.GetValueOrDefault(key), second.GetValueOrDefault(key)))
                .Where(each => each.Before != each.After)
                .OrderBy(each => each.Told.Severity switch { Severity.Error => 0, Severity.Warning => 1, Severity.Assumption => 2 }),
        ];
    }
}
