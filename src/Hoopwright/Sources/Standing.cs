namespace Hoopwright.Sources;

/// <summary>How surely a figure or a rule is known.</summary>
public enum Standing
{
    /// <summary>Printed in the named source and seen there.</summary>
    Published,

    /// <summary>The trade does it so; no source.</summary>
    CommonPractice,

    /// <summary>Written from memory of a standard or of the trade; to be confirmed.</summary>
    FromMemory,

    /// <summary>Follows from the other figures by arithmetic or geometry alone.</summary>
    Derived,
}
