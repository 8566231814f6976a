using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Pdf;

/// <summary>Bytes in the words of PDF. A blank follows each number.</summary>
internal sealed class PdfBytes : TextBytes
{
    /// <summary>Bytes as they are.</summary>
    internal PdfBytes Put(ReadOnlySpan<byte> more)
    {
        Add(more);
        return this;
    }

    /// <summary>A whole number.</summary>
    internal PdfBytes Put(int number)
    {
        Whole(number);
        return Put(" "u8);
    }

    /// <summary>A number to three decimals.</summary>
    internal PdfBytes Put(double number)
    {
        Decimal(number, 3);
        return Put(" "u8);
    }

    /// <summary>A number to six decimals, for directions.</summary>
    internal PdfBytes Fine(double number)
    {
        Decimal(number, 6);
        return Put(" "u8);
    }

    /// <summary>A reference to an object (ISO 32000-1, 7.3.10).</summary>
    internal PdfBytes Refer(int number) => Put(number).Put("0 R "u8);

    /// <summary>A text that people read: in round brackets where plain characters do, else in UTF-16 (7.9.2.2).</summary>
    internal PdfBytes Text(string text)
    {
        if (text.All(character => character is >= ' ' and <= '~' and not ('(' or ')' or '\\')))
        {
            Add("("u8);
            Add(text);
            return Put(")"u8);
        }
        Add("<FEFF"u8);
        foreach (char character in text) Put(HexWord(character));
        return Put(">"u8);
    }

    /// <summary>Four figures at once, as <see cref="HexWord"/> gives them.</summary>
    internal PdfBytes Put(uint word)
    {
        Four(word);
        return this;
    }

    /// <summary>Two bytes as four hexadecimal figures.</summary>
    internal static uint HexWord(int number)
    {
        ReadOnlySpan<byte> figures = "0123456789ABCDEF"u8;
        return ((uint)figures[(number >> 12) & 15] << 24) | ((uint)figures[(number >> 8) & 15] << 16) | ((uint)figures[(number >> 4) & 15] << 8) | figures[number & 15];
    }
}
