using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Cover.Pull;

/// <summary>How tight the roof film is pulled, by its temperature on the day.</summary>
public sealed record PullPlan
{
    /// <summary>The coldest that the film gets: a clear, calm night at the coldest of the plan.</summary>
    public required Temperature Coldest { get; init; }

    /// <summary>The hottest that the film gets: shut, calm and sunny at the hottest of the plan.</summary>
    public required Temperature Hottest { get; init; }

    /// <summary>The strain that it may have on the coldest day.</summary>
    public required Ratio ColdLimit { get; init; }

    /// <summary>The slack, as strain, that it may have on the hottest day.</summary>
    public required Ratio HotLimit { get; init; }

    /// <summary>The film temperature at which just snug lies midway between both limits: the best day to pull.</summary>
    public required Temperature Best { get; init; }

    /// <summary>False where no pull keeps both limits: the year is wider than the film.</summary>
    public required bool HasRoom { get; init; }

    /// <summary>The push of the hand gauge, by a spring scale at the middle of a bay.</summary>
    public required Force GaugePush { get; init; }

    /// <summary>What one person pulls steadily.</summary>
    public required Force OneHand { get; init; }

    /// <summary>People who pull: one to a rope.</summary>
    public required int Hands { get; init; }

    /// <summary>The temperature of the plan for the day.</summary>
    public required PullRow Planned { get; init; }

    /// <summary>By film temperature, coldest first.</summary>
    public required ImmutableArray<PullRow> Rows { get; init; }

    /// <summary>The greatest slack, as a strain below 0, with which film can be laid evenly.</summary>
    public required Ratio Loosest { get; init; }

    /// <summary>Width of the widest bay, by which a strain becomes a length.</summary>
    public required Length Bay { get; init; }

    /// <summary>Length of the film line over a bow, likewise.</summary>
    public required Length Arc { get; init; }

    /// <summary>How to pull film of any one temperature.</summary>
    /// <param name="film">What the film has on the day.</param>
    public PullRow At(Temperature film) => RowAt?.Invoke(film) ?? throw new InvalidOperationException("The pull was not planned.");

    internal Func<Temperature, PullRow>? RowAt { get; init; }
}
