using System.Globalization;
using System.Text;

namespace Hoopwright.Testing;

/// <summary>
/// Results as lines of text to be kept (<see cref="Golden"/>), so that nothing changes unseen. They say nothing of being right,
/// which other tests hold against published values. Numbers are kept to six digits: the last ones, in which machines differ, play no part.
/// </summary>
public sealed class KeptText
{
    private readonly StringBuilder text = new();

    /// <summary>Adds a line.</summary>
    public void Line(string line) => text.Append(line).Append('\n');

    /// <summary>A number to six digits; what is as good as nothing is nothing, since the rest of a difference is another one on each machine.</summary>
    public static string Number(double? value) => value is not { } number ? "-" : Math.Abs(number) < 1e-9 ? "0" : number.ToString("G6", CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public override string ToString() => text.ToString();
}
