namespace Hoopwright.Server.Storage;

/// <summary>What may be the matter with a database.</summary>
internal enum StorageFault
{
    /// <summary>No room is left on its disk, or the file may not grow further.</summary>
    Full,

    /// <summary>Its disk or file may only be read.</summary>
    ReadOnly,

    /// <summary>It cannot be reached, opened or locked in time.</summary>
    Unreachable,

    /// <summary>It is not a database of this program, was made by a newer one, or is damaged.</summary>
    Unusable,
}
