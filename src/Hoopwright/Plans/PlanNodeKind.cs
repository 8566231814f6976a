namespace Hoopwright.Plans;

/// <summary>What a value of the document is.</summary>
internal enum PlanNodeKind
{
    /// <summary>Fields in { }.</summary>
    Group,

    /// <summary>Values in [ ].</summary>
    List,

    /// <summary>A text in double quotes.</summary>
    Text,

    /// <summary>A bare number.</summary>
    Number,

    /// <summary>true or false.</summary>
    YesNo,

    /// <summary>null.</summary>
    Null,
}
