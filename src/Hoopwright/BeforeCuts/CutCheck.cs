using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.BeforeCuts;

/// <summary>What to look at before something is cut that cannot be made longer again.</summary>
public sealed record CutCheck
{
    /// <summary>What is about to be cut.</summary>
    public required CutCheckKind Kind { get; init; }

    /// <summary>Its name, under which a decision in the site book lets it go on.</summary>
    public string Id => IdOf(Kind);

    /// <summary>Whether to cut.</summary>
    public required CutVerdict Verdict { get; init; }

    /// <summary>The verdict in a sentence or two.</summary>
    public required ImmutableArray<Phrase> Says { get; init; }

    /// <summary>The verdict in English.</summary>
    public string SaysText => string.Join(" ", Says);

    /// <summary>The measurements it depends on.</summary>
    public required ImmutableArray<CheckNeed> Needs { get; init; }

    /// <summary>Pieces whose size has changed with what was measured, the shortest first.</summary>
    public required ImmutableArray<CheckPiece> Changed { get; init; }

    /// <summary>How much the worst piece would be too short by if it were cut by the plan alone.</summary>
    public required Length ShortBy { get; init; }

    /// <summary>The decision that lets it go on all the same; null for none.</summary>
    public required SiteBookEntry? Decision { get; init; }

    /// <summary>The measurements that are still to be taken.</summary>
    public ImmutableArray<CheckNeed> Missing => [.. Needs.Where(need => need.IsMissing)];

    /// <summary>The name of a check.</summary>
    /// <param name="kind">What is about to be cut.</param>
    public static string IdOf(CutCheckKind kind) => kind switch
    {
        CutCheckKind.Film => "check-film",
        CutCheckKind.Posts => "check-posts",
        CutCheckKind.Channel => "check-channel",
        CutCheckKind.Boards => "check-boards",
        CutCheckKind.Concrete => "check-concrete",
    };
}
