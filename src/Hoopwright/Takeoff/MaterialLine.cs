using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>One line of the takeoff: what is needed, for which members or pieces, by which rule.</summary>
public sealed record MaterialLine
{
    /// <summary>Its name: item and size in one.</summary>
    public required string Id { get; init; }

    /// <summary>The item, as in the price book.</summary>
    public required string Item { get; init; }

    /// <summary>The size; empty where there is only one.</summary>
    public required string Size { get; init; }

    /// <summary>The stage of the build it belongs to.</summary>
    public required BuildStage Stage { get; init; }

    /// <summary>How the quantity is counted.</summary>
    public required MaterialUnit Unit { get; init; }

    /// <summary>Exact quantity needed in the unit, before packages, spares and waste.</summary>
    public required decimal Quantity { get; init; }

    /// <summary>For lengths that are cut: the pieces.</summary>
    public ImmutableArray<PieceNeed> Pieces { get; init; } = [];

    /// <summary>The members, film pieces, runs or holes it comes from.</summary>
    public required ImmutableArray<string> TraceIds { get; init; }

    /// <summary>The rule by which it follows from them, in words.</summary>
    public required string Rule { get; init; }

    /// <summary>Where the rule comes from.</summary>
    public required Citation Source { get; init; }

    /// <summary>The rules of the plan it rests on.</summary>
    public ImmutableArray<string> RulePaths { get; init; } = [];
}

/// <summary>A length to be cut from stock.</summary>
/// <param name="MemberId">The member or run it is for; a spliced member has several.</param>
/// <param name="Label">What to write on it.</param>
/// <param name="Length">Length to cut, rounded for the tape.</param>
public sealed record PieceNeed(string MemberId, string Label, Length Length);

/// <summary>How a quantity is counted.</summary>
public enum MaterialUnit
{
    /// <summary>So many.</summary>
    Each,

    /// <summary>Pieces cut from stock lengths.</summary>
    CutLengths,

    /// <summary>Running metres, bought in rolls or by the length.</summary>
    Metres,

    /// <summary>Cubic metres.</summary>
    CubicMetres,

    /// <summary>Square metres.</summary>
    SquareMetres,
}

/// <summary>A stage of the build, for cost by stage.</summary>
public enum BuildStage
{
    /// <summary>Setting out.</summary>
    Site,

    /// <summary>Ground posts, concrete, baseboards.</summary>
    Ground,

    /// <summary>Bows, purlins, ties and braces.</summary>
    Frame,

    /// <summary>End walls and doors.</summary>
    Ends,

    /// <summary>Film, channel, battens, sides.</summary>
    Cover,
}
