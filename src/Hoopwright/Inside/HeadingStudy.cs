using Hoopwright.Quantities;

namespace Hoopwright.Inside;

/// <summary>The tunnel turned another way on this site.</summary>
/// <param name="FrontFaces">Where the front end would face; the back end as well would do for light.</param>
/// <param name="WinterLight">Light on the floor of a mean day of the four months around the shortest day.</param>
/// <param name="Darkest">The darkest place across over the mean.</param>
/// <param name="AirAcross">Wind across the long sides in the hours in which it is warm outside: it blows through open sides.</param>
/// <param name="StormAcross">Wind across the long sides in the windiest hundredth of hours: it presses on them.</param>
public sealed record HeadingStudy(Angle FrontFaces, LightSum WinterLight, Ratio Darkest, Speed AirAcross, Speed StormAcross);
