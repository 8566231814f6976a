namespace Hoopwright.Server.Storage;

/// <summary>In which order entries are read.</summary>
internal enum EntryOrder
{
    /// <summary>By cursor: the order in which the server got them.</summary>
    AsTheyCame,

    /// <summary>By id: the order of a site book in a plan.</summary>
    ById,
}
