using Hoopwright.Takeoff;

namespace Hoopwright.Cuts;

/// <summary>A piece or run of the takeoff with the line it stands in.</summary>
/// <param name="Piece">The piece or run.</param>
/// <param name="Line">Its line.</param>
internal sealed record CutNeed(PieceNeed Piece, MaterialLine Line);
