namespace Hoopwright.Frames;

/// <summary>Where a support is forced to: shifts (m) and turns (rad) of a node's held freedoms.</summary>
internal sealed record SupportMovement(int Node, SixValues Movement);
