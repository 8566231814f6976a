namespace Hoopwright.Sharing;

/// <summary>A link was made.</summary>
/// <param name="Id">Names the link in the list and when revoking it; opens nothing.</param>
/// <param name="Kind">What it allows.</param>
/// <param name="Token">The secret part of the link. The server keeps only its hash, so it is never told again.</param>
public sealed record NewLinkAnswer(string Id, LinkKind Kind, string Token);
