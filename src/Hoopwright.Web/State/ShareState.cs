namespace Hoopwright.Web.State;

/// <summary>How a shared plan on this device and on the server stand to each other.</summary>
public enum ShareState
{
    /// <summary>No server keeps it.</summary>
    Alone,

    /// <summary>They are being brought together.</summary>
    Working,

    /// <summary>They are alike.</summary>
    Together,

    /// <summary>The server cannot be reached; what was changed waits on this device.</summary>
    Waiting,

    /// <summary>The link opens nothing any more: it was revoked, or the plan deleted.</summary>
    Gone,
}
