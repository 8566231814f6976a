using Hoopwright.Quantities;

namespace Hoopwright.Cuts.Progress;

/// <summary>A piece that was cut.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Length">How long it was cut; null where nobody said.</param>
internal sealed record CutRecordPiece(CutPieceName Name, Length? Length);
