using System.Collections.Immutable;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Soil;

/// <summary>
/// A post pulled upwards. Soil is known only within bounds, so the answer has two ends; the lower one is the utilisation. A
/// pull test on site takes its place.
/// </summary>
internal sealed record UpliftCheck : ICheck
{
    internal static readonly Formula Total = new("R", "0.6·weight + soil/F; F = 3.0 at the lower end, 2.5 at the upper", "N",
        Register.ShallowPosts.At("safety factor of soil, editions to 1998; 0.6 of dead load as in allowable-stress combinations"));

    /// <summary>Factor on dead weight that helps, as in the combination 0.6D + 0.6W.</summary>
    internal const double WeightPart = 0.6;

    /// <summary>Safety factor on soil at the lower end.</summary>
    internal const double SoilSafetyLeast = 3.0;

    /// <summary>Safety factor on soil at the upper end.</summary>
    internal const double SoilSafetyMost = 2.5;

    /// <inheritdoc/>
    public required double Utilisation { get; init; }

    /// <summary>The same with soil at the upper end of its bounds.</summary>
    internal required double UtilisationAtBest { get; init; }

    /// <summary>Pull that may be put on it.</summary>
    internal required Bounds AllowedN { get; init; }

    /// <summary>Pull at which it gives way.</summary>
    internal required Bounds UltimateN { get; init; }

    /// <summary>Weight of post and concrete.</summary>
    internal required double WeightN { get; init; }

    /// <summary>What holds, piece by piece.</summary>
    internal required ImmutableArray<UpliftPart> Parts { get; init; }

    private ImmutableArray<Formula> SoilFormulas { get; init; }

    /// <summary>Meets an anchorage with the pull on it.</summary>
    /// <param name="soil">Soil; null where nothing is presumed of it, then only weight holds.</param>
    /// <param name="anchorage">How the post is held.</param>
    /// <param name="pullN">Upwards, under allowable-stress combinations with no dead load of the post itself in it; 0 or more.</param>
    internal static UpliftCheck Of(SoilValues? soil, Anchorage anchorage, double pullN)
    {
        (double weightN, string name, Bounds soilN, ImmutableArray<Formula> formulas) = anchorage.Match(
            driven: post => Rubbed(soil, post, post.PostWeightN, post.DiameterM, post.EmbedmentM),
            plug: plug => Rubbed(soil, plug, plug.PostWeightN + plug.ConcreteWeightN, plug.DiameterM, plug.DepthM),
            collar: collar => Covered(soil, collar));
        var weight = new Bounds(weightN, weightN);
        var allowedN = new Bounds((WeightPart * weightN) + (soilN.Least / SoilSafetyLeast), (WeightPart * weightN) + (soilN.Most / SoilSafetyMost));
        return new UpliftCheck
        {
            Utilisation = pullN <= 0 ? 0 : pullN / allowedN.Least,
            UtilisationAtBest = pullN <= 0 ? 0 : pullN / allowedN.Most,
            AllowedN = allowedN,
            UltimateN = weight + soilN,
            WeightN = weightN,
            Parts = [new UpliftPart("weight of post and concrete", weight), new UpliftPart(name, soilN)],
            SoilFormulas = formulas,
        };
    }

    /// <summary>The lower end of this check with the upper end of another one of the same post, where more of the ground counts at the upper end.</summary>
    /// <param name="upper">The post in the ground that counts at the upper end.</param>
    internal UpliftCheck UpTo(UpliftCheck upper) => this with
    {
        UtilisationAtBest = upper.UtilisationAtBest,
        AllowedN = new Bounds(AllowedN.Least, upper.AllowedN.Most),
        UltimateN = new Bounds(UltimateN.Least, upper.UltimateN.Most),
        Parts = [.. Parts.Zip(upper.Parts, (least, most) => least with { UltimateN = new Bounds(least.UltimateN.Least, most.UltimateN.Most) })],
    };

    /// <inheritdoc/>
    public string Governs => "pulling out of the ground";

    /// <inheritdoc/>
    public ImmutableArray<WorkedValue> Worked =>
    [
        .. Parts.SelectMany(part => new WorkedValue[]
        {
            new("Q", part.UltimateN.Least, "N", part.Name + ", at least"),
            new("Q", part.UltimateN.Most, "N", part.Name + ", at most"),
        }),
        new("R", AllowedN.Least, "N", "pull that may be put on it, lower end"),
        new("R", AllowedN.Most, "N", "pull that may be put on it, upper end"),
    ];

    /// <inheritdoc/>
    public ImmutableArray<Formula> Formulas => [Total, .. SoilFormulas];

    private static (double WeightN, string Name, Bounds SoilN, ImmutableArray<Formula> Formulas) Rubbed(
        SoilValues? soil, Anchorage anchorage, double weightN, double diameterM, double depthM)
    {
        double fromM = Math.Min(anchorage.FrostDepthM, depthM);
        if (soil is null) return (weightN, "soil rubbing on its side", default, []);
        Bounds sandN = new(
            Shaft.SandN(diameterM, fromM, depthM, soil.UnitWeightNPerM3.Least, soil.ShaftFriction.Least),
            Shaft.SandN(diameterM, fromM, depthM, soil.UnitWeightNPerM3.Most, soil.ShaftFriction.Most));
        Bounds clayN = new(
            Shaft.ClayN(diameterM, depthM - fromM, soil.Adhesion.Least * soil.ShearStrengthPa.Least),
            Shaft.ClayN(diameterM, depthM - fromM, soil.Adhesion.Most * soil.ShearStrengthPa.Most));
        return (weightN, "soil rubbing on its side", sandN + clayN, [soil.ShearStrengthPa.Most > 0 ? Shaft.ClayAdhesion : Shaft.SandFriction]);
    }

    // Soil put back is loose at first: at the lower end it only weighs what stands right above the collar.
    private static (double WeightN, string Name, Bounds SoilN, ImmutableArray<Formula> Formulas) Covered(SoilValues? soil, BuriedCollar collar)
    {
        double weightN = collar.PostWeightN + collar.ConcreteWeightN;
        if (soil is null) return (weightN, "soil above the collar", default, []);
        double leastN = ShallowAnchor.PrismN(collar.DiameterM, collar.CoverM, soil.UnitWeightNPerM3.Least);
        double mostN = ShallowAnchor.CircleN(collar.DiameterM, collar.CoverM, soil.ShearStrengthPa.Most, soil.UnitWeightNPerM3.Most, soil.FrictionRad.Most);
        return (weightN, "soil above the collar", new Bounds(leastN, Math.Max(leastN, mostN)), [ShallowAnchor.Circle, ShallowAnchor.Deep]);
    }
}
