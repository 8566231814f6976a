namespace Hoopwright.Frames;

/// <summary>Forces (N) and moments (N·m) at a node, along and about the global axes. They keep their direction as the frame moves.</summary>
internal sealed record NodeLoad(int Node, SixValues Load);
