using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>One line of the takeoff: what is needed, for which members or pieces, by which rules.</summary>
public sealed record MaterialLine
{
    /// <summary>Its name: stage, item and size in one; unique in a takeoff.</summary>
    public required string Id { get; init; }

    /// <summary>The item, as in the price book.</summary>
    public required string Item { get; init; }

    /// <summary>The size; empty where there is only one.</summary>
    public required string Size { get; init; }

    /// <summary>The stage of the build it belongs to.</summary>
    public required BuildStage Stage { get; init; }

    /// <summary>How the quantity is counted.</summary>
    public required MaterialUnit Unit { get; init; }

    /// <summary>
    /// Exact quantity needed in the unit, before packages, spares and waste: the sum over <see cref="Parts"/>. For
    /// <see cref="MaterialUnit.CutLengths"/> the count of pieces, a run that may be joined counting as one.
    /// </summary>
    public required decimal Quantity { get; init; }

    /// <summary>What the quantity is the sum of, each part with its rule and the source of the rule.</summary>
    public required ImmutableArray<QuantityPart> Parts { get; init; }

    /// <summary>For lengths that are cut: the pieces and the runs to be joined from pieces.</summary>
    public ImmutableArray<PieceNeed> Pieces { get; init; } = [];

    /// <summary>For lengths that are cut: the section, where there is one.</summary>
    public MemberSection? Section { get; init; }

    /// <summary>For lengths that are cut: the lengths the plan says this is sold in; empty when it does not say.</summary>
    public ImmutableArray<Length> StockLengths { get; init; } = [];

    /// <summary>The members, film pieces, runs or holes it comes from; each once, in the order met.</summary>
    public required ImmutableArray<string> TraceIds { get; init; }

    /// <summary>The rules by which it follows from them, in words.</summary>
    public required string Rule { get; init; }

    /// <summary>Where the rule comes from; where the parts differ, the least sure of them.</summary>
    public required Citation Source { get; init; }

    /// <summary>The rules of the plan it rests on.</summary>
    public ImmutableArray<string> RulePaths { get; init; } = [];

    /// <summary>Item and size as people say them together.</summary>
    public string Name => Size.Length == 0 ? Item : $"{Item} {Size}";
}
