namespace Hoopwright.Server.Storage;

/// <summary>What the audit tells about, as stable words; docs/sharing.md lists them.</summary>
internal static class AuditWords
{
    public const string Shared = "shared";
    public const string EntriesAdded = "entries-added";
    public const string PlanChanged = "plan-changed";
    public const string LinkMade = "link-made";
    public const string LinkRevoked = "link-revoked";
    public const string Exported = "exported";
}
