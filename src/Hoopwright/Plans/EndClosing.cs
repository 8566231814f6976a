namespace Hoopwright.Plans;

/// <summary>How an end is closed.</summary>
public enum EndClosing
{
    /// <summary>Posts, boards and a sheet of film of its own.</summary>
    Framed,

    /// <summary>The roof sheet is long enough to be gathered over the end.</summary>
    RoofSheet,

    /// <summary>Not closed.</summary>
    Open,
}
