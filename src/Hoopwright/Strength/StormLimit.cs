namespace Hoopwright.Strength;

/// <summary>What a storm may bring before the first bow reaches its limit: the load once, against reduced strength.</summary>
public sealed record StormLimit
{
    /// <summary>How snow lies, or how the tunnel stands in the wind.</summary>
    public required StormState State { get; init; }

    /// <summary>Snow on the roof where it lies deepest, over the plan; null for wind.</summary>
    public PressureRange? RoofSnow { get; init; }

    /// <summary>Snow on the ground that lies so on the roof by the standard; null for wind.</summary>
    public PressureRange? GroundSnow { get; init; }

    /// <summary>The wind, as <see cref="StrengthReport.WindNoun"/> says it is measured; null for snow.</summary>
    public SpeedRange? Wind { get; init; }

    /// <summary>The load case.</summary>
    public required string CaseCode { get; init; }

    /// <summary>The load case in words.</summary>
    public required string CaseWords { get; init; }

    /// <summary>Number of the bow that reaches it first.</summary>
    public required int Bow { get; init; }

    /// <summary>What governs, in words.</summary>
    public required string Governs { get; init; }
}
