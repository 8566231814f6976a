namespace Hoopwright.Sharing;

/// <summary>Asks for a link.</summary>
/// <param name="Kind">What it allows: read, add or edit.</param>
/// <param name="Label">Whom it is for, as typed; stands in the list of links and in the audit.</param>
public sealed record NewLink(LinkKind Kind, string? Label = null);
