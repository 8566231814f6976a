namespace Hoopwright.Sharing;

/// <summary>The plan is kept.</summary>
/// <param name="KeeperKey">The one key that makes links and deletes everything. The server keeps only its hash, so it is never told again.</param>
/// <param name="Version">Version of the plan, 1.</param>
public sealed record NewShareAnswer(string KeeperKey, long Version);
