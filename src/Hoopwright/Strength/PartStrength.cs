using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Strength;

/// <summary>How one part of the tunnel besides its bows stands the worst that the loads of the site put on it.</summary>
public sealed record PartStrength
{
    /// <summary>What it is.</summary>
    public required PartKind Kind { get; init; }

    /// <summary>Its stable name, such as <c>post-bare-uplift</c>.</summary>
    public required string Code { get; init; }

    /// <summary>What is looked at, in words.</summary>
    public required string Words { get; init; }

    /// <summary>Where it is worst, in words.</summary>
    public required string Where { get; init; }

    /// <summary>Demand over what is allowed at the lower end of what is known of it: 0 or more, null where nothing can be counted on.</summary>
    public required Ratio? AtWeakest { get; init; }

    /// <summary>The same at the upper end: 0 or more, null where nothing can be counted on there either.</summary>
    public required Ratio? AtStrongest { get; init; }

    /// <summary>What governs at the lower end, in words.</summary>
    public required string Governs { get; init; }

    /// <summary>The combination or load case that it rests on.</summary>
    public required string LoadCode { get; init; }

    /// <summary>That combination or load case in words.</summary>
    public required string LoadWords { get; init; }

    /// <summary>How it stands, on the assumptions made.</summary>
    public StrengthVerdict Verdict => (IsWithin(AtWeakest), IsWithin(AtStrongest)) switch
    {
        (_, false) => StrengthVerdict.DoesNotStand,
        (false, _) => StrengthVerdict.Marginal,
        _ => StrengthVerdict.Stands,
    };

    /// <summary>The checks at the lower end, with their values and formulas; none where nothing is presumed.</summary>
    internal ImmutableArray<ICheck> Checks { get; init; } = [];

    /// <summary>A utilisation that may be infinite, as a number to show; null where nothing can be counted on.</summary>
    internal static Ratio? Shown(double utilisation) => double.IsFinite(utilisation) ? Ratio.FromValue(utilisation) : null;

    private static bool IsWithin(Ratio? utilisation) => utilisation is { Value: <= 1 };
}
