using System.Collections.Immutable;

namespace Hoopwright.Frames;

/// <summary>The words of a model file.</summary>
internal static class FrameWords
{
    internal static ImmutableArray<string> FreedomNames { get; } = ["ux", "uy", "uz", "rx", "ry", "rz"];

    internal static ImmutableArray<(string Word, Freedoms Value)> Freedoms { get; } =
    [
        ("ux", Frames.Freedoms.Ux), ("uy", Frames.Freedoms.Uy), ("uz", Frames.Freedoms.Uz),
        ("rx", Frames.Freedoms.Rx), ("ry", Frames.Freedoms.Ry), ("rz", Frames.Freedoms.Rz),
    ];

    internal static ImmutableArray<string> ForceNames { get; } = ["fx", "fy", "fz", "mx", "my", "mz"];

    internal static ImmutableArray<(string Word, LoadFrame Value)> LoadFrames { get; } = [("global", LoadFrame.Global), ("member", LoadFrame.Member)];

    internal static ImmutableArray<(string Word, LoadPer Value)> LoadPers { get; } = [("length", LoadPer.Length), ("projection", LoadPer.Projection)];

    internal static ImmutableArray<(string Word, FrameAnalysisKind Value)> Kinds { get; } =
    [
        ("linear", FrameAnalysisKind.Linear), ("secondOrder", FrameAnalysisKind.SecondOrder), ("buckling", FrameAnalysisKind.Buckling),
        ("largeDisplacement", FrameAnalysisKind.LargeDisplacement),
    ];

    internal static ImmutableArray<(string Word, PathControlKind Value)> Controls { get; } =
        [("load", PathControlKind.Load), ("displacement", PathControlKind.Displacement), ("arc", PathControlKind.Arc)];

    internal static ImmutableArray<(string Word, int Value)> FreedomPlaces { get; } = [.. FreedomNames.Select((name, at) => (name, at))];
}
