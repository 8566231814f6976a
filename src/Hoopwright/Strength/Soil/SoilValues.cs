using Hoopwright.Plans;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Soil;

/// <summary>What is presumed of a soil without a test.</summary>
internal sealed record SoilValues
{
    /// <summary>Class of the building code.</summary>
    internal required SoilClass Class { get; init; }

    /// <summary>Allowable bearing on a foundation.</summary>
    internal required double BearingPa { get; init; }

    /// <summary>Allowable lateral pressure for each metre of depth below the ground.</summary>
    internal required double LateralPaPerM { get; init; }

    /// <summary>Coefficient of friction under a foundation; 0 for clay.</summary>
    internal required double SlidingFriction { get; init; }

    /// <summary>Allowable cohesion under a foundation; 0 for soils with friction.</summary>
    internal required double SlidingCohesionPa { get; init; }

    /// <summary>Unit weight in place.</summary>
    internal required Bounds UnitWeightNPerM3 { get; init; }

    /// <summary>Angle of friction; 0 for clay loaded quickly and where no friction is presumed.</summary>
    internal required Bounds FrictionRad { get; init; }

    /// <summary>Undrained shear strength of clay; 0 for other soils.</summary>
    internal required Bounds ShearStrengthPa { get; init; }

    /// <summary>K of soil against a post, and the tangent of the angle between post and soil, multiplied: the part of the weight of soil that rubs.</summary>
    internal required Bounds ShaftFriction { get; init; }

    /// <summary>α, the part of the shear strength of clay that sticks to a post.</summary>
    internal required Bounds Adhesion { get; init; }

    /// <summary>Where the allowable values stand.</summary>
    internal required Citation Source { get; init; }

    /// <summary>What the ranges rest on.</summary>
    internal required Citation RangeSource { get; init; }
}
