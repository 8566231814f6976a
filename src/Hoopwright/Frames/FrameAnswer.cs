using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Frames;

/// <summary>What solving a frame gave.</summary>
public sealed record FrameAnswer
{
    internal FrameAnswer()
    {
    }

    /// <summary>What was found wrong or doubtful.</summary>
    public required ImmutableArray<Diagnostic> Diagnostics { get; init; }

    internal FrameModel Model { get; init; } = new();

    /// <summary>Places of the combinations that were solved, in the model's order.</summary>
    internal ImmutableArray<int> Solved { get; init; } = [];

    /// <summary>Combinations that were tried and could not be solved, in the model's order, each with the code of what stood in the way.</summary>
    internal ImmutableArray<(int Combination, string Code)> Unsolved { get; init; } = [];

    /// <summary>One state for each solved combination; none when the model could not be solved.</summary>
    internal ImmutableArray<FrameState> States { get; init; } = [];

    /// <summary>For a buckling run: the factors of each solved combination.</summary>
    internal ImmutableArray<BucklingModes> Buckling { get; init; } = [];

    /// <summary>For a large-displacement run: the path of each solved combination.</summary>
    internal ImmutableArray<ImmutableArray<PathPoint>> Paths { get; init; } = [];
}
