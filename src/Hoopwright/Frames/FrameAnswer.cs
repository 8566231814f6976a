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

    /// <summary>One state for each combination, in the model's order; none when the model could not be solved.</summary>
    internal ImmutableArray<FrameState> States { get; init; } = [];

    /// <summary>For a buckling run: the factors of each combination, in the model's order.</summary>
    internal ImmutableArray<BucklingModes> Buckling { get; init; } = [];

    /// <summary>For a large-displacement run: the path of each combination, in the model's order.</summary>
    internal ImmutableArray<ImmutableArray<PathPoint>> Paths { get; init; } = [];
}
