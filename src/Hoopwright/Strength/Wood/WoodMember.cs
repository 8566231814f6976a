namespace Hoopwright.Strength.Wood;

/// <summary>How a piece is held.</summary>
/// <param name="EdgewiseLengthM">le1, effective length for buckling in the plane of the wide side.</param>
/// <param name="FlatwiseLengthM">le2, effective length for buckling in the plane of the narrow side; 0 where sheathing or girts hold it throughout.</param>
/// <param name="UnbracedEdgeM">lu, length over which the edge in compression is free to turn sideways; 0 where held throughout.</param>
/// <param name="Load">How it is loaded as a beam.</param>
/// <param name="BuiltUp">Kf for buckling of plies about the weak axis: 1 solid, 0.6 nailed, 0.75 bolted (NDS 15.3.2, from memory).</param>
internal readonly record struct WoodMember(
    double EdgewiseLengthM, double FlatwiseLengthM, double UnbracedEdgeM = 0, BeamLoad Load = BeamLoad.Any, double BuiltUp = 1);
