using System.Collections.Immutable;
using Hoopwright.Frames;
using Hoopwright.Sources;
using Hoopwright.Strength.Models;
using Hoopwright.Strength.Soil;
using Hoopwright.Strength.Steel;

namespace Hoopwright.Strength.Posts;

/// <summary>A steel ground post bent by what the foot of its bow puts on it. Concrete about it is not counted on for bending.</summary>
internal sealed record GroundPostBending : ICheck
{
    /// <inheritdoc/>
    public required double Utilisation { get; init; }

    /// <summary>The greatest moment, at the ground or below it.</summary>
    internal required double GreatestNm { get; init; }

    /// <summary>The tube under that moment.</summary>
    internal required TubeCheck Tube { get; init; }

    /// <summary>Meets a post with its load.</summary>
    /// <param name="steel">Its tube and steel.</param>
    /// <param name="lengthM">Its length; for buckling, which soil hinders more than this says.</param>
    /// <param name="post">How it stands in the ground.</param>
    /// <param name="ground">The ground.</param>
    /// <param name="method">Allowable strength or factored loads, as the load is.</param>
    /// <param name="foot">The load.</param>
    internal static GroundPostBending Of(BowSteel steel, double lengthM, PostInGround post, GroundAt ground, DesignMethod method, FootLoad foot)
    {
        double lateralPaPerM = (ground.Values?.LateralPaPerM ?? 0) * (ground.IsDoubled ? 2 : 1);
        double greatestNm = BuriedMoment.GreatestNm(foot.AcrossN, Math.Abs(foot.TurningNm), lateralPaPerM, post);
        TubeStrength strength = steel.StrengthOf(Buckling.ElasticStressPa(FrameMaterial.Steel.YoungPa, lengthM, steel.GyrationM), lengthM, method);
        TubeCheck tube = strength.Check(new MemberForces(foot.PullN, 0, foot.AcrossN, 0, greatestNm, 0));
        return new GroundPostBending { Utilisation = tube.Utilisation, GreatestNm = greatestNm, Tube = tube };
    }

    /// <inheritdoc/>
    public string Governs => $"{Tube.Governs} in the ground";

    /// <inheritdoc/>
    public ImmutableArray<WorkedValue> Worked => [new("M", GreatestNm, "N·m", "greatest moment of the post, at the ground or below it"), .. Tube.Worked];

    /// <inheritdoc/>
    public ImmutableArray<Formula> Formulas => [BuriedMoment.Greatest, .. Tube.Formulas];
}
