using Hoopwright.Layout;

namespace Hoopwright.Strength.Models;

/// <summary>A member of the frame of a row, or the part of a layout member that it stands for.</summary>
/// <param name="Member">The layout member.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Steel">Its steel; null for wood.</param>
/// <param name="Bow">Place in the row of the bow that it belongs to, from 0; −1 for what runs along the tunnel.</param>
/// <param name="FreeM">Longest way between places where others hold it, for its own buckling, m.</param>
internal sealed record RowPiece(Member Member, RowKind Kind, BowSteel? Steel, int Bow, double FreeM);
