namespace Hoopwright.Server.Storage;

/// <summary>An entry that may be kept.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Body">Its JSON with sorted names and no spaces, so that the same content is the same text.</param>
/// <param name="Hash">SHA-256 of the body.</param>
/// <param name="AheadSeconds">By how much its id is ahead of the server's clock; none when it is not.</param>
internal sealed record IncomingEntry(string Id, string Body, byte[] Hash, long? AheadSeconds);
