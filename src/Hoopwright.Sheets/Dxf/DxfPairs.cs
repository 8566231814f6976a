using System.Globalization;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Dxf;

/// <summary>A stretch of a DXF file: group codes and values, a line each.</summary>
internal sealed class DxfPairs
{
    private readonly TextBytes _text = new();

    public ReadOnlySpan<byte> Span => _text.Span;

    public DxfPairs Add(int code, string value)
    {
        Code(code).Add(value);
        return End();
    }

    public DxfPairs Add(int code, int value)
    {
        Code(code).Whole(value);
        return End();
    }

    /// <summary>Ten decimals, so that the same drawing gives the same bytes and a tape mark loses nothing.</summary>
    public DxfPairs Add(int code, double value)
    {
        Code(code).Decimal(value, 10, least: 1);
        return End();
    }

    /// <summary>A handle, in the hexadecimal form that handles have.</summary>
    public DxfPairs Handle(int code, int handle) => Add(code, handle.ToString("X", CultureInfo.InvariantCulture));

    /// <summary>A point: the code of its x; y and z follow ten and twenty later.</summary>
    public DxfPairs Point(int code, DxfPoint at) => Add(code, at.X).Add(code + 10, at.Y).Add(code + 20, 0.0);

    /// <summary>A point without a height.</summary>
    public DxfPairs FlatPoint(int code, DxfPoint at) => Add(code, at.X).Add(code + 10, at.Y);

    public DxfPairs Add(DxfPairs other)
    {
        _text.Add(other._text.Span);
        return this;
    }

    private TextBytes Code(int code)
    {
        // Right-aligned in three places.
        if (code < 100) _text.Add(code < 10 ? "  "u8 : " "u8);
        _text.Whole(code);
        _text.Add("\n"u8);
        return _text;
    }

    private DxfPairs End()
    {
        _text.Add("\n"u8);
        return this;
    }
}
