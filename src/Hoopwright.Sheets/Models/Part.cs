using System.Collections.Immutable;

namespace Hoopwright.Sheets.Models;

/// <summary>A part of the model: a body at a place, or a group of parts.</summary>
/// <param name="Name">Its name; that of its member where it is one.</param>
internal sealed record Part(string Name)
{
    /// <summary>What it looks like; null for a group. Equal parts share one.</summary>
    public Solid? Solid { get; init; }

    /// <summary>What it is made of.</summary>
    public Material Material { get; init; }

    /// <summary>Where its own zero lies, m.</summary>
    public Point3 At { get; init; }

    /// <summary>What it is, for those who ask: role, place, section, length.</summary>
    public ImmutableArray<(string Name, string Value)> Facts { get; init; } = [];

    /// <summary>The parts of a group.</summary>
    public ImmutableArray<Part> Parts { get; init; } = [];
}
