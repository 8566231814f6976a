using System.Collections.Immutable;

namespace Hoopwright.Cutting.TwoStage;

/// <summary>
/// Rectangles to cut from sheets in two stages: cuts straight across a sheet give levels, cuts along a level give pieces; what
/// is shorter than its level is trimmed. All sizes are in one whole unit.
/// </summary>
/// <param name="Pieces">What is wanted.</param>
/// <param name="Stock">What it is cut from.</param>
/// <param name="Slit">False when a level may hold one piece only.</param>
internal sealed record TwoStageJob(ImmutableArray<TwoStagePiece> Pieces, ImmutableArray<TwoStageStock> Stock, bool Slit = true);

/// <summary>Pieces of one size.</summary>
/// <param name="Across">Their size across the sheet.</param>
/// <param name="Along">Their size along it.</param>
/// <param name="Count">How many.</param>
/// <param name="MayTurn">True when they may also lie the other way.</param>
/// <param name="LeftOut">What leaving one out costs; null when all must be cut.</param>
internal sealed record TwoStagePiece(long Across, long Along, int Count, bool MayTurn = false, long? LeftOut = null);

/// <summary>Sheets of one size.</summary>
/// <param name="Width">Their size across.</param>
/// <param name="Length">Their size along.</param>
/// <param name="Price">What one costs; 0 or more.</param>
/// <param name="Limit">How many there are; null for any number.</param>
internal sealed record TwoStageStock(long Width, long Length, long Price, int? Limit = null);
