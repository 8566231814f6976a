namespace Hoopwright.Frames;

/// <summary>A straight tie between two nodes of a <see cref="PlanarBow"/>, hinged at both ends.</summary>
/// <param name="From">A node.</param>
/// <param name="To">Another.</param>
/// <param name="EaN">Axial stiffness, N.</param>
internal readonly record struct PlanarTie(int From, int To, double EaN);
