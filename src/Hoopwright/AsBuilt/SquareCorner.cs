using Hoopwright.Quantities;

namespace Hoopwright.AsBuilt;

/// <summary>A corner of the string rectangle.</summary>
/// <param name="Name">Which.</param>
/// <param name="X">Across from where front left stands.</param>
/// <param name="Y">Along from where front left stands.</param>
/// <param name="MoveRight">How far to move it to the right; negative to the left.</param>
/// <param name="MoveBack">How far to move it to the back; negative to the front.</param>
public sealed record SquareCorner(string Name, Length X, Length Y, Length MoveRight, Length MoveBack)
{
    /// <summary>How far it moves.</summary>
    public Length Move => Length.FromMetres(Math.Sqrt((MoveRight.Metres * MoveRight.Metres) + (MoveBack.Metres * MoveBack.Metres)));
}
