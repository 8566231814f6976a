namespace Hoopwright.Server.Api;

/// <summary>Puts two texts of one plan together.</summary>
internal interface IDocumentMerge
{
    /// <param name="kept">What the server has.</param>
    /// <param name="pushed">What a device sent.</param>
    /// <param name="current">True where the device changed the version that the server has: nothing can clash then.</param>
    MergedDocument Merge(string kept, string pushed, bool current);
}
