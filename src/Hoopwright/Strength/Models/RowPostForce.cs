using Hoopwright.Strength.Wood;

namespace Hoopwright.Strength.Models;

/// <summary>What a post of an end carries in the row under a combination that posts are held against.</summary>
/// <param name="Line">The post.</param>
/// <param name="IsFront">At which end.</param>
/// <param name="Case">The combination.</param>
/// <param name="Duration">Its shortest load.</param>
/// <param name="Forces">Where they use it most.</param>
/// <param name="PullN">What pulls its foot upwards; negative where it is pressed down.</param>
internal sealed record RowPostForce(EndPostLine Line, bool IsFront, LoadedCase Case, LoadDuration Duration, WoodForces Forces, double PullN);
