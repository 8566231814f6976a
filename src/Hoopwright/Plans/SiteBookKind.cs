namespace Hoopwright.Plans;

/// <summary>What an entry of the site book is.</summary>
public enum SiteBookKind
{
    /// <summary>Something measured.</summary>
    Measurement,

    /// <summary>Something done.</summary>
    Done,

    /// <summary>A note.</summary>
    Note,

    /// <summary>A note to a photo.</summary>
    Photo,

    /// <summary>A decision.</summary>
    Decision,
}
