using Hoopwright.Quantities;

namespace Hoopwright.BeforeCuts;

/// <summary>A piece whose planned size was held against what was measured.</summary>
/// <param name="Id">The piece, run, member or hole.</param>
/// <param name="Place">Where it goes, in words, and which of its sizes.</param>
/// <param name="Planned">Its size by the plan alone.</param>
/// <param name="Now">Its size by what was measured.</param>
/// <param name="ShortBy">How much the planned size is too short by; nothing where it is long enough.</param>
public sealed record CheckPiece(string Id, string Place, Length Planned, Length Now, Length ShortBy);
