namespace Hoopwright.Plans;

/// <summary>Turns byte offsets into lines and columns, going forward once over the text.</summary>
/// <param name="utf8">The text.</param>
internal ref struct PlaceCursor(ReadOnlySpan<byte> utf8)
{
    private readonly ReadOnlySpan<byte> _utf8 = utf8;
    private int _offset;
    private int _line = 1;
    private int _column = 1;

    /// <summary>The place of a byte at or after the one asked for before.</summary>
    public TextPlace At(int offset)
    {
        for (; _offset < offset && _offset < _utf8.Length; _offset++)
        {
            var seen = _utf8[_offset];
            if (seen == (byte)'\n')
            {
                _line++;
                _column = 1;
            }
            else if ((seen & 0xC0) != 0x80)
            {
                // Bytes 10xxxxxx continue a character that has been counted.
                _column++;
            }
        }

        return new TextPlace(_line, _column);
    }
}
