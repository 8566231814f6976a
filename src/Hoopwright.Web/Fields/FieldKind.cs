namespace Hoopwright.Web.Fields;

/// <summary>How a field of a plan is asked for.</summary>
public enum FieldKind
{
    /// <summary>A quantity with its unit, as people write it.</summary>
    Quantity,

    /// <summary>Plain words.</summary>
    Words,

    /// <summary>One of a few words.</summary>
    Choice,

    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>A group of fields.</summary>
    Group,

    /// <summary>A list of groups.</summary>
    Groups,

    /// <summary>A list of single values.</summary>
    Values,
}
