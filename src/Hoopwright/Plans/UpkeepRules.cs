using System.ComponentModel;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>What the upkeep of a tunnel that stands is worked out with.</summary>
public sealed record UpkeepRules : PlanSection
{
    /// <summary>The day on which the roof film was put on; leave out to take it from the site book.</summary>
    [Description("The day on which the roof film was put on; leave out to take it from the site book.")]
    public DateOnly? FilmOn { get; init; }

    /// <summary>Years that the film is made for; its maker says how many.</summary>
    [Description("Years that the film is made for; its maker says how many.")]
    public int? FilmLife { get; init; }

    /// <summary>Part of the snow at the limit at which the roof is cleared.</summary>
    [Description("Part of the snow at the limit at which the roof is cleared.")]
    public Written<Ratio>? ClearAt { get; init; }

    /// <summary>Forecast gust, at 10 m in open country, for which doors, sides and vents are shut.</summary>
    [Description("Forecast gust, at 10 m in open country, for which doors, sides and vents are shut.")]
    public Written<Speed>? CloseWind { get; init; }

    /// <summary>Forecast gust, at 10 m in open country, for which wire, ropes and latches are tightened.</summary>
    [Description("Forecast gust, at 10 m in open country, for which wire, ropes and latches are tightened.")]
    public Written<Speed>? TightenWind { get; init; }

    /// <summary>Part of the gust at the limit from which on nobody is in or at the tunnel.</summary>
    [Description("Part of the gust at the limit from which on nobody is in or at the tunnel.")]
    public Written<Ratio>? WindShare { get; init; }
}
