using System.Collections.Immutable;

namespace Hoopwright.Cutting.TwoStage;

/// <summary>How to cut a two-stage job.</summary>
/// <param name="Sheets">The sheets, alike ones one by one.</param>
/// <param name="LeftOut">How many of each piece are left out.</param>
/// <param name="Cost">What the sheets cost, and what is left out.</param>
/// <param name="Bound">No plan costs less; reckoned in whole numbers, so that no rounding can spoil it.</param>
internal sealed record TwoStagePlan(ImmutableArray<TwoStageSheet> Sheets, ImmutableArray<int> LeftOut, long Cost, long Bound)
{
    /// <summary>True when no plan costs less.</summary>
    public bool Proven => Cost == Bound;
}

/// <summary>One sheet.</summary>
/// <param name="Stock">Which kind it is, by its place in the job.</param>
/// <param name="Levels">For each level its pieces.</param>
internal sealed record TwoStageSheet(int Stock, ImmutableArray<ImmutableArray<TwoStagePlace>> Levels);

/// <summary>A piece in a level.</summary>
/// <param name="Piece">Which one, by its place in the job.</param>
/// <param name="Turned">True when it lies the other way.</param>
internal readonly record struct TwoStagePlace(int Piece, bool Turned);
