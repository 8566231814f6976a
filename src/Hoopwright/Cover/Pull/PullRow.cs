using Hoopwright.Quantities;

namespace Hoopwright.Cover.Pull;

/// <summary>How far to pull film of one temperature, and what comes of it in cold and heat.</summary>
public sealed record PullRow
{
    /// <summary>Temperature of the film; under a cloud, or before the sun is on it, that of the air.</summary>
    public required Temperature Film { get; init; }

    /// <summary>Temperature of the air at which film in full sun and calm is so warm.</summary>
    public required Temperature AirInSun { get; init; }

    /// <summary>The least strain that keeps it from hanging too far on the hottest day; below 0 where slack will do.</summary>
    public required Ratio Least { get; init; }

    /// <summary>The greatest strain that it bears on the coldest day; below 0 where it must be left slack.</summary>
    public required Ratio Most { get; init; }

    /// <summary>The strain to aim at: midway, within what hands can pull and evenly lay.</summary>
    public required Ratio Target { get; init; }

    /// <summary>The highest strain that all hands together reach.</summary>
    public required Ratio ByHand { get; init; }

    /// <summary>What that means at the tunnel.</summary>
    public required PullAdvice Advice { get; init; }

    /// <summary>Past snug in the widest bay; below 0 when it is to be left longer than snug.</summary>
    public required Length PastSnugPerBay { get; init; }

    /// <summary>Past snug over the length of the tunnel; below 0 when it is to be left longer than snug.</summary>
    public required Length PastSnugAlong { get; init; }

    /// <summary>Past snug over a bow, from one side to the other; below 0 when it is to be left longer than snug.</summary>
    public required Length PastSnugOverBow { get; init; }

    /// <summary>How far it then hangs at the middle of the widest bay.</summary>
    public required Length Sag { get; init; }

    /// <summary>How far it gives at the middle of the widest bay under a steady push of <see cref="PullPlan.GaugePush"/>; about.</summary>
    public required Length Give { get; init; }

    /// <summary>What all hands together pull along one long edge of the roof film.</summary>
    public required Force HandPull { get; init; }

    /// <summary>Pull on each length of the end bows, channels and wires on the coldest day, when nothing of it has crept away.</summary>
    public required ForcePerLength ColdPull { get; init; }

    /// <summary>The least that is left of that pull where the cold comes slowly and film gives way to it.</summary>
    public required ForcePerLength ColdPullCrept { get; init; }

    /// <summary>How far it hangs at the middle of the widest bay on the hottest day, when nothing of the pull has crept away.</summary>
    public required Length HotSag { get; init; }

    /// <summary>The same when all of the pull has crept away, as it does in the first warm weeks.</summary>
    public required Length HotSagCrept { get; init; }
}
