using System.Text;
using Hoopwright.Quantities;

namespace Hoopwright.Cuts;

/// <summary>A key of numbers, each to its last bit, for what is worked out once and asked for often.</summary>
internal sealed class ExactKey
{
    private readonly StringBuilder key = new();

    /// <summary>Adds a number.</summary>
    public ExactKey Add(double number)
    {
        long bits = BitConverter.DoubleToInt64Bits(number);
        for (int shift = 0; shift < 64; shift += 16) key.Append((char)(bits >> shift & 0xFFFF));
        return this;
    }

    /// <summary>Adds a length.</summary>
    public ExactKey Add(Length length) => Add(length.Metres);

    /// <summary>The numbers added so far, four characters each. Not to be read.</summary>
    public override string ToString() => key.ToString();
}
