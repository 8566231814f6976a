using Hoopwright.Strength.Steel;

namespace Hoopwright.Strength.Models;

/// <summary>How a bow stands loads.</summary>
/// <param name="Utilisation">Demand over strength where it is greatest; positive infinity when the bow buckles before it carries the loads.</param>
/// <param name="Buckles">True when it buckles before it carries the loads.</param>
/// <param name="Chord">The chord where it is greatest.</param>
/// <param name="AtEnd">True for that chord's right end.</param>
/// <param name="Check">The check there; not filled when it buckles.</param>
/// <param name="BucklingFactor">Multiple of the axial forces at which the bow buckles in its plane; infinite without compression.</param>
internal readonly record struct BowVerdict(double Utilisation, bool Buckles, int Chord, bool AtEnd, TubeCheck Check, double BucklingFactor);
