namespace Hoopwright.Plans;

/// <summary>What an entry of the site book is.</summary>
public enum SiteBookKind
{
    /// <summary>Something measured.</summary>
    Measurement,

    /// <summary>Something done.</summary>
    Done,

    /// <summary>Something looked at and signed for.</summary>
    Signed,

    /// <summary>Takes back that something was done or signed.</summary>
    Undone,

    /// <summary>A note.</summary>
    Note,

    /// <summary>A note to a photo.</summary>
    Photo,

    /// <summary>A decision.</summary>
    Decision,

    /// <summary>A board, tube or stick that was cut, or turned out bad.</summary>
    Cut,

    /// <summary>Gives an earlier entry another value, or takes it back when it gives none.</summary>
    Correction,
}
