namespace Hoopwright.Sharing;

/// <summary>A link that was made, without its secret.</summary>
/// <param name="Id">Names it when revoking it; opens nothing.</param>
/// <param name="Kind">What it allows.</param>
/// <param name="Made">When it was made.</param>
/// <param name="Label">Whom it is for, as typed.</param>
/// <param name="Revoked">When it was revoked; none while it works.</param>
public sealed record SharedLink(string Id, LinkKind Kind, DateTimeOffset Made, string? Label = null, DateTimeOffset? Revoked = null);
