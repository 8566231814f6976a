namespace Hoopwright.Sheets.Drawings;

/// <summary>One piece of a path, from where the last one ended: a straight line, or an arc of a circle when it has a centre.</summary>
/// <param name="End">Where it ends.</param>
/// <param name="Centre">The arc's centre; null for a straight line.</param>
/// <param name="SweepRad">The arc's turn, radians, anticlockwise as seen is positive; 0 for a straight line.</param>
public readonly record struct PathPiece(SheetPoint End, SheetPoint? Centre = null, double SweepRad = 0);
