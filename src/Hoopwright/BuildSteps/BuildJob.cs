namespace Hoopwright.BuildSteps;

/// <summary>What is built.</summary>
public enum BuildJob
{
    /// <summary>The tunnel, from bare ground to the last look.</summary>
    Build,

    /// <summary>New film on a tunnel that stands.</summary>
    Recover,
}
