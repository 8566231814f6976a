namespace Hoopwright.Plans;

/// <summary>How open the land around is to wind, as ASCE 7 classes it.</summary>
public enum Exposure
{
    /// <summary>Woods, suburbs, closely spaced obstacles of the size of houses.</summary>
    B,

    /// <summary>Open country with scattered low obstacles.</summary>
    C,

    /// <summary>Flat, unobstructed ground beside open water or mud flats.</summary>
    D,
}
