using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>What is wrong with one document, gathered while it is read and given out in the order of the file.</summary>
internal sealed class PlanProblems
{
    private readonly List<(int Offset, Diagnostic Diagnostic)> _found = [];

    /// <summary>The units in which bounds are shown.</summary>
    public UnitSystem Units { get; set; }

    /// <summary>True when the document is of a newer minor version, whose fields are kept without a word.</summary>
    public bool KeepsUnknown { get; set; }

    /// <summary>True when the file broke off, so that a missing field proves nothing.</summary>
    public bool BrokeOff { get; set; }

    /// <summary>True when something must be put right first.</summary>
    public bool HasErrors => _found.Exists(found => found.Diagnostic.Severity == Severity.Error);

    /// <summary>Adds an error at a value.</summary>
    public void Error(string code, PlanNode at, string message, string? accepted = null) =>
        Error(code, at.Offset, at.Path, message, at.Seen, accepted);

    /// <summary>Adds an error at a place.</summary>
    public void Error(string code, int offset, string path, string message, string? seen = null, string? accepted = null) =>
        _found.Add((offset, new Diagnostic(code, Severity.Error, path, message, seen, accepted)));

    /// <summary>Adds an error about a field that is not there, unless the file broke off before it could be.</summary>
    public void Missing(PlanNode section, string field, string example)
    {
        if (!BrokeOff)
            Error(PlanCodes.Missing, section.Offset, section.PathOf(field), $"{field} is missing.", null, $"\"{field}\": {example}");
    }

    /// <summary>Adds a warning at a value.</summary>
    public void Warning(string code, PlanNode at, string message, string? accepted = null) =>
        _found.Add((at.Offset, new Diagnostic(code, Severity.Warning, at.Path, message, at.Seen, accepted)));

    /// <summary>All of them in the order of the file.</summary>
    public ImmutableArray<Diagnostic> InOrder() => [.. _found.OrderBy(found => found.Offset).Select(found => found.Diagnostic)];
}
