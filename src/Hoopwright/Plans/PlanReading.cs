using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Plans;

/// <summary>What came of reading a plan document.</summary>
/// <param name="Plan">The plan as far as it could be read; a faulty field is left out. Empty when the format is too new.</param>
/// <param name="TooNew">True when the plan is of a newer major version: it must not be worked out nor written over.</param>
/// <param name="Diagnostics">What is wrong, in the order of the file.</param>
public sealed record PlanReading(Plan Plan, bool TooNew, ImmutableArray<Diagnostic> Diagnostics)
{
    private readonly PlanNode? _document;

    internal PlanReading(Plan plan, bool tooNew, ImmutableArray<Diagnostic> diagnostics, PlanNode? document, bool brokeOff = false)
        : this(plan, tooNew, diagnostics) => (_document, BrokeOff) = (document, brokeOff);

    /// <summary>The document as it stands in the file, as far as it goes; null when there is none.</summary>
    internal PlanNode? Document => _document;

    /// <summary>True when the file broke off, so that there may be more than was read.</summary>
    internal bool BrokeOff { get; }

    /// <summary>True when nothing must be put right before the plan can be worked out.</summary>
    public bool IsUsable => !Diagnostics.Any(diagnostic => diagnostic.Severity == Severity.Error);

    /// <summary>Where in the file a path stands, for this reading's diagnostics and for those of later checks alike.</summary>
    /// <param name="path">Dotted names and [index].</param>
    /// <returns>The place of the value, or of the nearest group around it that is in the file; null for an empty file.</returns>
    public TextPlace? PlaceOf(string path) => _document?.Nearest(path, out _).Place;
}
