namespace Hoopwright.Cuts;

/// <summary>What has become of a stock piece.</summary>
public enum CutBarState
{
    /// <summary>Still to be cut.</summary>
    ToCut,

    /// <summary>Cut; its pieces lie there.</summary>
    Cut,

    /// <summary>Turned out to be of no use, but for what is left of it.</summary>
    Bad,

    /// <summary>Lies there and is not needed any more.</summary>
    Spare,
}
