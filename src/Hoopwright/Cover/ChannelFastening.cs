using Hoopwright.Quantities;

namespace Hoopwright.Cover;

/// <summary>Screws of lock channel and the spring wire in it.</summary>
public static class ChannelFastening
{
    // Thirds of a metre and the like do not divide evenly in doubles.
    private const double WholeNumber = 1e-9;

    /// <summary>
    /// Screws in a run of channel: evenly spaced, half a spacing from its ends, so as many as spacings go into the run, up
    /// to a whole number; and some more at each end, where the channel lifts first. Three to the metre and none more come to
    /// 660 for 220 m, as a public purchase list counts them.
    /// </summary>
    /// <param name="run">Length of the run; one without length takes none.</param>
    /// <param name="spacing">The most they may stand apart; above 0.</param>
    /// <param name="moreAtEachEnd">Extra screws at each end; 0 or more.</param>
    public static int Screws(Length run, Length spacing, int moreAtEachEnd)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(moreAtEachEnd);
        int spaced = Pieces(run, spacing);
        return spaced == 0 ? 0 : spaced + (2 * moreAtEachEnd);
    }

    /// <summary>Pieces of spring wire that fill a run, end to end.</summary>
    /// <param name="run">Length of the run.</param>
    /// <param name="piece">Length of a piece; above 0.</param>
    public static int WirePieces(Length run, Length piece) => Pieces(run, piece);

    /// <summary>
    /// Where wire doubles because one piece laps the next: one fewer than the pieces. Each takes a screw with a washer
    /// (common practice, no source).
    /// </summary>
    /// <param name="run">Length of the run.</param>
    /// <param name="piece">Length of a piece; above 0.</param>
    public static int WireLaps(Length run, Length piece) => Math.Max(0, WirePieces(run, piece) - 1);

    /// <summary>Spring wire to buy for a run.</summary>
    /// <param name="run">Length of the run.</param>
    /// <param name="wires">Layers of wire in the channel; 0 or more.</param>
    /// <param name="perChannel">Length of wire for a length of channel; 1 is just the run.</param>
    public static Length WireLength(Length run, int wires, Ratio perChannel) => run * wires * perChannel.Value;

    /// <summary>Short pieces that hold film for the time being: one at each end of the run and no gap wider than the spacing.</summary>
    /// <param name="run">Length of the run.</param>
    /// <param name="spacing">The most they may stand apart; above 0.</param>
    public static int TemporaryWires(Length run, Length spacing) => run.Metres <= 0 ? 0 : Pieces(run, spacing) + 1;

    private static int Pieces(Length run, Length each)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(each.Metres, 0, nameof(each));
        return run.Metres <= 0 ? 0 : Math.Max(1, (int)Math.Ceiling((run / each) - WholeNumber));
    }
}
