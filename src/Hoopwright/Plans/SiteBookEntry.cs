using System.ComponentModel;

namespace Hoopwright.Plans;

/// <summary>One entry of the site book.</summary>
public sealed record SiteBookEntry : PlanSection
{
    /// <summary>An identity that sorts by time.</summary>
    [Description("An identity that sorts by time.")]
    public string? Id { get; init; }

    /// <summary>measurement, done, signed, undone, note, photo, decision, cut or correction.</summary>
    [Description("measurement, done, signed, undone, note, photo, decision, cut or correction.")]
    public SiteBookKind? Kind { get; init; }

    /// <summary>What it is about: the id of a member, piece or step, the item and size of a cut list, or a path in the plan.</summary>
    [Description("What it is about: the id of a member, piece or step, the item and size of a cut list, or a path in the plan.")]
    public string? Of { get; init; }

    /// <summary>The measured value, the day it was done such as 2026-04-18, the decision as typed, a stock length and the pieces cut from it, or a small picture.</summary>
    [Description("The measured value, the day it was done such as 2026-04-18, the decision as typed, a stock length and the pieces cut from it, or a small picture.")]
    public string? Value { get; init; }

    /// <summary>Who wrote it, as typed.</summary>
    [Description("Who wrote it, as typed.")]
    public string? By { get; init; }

    /// <summary>The phone or computer it was written on, as named there.</summary>
    [Description("The phone or computer it was written on, as named there.")]
    public string? Device { get; init; }

    /// <summary>The id of the earlier entry that a correction corrects.</summary>
    [Description("The id of the earlier entry that a correction corrects.")]
    public string? Corrects { get; init; }

    /// <summary>Anything else.</summary>
    [Description("Anything else.")]
    public string? Note { get; init; }
}
