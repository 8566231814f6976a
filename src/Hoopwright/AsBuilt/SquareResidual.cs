using Hoopwright.Quantities;

namespace Hoopwright.AsBuilt;

/// <summary>What fitting the corners leaves of a measured length.</summary>
/// <param name="Name">Its name in the site book.</param>
/// <param name="Left">Measured less computed.</param>
public sealed record SquareResidual(string Name, Length Left);
