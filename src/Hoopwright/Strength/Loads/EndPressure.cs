using Hoopwright.Quantities;

namespace Hoopwright.Strength.Loads;

/// <summary>Pressure on a whole end wall, which its posts carry to the ground and to the end bow.</summary>
/// <param name="IsFront">True for the front end.</param>
/// <param name="Inwards">Pressure; positive presses the wall into the tunnel, negative sucks it out.</param>
public sealed record EndPressure(bool IsFront, Pressure Inwards)
{
    /// <summary>The same pressure as a push along the tunnel, positive from front to back.</summary>
    public Pressure AlongTunnel => IsFront ? Inwards : -Inwards;
}
