namespace Hoopwright.Strength.Loads;

/// <summary>How open a tunnel stands to the wind, which decides the pressure inside.</summary>
public enum EnclosureClass
{
    /// <summary>Shut on all sides.</summary>
    Enclosed,

    /// <summary>The wind blows in by one wall and out by hardly any other.</summary>
    PartiallyEnclosed,

    /// <summary>Openings that make it none of the others.</summary>
    PartiallyOpen,

    /// <summary>Every wall is at least 80 % open.</summary>
    Open,
}
