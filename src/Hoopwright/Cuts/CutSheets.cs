using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Takeoff;

namespace Hoopwright.Cuts;

/// <summary>All cut lists.</summary>
/// <param name="Sheets">One for each item and size that is cut.</param>
/// <param name="JointLines">What the joints of the runs take, beyond the takeoff; it is known only now.</param>
/// <param name="Diagnostics">What was found wrong or had to be assumed.</param>
public sealed record CutSheets(
    ImmutableArray<CutSheet> Sheets, ImmutableArray<MaterialLine> JointLines, ImmutableArray<Diagnostic> Diagnostics)
{
    /// <summary>The pieces of a member or run, from its start; empty when it is ordered to length.</summary>
    public ImmutableArray<CutBarPiece> PiecesOf(string memberId) =>
        [.. Sheets.SelectMany(sheet => sheet.Bars).SelectMany(bar => bar.Pieces).Where(piece => piece.MemberId == memberId).OrderBy(piece => piece.Part)];

    /// <summary>The cut list of an item and size; null when there is none.</summary>
    public CutSheet? Of(string item, string size) => Sheets.FirstOrDefault(sheet => sheet.Item == item && sheet.Size == size);
}
