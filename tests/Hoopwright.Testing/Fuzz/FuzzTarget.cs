using System.Collections.Immutable;

namespace Hoopwright.Testing.Fuzz;

/// <summary>A reader that takes whatever bytes it is given.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Seeds">Inputs to begin with.</param>
/// <param name="Run">Reads an input, and says whether a result came of it; an exception is a fault.</param>
public sealed record FuzzTarget(string Name, ImmutableArray<byte[]> Seeds, Func<byte[], bool> Run);
