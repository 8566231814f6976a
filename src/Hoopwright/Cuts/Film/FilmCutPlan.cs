using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Cuts.Film;

/// <summary>Which rolls of film to have and how to cut them.</summary>
public sealed record FilmCutPlan
{
    /// <summary>
    /// For whoever lays the film out: wide film comes folded several times, so the width on the label is the unfolded one.
    /// </summary>
    public const string FoldNote =
        "The roll is folded: measure its width unfolded before the first cut, and mark the cut on both edges of the film.";

    /// <summary>For whoever marks the pieces: which face goes inside.</summary>
    public const string FaceNote =
        "Mark each piece 'this side in' on the treated (anti-condensate) face, which goes inside; the print on the edge tells which.";

    /// <summary>The rolls in the order they are cut.</summary>
    public required ImmutableArray<CutRoll> Rolls { get; init; }

    /// <summary>By what the choice was made.</summary>
    public required RollRank RankedBy { get; init; }

    /// <summary>Price of the rolls that are bought; null when a bought roll has no price.</summary>
    public required Money? Cost { get; init; }

    /// <summary>Area of the rolls that are bought.</summary>
    public required Area BoughtArea { get; init; }

    /// <summary>
    /// What no choice can beat: money where ranked by price, else square metres. Equal to what the choice costs when proven.
    /// </summary>
    public required decimal LowerBound { get; init; }

    /// <summary>True when no cheaper choice of rolls and cuts across them exists.</summary>
    public required bool Proven { get; init; }

    /// <summary>Pieces that no roll can give; each has a diagnostic.</summary>
    public required ImmutableArray<string> UnplacedIds { get; init; }
}
