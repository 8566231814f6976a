using System.Collections.Immutable;

namespace Hoopwright.Sheets.Drawings;

/// <summary>A text that looks for room near something.</summary>
/// <param name="Text">The words; \n parts the lines.</param>
/// <param name="Target">What it is about.</param>
/// <param name="Kind">How it is tied to that.</param>
/// <param name="DirectionsRad">Directions to try first, anticlockwise as seen from the right.</param>
/// <param name="IsBold">True for a name that must stand out.</param>
internal sealed record NoteRequest(
    string Text, SheetPoint Target, NoteKind Kind, ImmutableArray<double> DirectionsRad, bool IsBold = false);
