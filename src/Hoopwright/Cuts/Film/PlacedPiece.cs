using Hoopwright.Quantities;

namespace Hoopwright.Cuts.Film;

/// <summary>A piece of film where it is cut from the roll.</summary>
/// <param name="PieceId">The piece of the cover plan.</param>
/// <param name="Copy">1 for the first of alike layers.</param>
/// <param name="Label">What to write on it: where it goes.</param>
/// <param name="Offset">Its near edge from the edge of the roll.</param>
/// <param name="Across">How wide it is cut: the whole width of the roll where it lies alone.</param>
/// <param name="Along">How long it is cut.</param>
public sealed record PlacedPiece(string PieceId, int Copy, string Label, Length Offset, Length Across, Length Along);
