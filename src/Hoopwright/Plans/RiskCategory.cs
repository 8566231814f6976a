namespace Hoopwright.Plans;

/// <summary>The risk category of ASCE 7; the consequence class of EN 1990 is read from it.</summary>
public enum RiskCategory
{
    /// <summary>Little danger to people when it fails: a growing tunnel that the public does not enter.</summary>
    I,

    /// <summary>Ordinary buildings; a tunnel in which customers walk.</summary>
    II,

    /// <summary>Many people gather in it.</summary>
    III,

    /// <summary>Essential in an emergency.</summary>
    IV,
}
