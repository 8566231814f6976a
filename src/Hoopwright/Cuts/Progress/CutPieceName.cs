using System.Globalization;

namespace Hoopwright.Cuts.Progress;

/// <summary>The lasting name of a piece: the member or run it is for, and which part of a run that is joined. Piece numbers are made anew with every plan; this is not.</summary>
/// <param name="MemberId">The member or run.</param>
/// <param name="Part">Which part of a run, from its start; 1 for a piece of its own.</param>
public sealed record CutPieceName(string MemberId, int Part)
{
    /// <summary>The name of a piece on a cut list.</summary>
    /// <param name="piece">The piece.</param>
    public static CutPieceName Of(CutBarPiece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return new(piece.MemberId, piece.Part);
    }

    /// <summary>Reads a name as the site book has it: left-baseboard/2, or front-girt-1.</summary>
    /// <param name="text">The name.</param>
    internal static CutPieceName Read(string text)
    {
        int slash = text.LastIndexOf('/');
        return slash > 0 && int.TryParse(text.AsSpan(slash + 1), NumberStyles.None, CultureInfo.InvariantCulture, out int part) && part > 0 ? new(text[..slash], part) : new(text, 1);
    }

    /// <summary>As it is written in the site book; the part only where there are several.</summary>
    /// <param name="parts">How many parts the run has.</param>
    public string Text(int parts) => parts == 1 ? MemberId : string.Create(CultureInfo.InvariantCulture, $"{MemberId}/{Part}");
}
