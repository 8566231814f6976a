namespace Hoopwright.Frames;

/// <summary>How the foot of a <see cref="PlanarBow"/> stands. Its place is always held.</summary>
/// <param name="TurnNmPerRad">Stiffness against turning, N·m/rad: 0 for a hinge, <see cref="double.PositiveInfinity"/> when built in.</param>
internal readonly record struct PlanarFoot(double TurnNmPerRad)
{
    /// <summary>A hinge.</summary>
    internal static PlanarFoot Hinge => new(0);

    /// <summary>Built in.</summary>
    internal static PlanarFoot BuiltIn => new(double.PositiveInfinity);
}
