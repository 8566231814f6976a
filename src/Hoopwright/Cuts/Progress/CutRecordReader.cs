using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.SiteBooks;

namespace Hoopwright.Cuts.Progress;

/// <summary>
/// Reads which stock pieces were cut: entries of kind <c>cut</c> about a cut list by its item and size, whose value is the length of
/// the stock piece, a colon, and its pieces, each with the length it was cut to where that is known; or "bad"; with "7' 0" left" where
/// something else is left of it than the pieces leave.
/// </summary>
internal static class CutRecordReader
{
    private const string Wanted = "such as 12' 0\": front-girt-1 5' 0\", left-baseboard/2 or 12' 0\": bad, 7' 0\" left";

    /// <summary>What the site book says; what cannot be read is told and left out.</summary>
    public static ImmutableArray<CutRecord> Read(Plan plan, ImmutableArray<Diagnostic>.Builder found)
    {
        var records = ImmutableArray.CreateBuilder<CutRecord>();
        foreach (StandingEntry standing in StandingEntries.Of(plan).Where(each => each.Entry.Kind == SiteBookKind.Cut && !each.IsTakenBack))
        {
            string path = FormattableString.Invariant($"siteBook[{standing.At}]");
            if (standing.Entry is { Of: { } name, Value: { } value } && Record(standing.Entry.Id, path, name, value) is { } record) records.Add(record);
            else found.Add(new Diagnostic("site-book.cut.unreadable", Severity.Warning, path + ".value", "What was cut cannot be read, so it counts as uncut.", standing.Entry.Value is { } seen ? SeenText.Shorten(seen) : null, Wanted));
        }
        return records.ToImmutable();
    }

    private static CutRecord? Record(string? id, string path, string name, string value)
    {
        int colon = value.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0 || LengthOf(value[..colon]) is not { } stock) return null;
        List<CutRecordPiece> pieces = [];
        Length? left = null;
        bool isBad = false;
        foreach (string part in value[(colon + 1)..].Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (part.Equals("bad", StringComparison.OrdinalIgnoreCase)) isBad = true;
            else if (part.EndsWith(" left", StringComparison.OrdinalIgnoreCase))
            {
                if (LengthOf(part[..^" left".Length]) is not { } rest || rest > stock) return null;
                left = rest;
            }
            else pieces.Add(Piece(part));
        }
        return isBad == (pieces.Count > 0) ? null : new CutRecord(id, path, name, stock, [.. pieces], left);
    }

    /// <summary>A name, and after the first space the length; what is no length belongs to the name, which then is unknown.</summary>
    private static CutRecordPiece Piece(string text)
    {
        int space = text.IndexOf(' ', StringComparison.Ordinal);
        return space > 0 && LengthOf(text[(space + 1)..]) is { } length ? new(CutPieceName.Read(text[..space]), length) : new(CutPieceName.Read(text), null);
    }

    private static Length? LengthOf(string text)
    {
        Reading<Length> read = QuantityText.ReadLength(text);
        return read.IsRead && read.Value > Length.Zero ? read.Value : null;
    }
}
