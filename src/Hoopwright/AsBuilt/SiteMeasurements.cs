using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;

namespace Hoopwright.AsBuilt;

/// <summary>Everything that was measured on site.</summary>
public sealed record SiteMeasurements
{
    /// <summary>The tunnel as planned.</summary>
    public required Tunnel Planned { get; init; }

    /// <summary>How near is near enough.</summary>
    public required AsBuiltTolerances Tolerances { get; init; }

    /// <summary>Everything that can be measured, in the order in which one walks round the tunnel.</summary>
    public required ImmutableArray<Measurable> Measurable { get; init; }

    /// <summary>What was measured, in the same order.</summary>
    public required ImmutableArray<Measurement> Measured { get; init; }

    /// <summary>What is wrong with entries of the site book, in their order.</summary>
    public required ImmutableArray<Diagnostic> Diagnostics { get; init; }

    /// <summary>What was measured under a name; null when nothing was.</summary>
    /// <param name="name">A name of <see cref="MeasureNames"/>.</param>
    public Measurement? Of(string name) => Measured.FirstOrDefault(each => each.Of.Name == name);

    /// <summary>The measured lengths that are used; null where none is.</summary>
    internal BuiltSizes? Sizes
    {
        get
        {
            var values = Measured.Where(each => each.Value is not null).ToImmutableSortedDictionary(each => each.Of.Name, each => each.Value!.Value, StringComparer.Ordinal);
            return values.IsEmpty ? null : new BuiltSizes { Planned = Planned, Values = values };
        }
    }
}
