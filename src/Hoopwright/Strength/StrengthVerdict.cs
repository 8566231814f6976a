namespace Hoopwright.Strength;

/// <summary>How the frame stands the loads that the plan enters, on the assumptions made. Never that it is without danger.</summary>
public enum StrengthVerdict
{
    /// <summary>No member passes its limit at any end of the range of what is not known.</summary>
    Stands,

    /// <summary>Within its limits as taken, past them at an unlucky end of the range of what is not known.</summary>
    Marginal,

    /// <summary>Past a limit as taken.</summary>
    DoesNotStand,

    /// <summary>The plan gives no ground snow or no wind, so there is nothing to hold the frame against.</summary>
    NothingEntered,
}
