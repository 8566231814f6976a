using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>Bows, purlins, ties and braces.</summary>
public sealed record Frame : PlanSection
{
    /// <summary>Width at the ground, outside of tube to outside of tube.</summary>
    [Description("Width at the ground, outside of tube to outside of tube.")]
    public Written<Length>? Span { get; init; }

    /// <summary>Length from the middle of the first bow to the middle of the last.</summary>
    [Description("Length from the middle of the first bow to the middle of the last.")]
    public Written<Length>? Length { get; init; }

    /// <summary>The widest bay allowed, middle of bow to middle of bow.</summary>
    [Description("The widest bay allowed, middle of bow to middle of bow.")]
    public Written<Length>? BowSpacing { get; init; }

    /// <summary>Whether all bays are equal, or all are the full spacing but for a shorter last one.</summary>
    [Description("Whether all bays are equal, or all are the full spacing but for a shorter last one.")]
    public BayRule? Bays { get; init; }

    /// <summary>The shape of a bow.</summary>
    [Description("The shape of a bow.")]
    public Bow Bow { get; init; } = new();

    /// <summary>The tube the bows are bent from.</summary>
    [Description("The tube the bows are bent from.")]
    public Tube BowTube { get; init; } = new();

    /// <summary>How many pieces one bow comes in; joints stand at equal lengths along it.</summary>
    [Description("How many pieces one bow comes in; joints stand at equal lengths along it.")]
    public int? BowPieces { get; init; }

    /// <summary>A straight crosswise tie in the bows; leave out for none.</summary>
    [Description("A straight crosswise tie in the bows; leave out for none.")]
    public Tie? Tie { get; init; }

    /// <summary>Lengthwise tubes; leave out for the usual number.</summary>
    [Description("Lengthwise tubes; leave out for the usual number.")]
    public Purlins? Purlins { get; init; }

    /// <summary>Diagonal corner braces; leave out for the usual ones.</summary>
    [Description("Diagonal corner braces; leave out for the usual ones.")]
    public Braces? Braces { get; init; }
}
