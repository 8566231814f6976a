using System.Globalization;
using Hoopwright.Layout;
using Hoopwright.Quantities;

namespace Hoopwright.CoverSteps;

/// <summary>Puts names and numbers of a tunnel as steps say them.</summary>
internal abstract class PhraseWriter(UnitSystem units)
{
    // As a crew's language has them: whole names, never a bare left or front.
    protected static string Named(SideWall side) => side.Name + " side";

    protected static string Named(EndWall end) => end.Name + " end";

    protected string Tape(Length length) => TapeText.Of(TapeText.RoundToMark(length.Abs(), units), units);

    protected string Text(Speed speed) => TapeText.Of(speed, units);

    protected string Text(Temperature temperature) => TapeText.Of(temperature, units);

    protected static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);

    protected static string Text(decimal value) => decimal.Round(value).ToString("0", CultureInfo.InvariantCulture);
}
