using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Strength;

namespace Hoopwright.Sweeps;

/// <summary>One design of a sweep: what it costs and what it stands.</summary>
public sealed record SweptDesign
{
    /// <summary>Its number, from 0; the last varied field turns fastest.</summary>
    public required int Number { get; init; }

    /// <summary>The values of the varied fields as typed, in the order of the fields.</summary>
    public required ImmutableArray<string> Values { get; init; }

    /// <summary>What the order comes to; null when the design cannot be built.</summary>
    public Money? Cost { get; init; }

    /// <summary>How many lines of the order have no price, so that the cost leaves them out.</summary>
    public int Unpriced { get; init; }

    /// <summary>How it stands the entered loads; null when the design cannot be built.</summary>
    public StrengthVerdict? Verdict { get; init; }

    /// <summary>Ground snow at the limit as a storm brings it; null when it was not found.</summary>
    public Pressure? StormSnow { get; init; }

    /// <summary>Gust at the limit as a storm brings it; null when it was not found.</summary>
    public Speed? StormGust { get; init; }

    /// <summary>Ground snow at the limit as codes ask; null when it was not found.</summary>
    public Pressure? CodeSnow { get; init; }

    /// <summary>Gust at the limit as codes ask; null when it was not found.</summary>
    public Speed? CodeGust { get; init; }

    /// <summary>What governs: under the worst entered combination, or at the limit in snow where no loads are entered.</summary>
    public string Governs { get; init; } = "";

    /// <summary>Why the design cannot be built or its frame is not checked; empty when both can be done.</summary>
    public string Problem { get; init; } = "";

    /// <summary>What a plan that was worked out says of itself.</summary>
    /// <param name="number">Its number.</param>
    /// <param name="values">The values of the varied fields.</param>
    /// <param name="planned">The plan, worked out.</param>
    public static SweptDesign Of(int number, ImmutableArray<string> values, PlannedTunnel planned)
    {
        var design = new SweptDesign { Number = number, Values = values };
        if (planned is not { Strength: { } strength, Orders: { } orders })
        {
            Diagnostic? first = planned.Diagnostics.FirstOrDefault(each => each.Severity == Severity.Error);
            return design with { Problem = first is null ? "It cannot be laid out." : $"{first.Path}: {first.Message}" };
        }
        return design with
        {
            Cost = orders.Total,
            Unpriced = orders.Unpriced,
            Verdict = strength.Verdict,
            StormSnow = strength.InSnow(StrengthLevel.Storm)?.GroundSnow?.Taken,
            StormGust = strength.InWind(StrengthLevel.Storm)?.Wind?.Taken,
            CodeSnow = strength.InSnow(StrengthLevel.Code)?.GroundSnow?.Taken,
            CodeGust = strength.InWind(StrengthLevel.Code)?.Wind?.Taken,
            Governs = strength.Governs,
            Problem = strength.NotChecked ?? "",
        };
    }
}
