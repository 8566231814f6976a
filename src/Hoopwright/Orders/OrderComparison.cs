using System.Collections.Immutable;
using Hoopwright.Lists;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Orders;

/// <summary>Two orders side by side: what each stage costs, and which lines differ.</summary>
public sealed record OrderComparison
{
    /// <summary>Cost by stage, every stage that either order has; lines without a stage last.</summary>
    public required ImmutableArray<ComparedStage> Stages { get; init; }

    /// <summary>Lines that differ, by item, size and length.</summary>
    public required ImmutableArray<ComparedOrder> Lines { get; init; }

    /// <summary>Compares two orders.</summary>
    /// <param name="before">The first; null for none.</param>
    /// <param name="after">The second; null for none.</param>
    public static OrderComparison Of(OrderList? before, OrderList? after) => new() { Stages = StagesOf(before, after), Lines = LinesOf(before, after) };

    private static ImmutableArray<ComparedStage> StagesOf(OrderList? before, OrderList? after)
    {
        ImmutableArray<StageCost> first = before?.Stages ?? [], second = after?.Stages ?? [];
        Money Of(ImmutableArray<StageCost> costs, BuildStage? stage) => costs.FirstOrDefault(each => each.Stage == stage)?.Cost ?? Money.Zero;
        return
        [
            .. first.Concat(second).Select(each => each.Stage).Distinct().OrderBy(stage => stage is { } named ? (int)named : int.MaxValue)
                .Select(stage => new ComparedStage(stage, Of(first, stage), Of(second, stage))),
        ];
    }

    private static ImmutableArray<ComparedOrder> LinesOf(OrderList? before, OrderList? after)
    {
        // Two lines alike in all of this are told apart by which comes first.
        static Dictionary<(string, string, Length?, Length?, bool, int), OrderLine> Keyed(OrderList? orders) => (orders?.Lines ?? [])
            .GroupBy(line => (line.Item, line.Size, line.Width, line.Length, line.IsExtra))
            .SelectMany(group => group.Select((line, index) => (Key: (group.Key.Item, group.Key.Size, group.Key.Width, group.Key.Length, group.Key.IsExtra, index), line)))
            .ToDictionary(each => each.Key, each => each.line);
        var first = Keyed(before);
        var second = Keyed(after);
        return [.. JoinedList.Of([.. first.Keys], [.. second.Keys]).Select(key => new ComparedOrder(first.GetValueOrDefault(key), second.GetValueOrDefault(key))).Where(Differs)];
    }

    private static bool Differs(ComparedOrder order) => order is not { Before: { } before, After: { } after }
        || before.Packages != after.Packages || before.Package != after.Package || decimal.Round(before.Needed, 6) != decimal.Round(after.Needed, 6) || before.Price != after.Price;
}
