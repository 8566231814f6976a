using System.Collections.Immutable;
using Hoopwright.Sources;

namespace Hoopwright.Strength;

/// <summary>What a check of strength found, in the form that any report can print.</summary>
internal interface ICheck
{
    /// <summary>
    /// Demand over what the standard allows: up to 1 it is within the limit. Positive infinity where nothing can be counted on
    /// (a wall or a slenderness outside the standard, a column past buckling). Never NaN for finite input.
    /// </summary>
    double Utilisation { get; }

    /// <summary>The limit that governs, in words.</summary>
    string Governs { get; }

    /// <summary>Values passed on the way, in the order they are used.</summary>
    ImmutableArray<WorkedValue> Worked { get; }

    /// <summary>The formulas used, each with its source.</summary>
    ImmutableArray<Formula> Formulas { get; }
}
