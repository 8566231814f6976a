namespace Hoopwright.Takeoff;

/// <summary>How a quantity is counted.</summary>
public enum MaterialUnit
{
    /// <summary>So many.</summary>
    Each,

    /// <summary>Pieces cut from stock lengths.</summary>
    CutLengths,

    /// <summary>Running metres, bought in rolls or by the length.</summary>
    Metres,

    /// <summary>Cubic metres.</summary>
    CubicMetres,

    /// <summary>Square metres.</summary>
    SquareMetres,
}
