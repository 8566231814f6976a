using System.Collections.Immutable;
using System.ComponentModel;

namespace Hoopwright.Plans;

/// <summary>
/// A value that somebody gave to a field of a shared plan, kept so that two copies can be put together: an edit stands until
/// another one that knew of it takes its place. Two that knew nothing of each other stand side by side until somebody decides.
/// </summary>
public sealed record PlanEdit : PlanSection
{
    /// <summary>An identity that sorts by time.</summary>
    [Description("An identity that sorts by time.")]
    public string? Id { get; init; }

    /// <summary>The field, as a path in the plan.</summary>
    [Description("The field, as a path in the plan.")]
    public string? Path { get; init; }

    /// <summary>Its value as JSON; left out when the field was taken out.</summary>
    [Description("Its value as JSON; left out when the field was taken out.")]
    public string? Value { get; init; }

    /// <summary>Who wrote it, as typed.</summary>
    [Description("Who wrote it, as typed.")]
    public string? By { get; init; }

    /// <summary>The phone or computer it was written on, as named there.</summary>
    [Description("The phone or computer it was written on, as named there.")]
    public string? Device { get; init; }

    /// <summary>The ids of the edits of this field that it takes the place of.</summary>
    [Description("The ids of the edits of this field that it takes the place of.")]
    public ImmutableArray<string> After { get; init; } = [];
}
