namespace Hoopwright.Sharing;

/// <summary>One change of a shared plan.</summary>
/// <param name="Number">Its place in the plan's audit.</param>
/// <param name="At">When, by the server's clock.</param>
/// <param name="LinkId">Through which link.</param>
/// <param name="LinkKind">What that link allows.</param>
/// <param name="What">shared, entries-added, plan-changed, link-made, link-revoked or exported.</param>
/// <param name="Detail">What exactly, for a person.</param>
/// <param name="LinkLabel">Whom that link is for, as typed.</param>
/// <param name="By">Who, as typed on the device.</param>
public sealed record AuditRow(long Number, DateTimeOffset At, string LinkId, LinkKind LinkKind, string What, string Detail, string? LinkLabel = null, string? By = null);
