using System.Collections.Immutable;

namespace Hoopwright.Frames;

/// <summary>A frame of straight beams, its supports, its loads, and how it is to be solved. SI throughout: m, N, Pa, K.</summary>
public sealed record FrameModel
{
    internal FrameModel()
    {
    }

    internal ImmutableArray<FrameNode> Nodes { get; init; } = [];

    internal ImmutableArray<FrameMember> Members { get; init; } = [];

    internal ImmutableArray<FrameLoadCase> LoadCases { get; init; } = [];

    internal ImmutableArray<FrameCombination> Combinations { get; init; } = [];

    internal FrameAnalysis Analysis { get; init; } = new();
}
