using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Diagnostics;

namespace Hoopwright.ModelFiles;

/// <summary>What is wrong with one model or job file, gathered while it is read. A file of nonsense ends in a short list.</summary>
internal sealed class ModelProblems
{
    private const int MostSaid = 50;
    private readonly List<Diagnostic> _said = [];
    private int _more;

    /// <summary>True when something must be put right before the file can be solved.</summary>
    internal bool HasErrors { get; private set; }

    /// <summary>True when no more is listed, so that no work need be spent on good advice.</summary>
    internal bool IsFull => _said.Count >= MostSaid;

    internal void Error(string code, string path, string message, string? seen = null, string? accepted = null) =>
        Say(new(code, Severity.Error, path, message, seen, accepted));

    internal void Assume(string code, string path, string message, string taken) =>
        Say(new(code, Severity.Assumption, path, message, null, taken));

    internal void Say(Diagnostic diagnostic)
    {
        HasErrors |= diagnostic.Severity == Severity.Error;
        if (IsFull)
            _more++;
        else
            _said.Add(diagnostic);
    }

    /// <summary>All of them, with how many were left out.</summary>
    internal ImmutableArray<Diagnostic> All()
    {
        if (_more == 0)
            return [.. _said];
        string left = _more.ToString(CultureInfo.InvariantCulture) + " more";
        return [.. _said, new("model.more", Severity.Error, "", "There are more problems than are listed.", left, "these put right first")];
    }
}
