namespace Hoopwright.Strength.Steel;

/// <summary>What ends the strength of a tube in one kind of action.</summary>
internal enum SteelLimitState
{
    /// <summary>The whole section yields.</summary>
    Yielding,

    /// <summary>The net section breaks at a hole.</summary>
    Rupture,

    /// <summary>The member bows out while part of it yields.</summary>
    InelasticBuckling,

    /// <summary>The member bows out before it yields.</summary>
    ElasticBuckling,

    /// <summary>The wall wrinkles before the section yields wholly.</summary>
    LocalBuckling,

    /// <summary>The wall buckles in shear before it yields.</summary>
    ShearBuckling,

    /// <summary>The wall is thinner than the standard has rules for; nothing may be counted on.</summary>
    OutsideStandard,
}
