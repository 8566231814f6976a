namespace Hoopwright.Plans;

/// <summary>The standard that loads are worked out by.</summary>
public enum LoadStandard
{
    /// <summary>ASCE/SEI 7-16, used in the United States.</summary>
    Asce7Of2016,

    /// <summary>ASCE/SEI 7-22: ground snow is mapped by risk category, and there is no importance factor of snow.</summary>
    Asce7Of2022,

    /// <summary>EN 1990, EN 1991-1-3 and EN 1991-1-4, used in Europe with a national annex, which decides.</summary>
    En1991,
}
