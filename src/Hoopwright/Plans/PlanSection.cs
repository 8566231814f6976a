using System.Collections.Immutable;
using System.Text.Json.Serialization;

namespace Hoopwright.Plans;

/// <summary>One section of the plan document: what was typed, nothing filled in.</summary>
public abstract record PlanSection
{
    /// <summary>
    /// Fields that a newer minor version of the format may know and this one does not, kept as they stood so that
    /// writing the plan loses nothing.
    /// </summary>
    [JsonIgnore]
    public ImmutableArray<UnknownField> Unknown { get; init; } = [];
}
