namespace Hoopwright.Plans;

/// <summary>The form of a tube's section.</summary>
public enum TubeForm
{
    /// <summary>Round.</summary>
    Round,

    /// <summary>Square.</summary>
    Square,
}
